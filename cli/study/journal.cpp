#include "cli/study/journal.h"

#include <boost/uuid/name_generator_sha1.hpp>
#include <boost/uuid/uuid_io.hpp>
#include <nlohmann/json.hpp>
#include <utility>

#include "cli/report/pending_file.h"
#include "cli/study/answers_json.h"

namespace drawwell {
namespace {

using Json = nlohmann::ordered_json;

Json to_json(const Row& row) {
    Json line;
    line["id"] = row.identity;
    if (!row.error.empty()) {
        line["error"] = row.error;
        return line;
    }
    line["answers"] = answers_json(row.answers);
    return line;
}

Row from_json(const Json& line) {
    Row row;
    row.identity = line.at("id").get<std::string>();
    row.done = true;
    if (line.contains("error")) {
        row.error = line["error"].get<std::string>();
        return row;
    }
    std::vector<std::pair<std::string, Answer>> all;
    for (const auto& [key, value] : line.at("answers").items()) {
        Answer answer;
        if (value.is_boolean()) answer = value.get<bool>();
        if (value.is_number()) answer = value.get<double>();
        if (value.is_string()) answer = value.get<std::string>();
        all.emplace_back(key, std::move(answer));
    }
    row.answers = Answers(std::move(all));
    return row;
}

}  // namespace

Journal::Journal(std::filesystem::path file) : file_(std::move(file)) {
    std::uintmax_t whole = 0;
    if (std::filesystem::exists(file_)) {
        std::ifstream in(file_);
        for (std::string line; std::getline(in, line) && !in.eof(); whole += line.size() + 1) {
            try {
                Row row = from_json(Json::parse(line));
                rows_.insert_or_assign(row.identity, std::move(row));
            } catch (const Json::exception&) {
                throw FileError(file_.string() + " holds something else than rows of a study");
            }
        }
        std::filesystem::resize_file(file_, whole);
    }
    out_.open(file_, std::ios::app);
    if (!out_) throw FileError("cannot write " + file_.string());
}

const Row* Journal::find(const std::string& identity) const {
    const auto found = rows_.find(identity);
    return found == rows_.end() ? nullptr : &found->second;
}

void Journal::add(const Row& row) {
    if (file_.empty()) return;
    const std::string line = to_json(row).dump(-1, ' ', false, Json::error_handler_t::replace);
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
