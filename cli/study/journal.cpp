#include "cli/study/journal.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <boost/uuid/name_generator_sha1.hpp>
#include <boost/uuid/uuid_io.hpp>
#include <cerrno>
#include <fstream>
#include <nlohmann/json.hpp>
#include <optional>
#include <sstream>
#include <utility>

#include "cli/report/file_kind.h"
#include "cli/report/pending_file.h"
#include "cli/report/schema_versions.h"
#include "cli/study/row_line.h"
#include "cli/study/series_bytes.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::string_view series_mark = "{\"series_of\":";

std::string first_line() {
    return fmt::format("{}{},\"model_version\":{},\"program_version\":\"{}\"}}\n", journal_mark,
                       journal_schema_version, model_version, DRAWWELL_VERSION);
}

/// Whether a line is a row, with which journals began when they said no version.
bool is_row(std::string_view line) {
    constexpr std::string_view begin = "{\"id\":\"";
    constexpr std::size_t name = begin.size() + 36;  // of a UUID
    const std::string_view behind = line.substr(std::min(name, line.size()));
    return line.starts_with(begin) &&
           (behind.starts_with("\",\"answers\":") || behind.starts_with("\",\"error\":"));
}

/// Who began a journal with that first line, in words; empty: a drawwell whose rows agree with
/// those of this one. None: it is not drawwell's.
std::optional<std::string> other_author(const std::string& line) {
    if (is_row(line)) return "an older drawwell, which noted no version,";
    const Json json = Json::parse(line, nullptr, false);
    if (!line.starts_with(journal_mark) || !json.is_object() || !json.front().is_number_integer())
        return {};
    if (line + "\n" == first_line()) return "";
    const Json unknown = "?";
    const auto said = [&](const char* name) {
        const Json& value = json.contains(name) ? json[name] : unknown;
        return value.is_string() ? value.get<std::string>() : value.dump();
    };
    return fmt::format(
        "drawwell {} (model version {}, journal version {}; these are {}, {} and {})",
        said("program_version"), said("model_version"), json.front().dump(), DRAWWELL_VERSION,
        model_version, journal_schema_version);
}

}  // namespace

Journal::Journal(std::filesystem::path file, bool anew) : file_(std::move(file)) {
    open();
    struct stat state = {};
    if (::fstat(open_.number(), &state) != 0) throw file_error("cannot read", file_, errno);
    if (!S_ISREG(state.st_mode))
        throw FileError("cannot write " + file_.string() + " (it is not a plain file)");
    if (state.st_size > 0) {
        std::ifstream in(file_, std::ios::binary);
        std::string line(4096, '\0');  // one of somebody else may have no end
        in.read(line.data(), static_cast<std::streamsize>(line.size()));
        line.resize(static_cast<std::size_t>(in.gcount()));
        const auto author = other_author(line.substr(0, line.find('\n')));
        if (!author)
            throw FileError(
                "the rows of this study would be kept as " + file_.string() +
                ", but a file of that name is there, and is not drawwell's: move it away");
        if (!anew && !author->empty())
            throw InputError(fmt::format(
                "cannot go on with {}: {} began it, whose rows need not agree with those of this "
                "program; finish the study with that drawwell, or begin it anew with --force",
                file_.string(), *author));
        if (!anew) read();
    }
    // What is left behind the last whole row, or all of it.
    if (::ftruncate(open_.number(), static_cast<off_t>(end_)) != 0)
        throw file_error("cannot write", file_, errno);
    if (end_ > 0) return;
    try {
        append({first_line()});
    } catch (const FileError&) {
        remove();
        throw;
    }
}

/// Opens the file, or makes it, and locks it until this run ends in whatever way.
void Journal::open() {
    while (!is_at_its_name()) {
        open_ = Descriptor(::open(file_.c_str(), O_RDWR | O_CREAT | O_APPEND | O_CLOEXEC, 0666));
        if (!open_.open()) throw file_error("cannot write", file_, errno);
        if (::flock(open_.number(), LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK)
            throw InputError("another drawwell is at work on " + file_.string() +
                             ": wait until it is done, or name another result with -o");
    }
}

/// Not so if another run, done, has deleted it meanwhile.
bool Journal::is_at_its_name() const {
    struct stat here = {}, named = {};
    return open_.open() && ::fstat(open_.number(), &here) == 0 &&
           ::stat(file_.c_str(), &named) == 0 && here.st_ino == named.st_ino &&
           here.st_dev == named.st_dev;
}

void Journal::read() {
    const std::uint64_t size = std::filesystem::file_size(file_);
    std::ifstream in(file_, std::ios::binary);
    std::string series_of;  // whose series were read last, and whose row must follow
    Place place;
    std::size_t number = 0;
    try {
        for (std::string line; std::getline(in, line) && !in.eof();) {
            const auto end = static_cast<std::uint64_t>(in.tellg());
            if (++number > 1 && line.starts_with(series_mark)) {
                const Json json = Json::parse(line);
                series_of = json.at("series_of").get<std::string>();
                place = {end, json.at("bytes").get<std::uint64_t>()};
                if (place.size >= size - end) return;
                in.seekg(static_cast<std::streamoff>(end + place.size + 1));
                continue;
            }
            if (number > 1) learn(line);
            if (!series_of.empty() && !rows_.contains(series_of)) throw InputError("no row");
            if (!series_of.empty()) series_.insert_or_assign(std::exchange(series_of, ""), place);
            end_ = end;
        }
    } catch (const Json::exception&) {
        damaged(number);
    } catch (const InputError&) {
        damaged(number);
    }
}

void Journal::damaged(std::size_t line) const {
    throw FileError(fmt::format("{}:{}: this is no row of a study: begin anew with --force",
                                file_.string(), line));
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
    if (!keeps()) return;
    const std::string line = line_of(row) + "\n";
    const std::lock_guard lock(writing_);
    try {
        if (row.series.empty()) return append({line});
        Json head;
        head["series_of"] = row.identity;
        head["bytes"] = row.series.size();
        const std::string before = head.dump() + "\n";
        const Place place{end_ + before.size(), row.series.size()};
        append({before, row.series, "\n", line});
        series_.insert_or_assign(row.identity, place);
    } catch (const FileError& error) {
        throw FileError(std::string(error.what()) +
                        "; what was finished is kept there, --resume goes on from it");
    }
}

/// Appends them all, or nothing.
void Journal::append(std::initializer_list<std::string_view> parts) {
    std::uint64_t end = end_;
    for (const std::string_view part : parts) {
        if (failed_ == 0) failed_ = open_.write(part);
        end += part.size();
    }
    if (failed_ == 0) {
        end_ = end;
        return;
    }
    // If that fails as well, the next run drops what was cut short.
    [[maybe_unused]] const int dropped = ::ftruncate(open_.number(), static_cast<off_t>(end_));
    throw file_error("cannot write", file_, failed_);
}

void Journal::remove() {
    if (is_at_its_name()) ::unlink(file_.c_str());
    open_.close();
}

bool Journal::has_series_of(const std::string& identity) const {
    const std::lock_guard lock(writing_);
    return series_.contains(identity);
}

Results Journal::series_of(const std::string& identity) const {
    Place place;
    {
        const std::lock_guard lock(writing_);
        const auto found = series_.find(identity);
        if (found == series_.end()) throw FileError("the series of a row are not there");
        place = found->second;
    }
    std::string bytes(place.size, '\0');
    for (std::size_t got = 0; got < bytes.size();) {
        const ssize_t count = ::pread(open_.number(), bytes.data() + got, bytes.size() - got,
                                      static_cast<off_t>(place.begin + got));
        if (count < 0 && errno == EINTR) continue;
        if (count <= 0) throw file_error("cannot read", file_, count < 0 ? errno : EIO);
        got += static_cast<std::size_t>(count);
    }
    return results_of(bytes);
}

std::string identity_of(const std::string& resolved) {
    static const boost::uuids::name_generator_sha1 name(boost::uuids::ns::oid());
    return to_string(name(resolved + "\n" DRAWWELL_VERSION));
}

}  // namespace drawwell
