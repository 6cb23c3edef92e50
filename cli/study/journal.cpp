#include "cli/study/journal.h"

#include <boost/uuid/name_generator_sha1.hpp>
#include <boost/uuid/uuid_io.hpp>
#include <sstream>
#include <utility>

#include "cli/report/pending_file.h"
#include "cli/study/row_line.h"
#include "solver/errors.h"

namespace drawwell {

Journal::Journal(std::filesystem::path file) : file_(std::move(file)) {
    std::uintmax_t whole = 0;
    if (std::filesystem::exists(file_)) {
        std::ifstream in(file_);
        for (std::string line; std::getline(in, line) && !in.eof(); whole += line.size() + 1) {
            try {
                learn(line);
            } catch (const InputError&) {
                throw FileError(file_.string() + " holds something else than rows of a study");
            }
        }
        std::filesystem::resize_file(file_, whole);
    }
    out_.open(file_, std::ios::app);
    if (!out_) throw FileError("cannot write " + file_.string());
}

std::string Journal::text() const {
    std::string lines;
    for (const auto& [identity, row] : rows_) lines += line_of(row) + "\n";
    return lines;
}

void Journal::learn(const std::string& lines) {
    std::istringstream in(lines);
    for (std::string line; std::getline(in, line);) {
        Row row = row_of(line);
        rows_.insert_or_assign(row.identity, std::move(row));
    }
}

void Journal::keep_only(const std::function<bool(const Row& row)>& wanted) {
    std::erase_if(rows_, [&](const auto& each) { return !wanted(each.second); });
}

const Row* Journal::find(const std::string& identity) const {
    const auto found = rows_.find(identity);
    return found == rows_.end() ? nullptr : &found->second;
}

void Journal::add(const Row& row) {
    if (file_.empty()) return;
    const std::string line = line_of(row);
    const std::lock_guard lock(writing_);
    out_ << line << "\n" << std::flush;
    if (!out_) throw FileError("cannot write " + file_.string());
}

void Journal::remove() {
    if (file_.empty()) return;
    out_.close();
    std::error_code ignored;
    std::filesystem::remove(file_, ignored);
}

std::string identity_of(const std::string& resolved) {
    static const boost::uuids::name_generator_sha1 name(boost::uuids::ns::oid());
    return to_string(name(resolved + "\n" DRAWWELL_VERSION));
}

}  // namespace drawwell
