#include "cli/study/series_store.h"

#include <cstring>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <utility>
#include <vector>

#include "cli/report/pending_file.h"

namespace drawwell {
namespace {

using Json = nlohmann::json;

void append(const std::vector<double>& values, std::string& bytes) {
    bytes.append(reinterpret_cast<const char*>(values.data()),  // NOLINT: doubles as they lie
                 values.size() * sizeof(double));
}

/// Takes doubles off the front of what is left.
class Taking {
  public:
    explicit Taking(std::string_view left) : left_(left) {}

    std::vector<double> numbers(std::size_t count) {
        if (count * sizeof(double) > left_.size()) throw FileError("a row's series is cut short");
        std::vector<double> values(count);
        std::memcpy(values.data(), left_.data(), count * sizeof(double));
        left_.remove_prefix(count * sizeof(double));
        return values;
    }

  private:
    std::string_view left_;
};

}  // namespace

std::string series_bytes(const Results& results) {
    Json head;
    head["instants"] = results.time.size();
    head["axes"] = Json::array();
    head["columns"] = Json::array();
    for (const Axis& axis : results.axes)
        head["axes"].push_back({axis.name, axis.unit, axis.meaning, axis.positions.size()});
    for (const Column& column : results.columns)
        head["columns"].push_back(
            {column.name, column.unit, column.meaning, column.axis, column.width});
    std::string bytes = head.dump() + "\n";
    append(results.time, bytes);
    for (const Axis& axis : results.axes) append(axis.positions, bytes);
    for (const Column& column : results.columns) append(column.values, bytes);
    return bytes;
}

Results results_of(const std::string& bytes) {
    const std::size_t end = std::min(bytes.find('\n'), bytes.size());
    try {
        const Json head = Json::parse(std::string_view(bytes).substr(0, end));
        Taking values(std::string_view(bytes).substr(std::min(end + 1, bytes.size())));
        Results results;
        results.time = values.numbers(head.at("instants"));
        for (const Json& axis : head.at("axes"))
            results.axes.push_back(
                {axis.at(0), axis.at(1), axis.at(2), values.numbers(axis.at(3))});
        for (const Json& each : head.at("columns")) {
            Column column{each.at(0), each.at(1), each.at(2), each.at(3), each.at(4), {}};
            column.values = values.numbers(results.time.size() * column.width);
            results.columns.push_back(std::move(column));
        }
        return results;
    } catch (const Json::exception&) {
        throw FileError("a row's series are something else");
    }
}

bool SeriesStore::holds(const std::string& identity) const {
    return std::filesystem::exists(folder_ / identity);
}

void SeriesStore::keep(const std::string& identity, const std::string& bytes) {
    const std::lock_guard lock(writing_);
    std::error_code failed;
    std::filesystem::create_directories(folder_, failed);
    if (failed) throw FileError("cannot write " + folder_.string());
    write_whole(folder_ / identity, bytes);
}

Results SeriesStore::read(const std::string& identity) const {
    std::ifstream in(folder_ / identity, std::ios::binary);
    std::ostringstream bytes;
    bytes << in.rdbuf();
    if (!in) throw FileError("cannot read " + (folder_ / identity).string());
    return results_of(bytes.str());
}

void SeriesStore::remove() const {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
}

}  // namespace drawwell
