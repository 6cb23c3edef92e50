#include "cli/study/series_bytes.h"

#include <algorithm>
#include <cstring>
#include <nlohmann/json.hpp>
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

    /// So many rows of so many.
    std::vector<double> numbers(std::size_t rows, std::size_t width) {
        if (width > 0 && rows > left_.size() / width)
            throw FileError("a row's series is cut short");
        return numbers(rows * width);
    }
    std::vector<double> numbers(std::size_t count) {
        if (count > left_.size() / sizeof(double)) throw FileError("a row's series is cut short");
        if (count == 0) return {};  // memcpy bears no null pointer
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
            column.values = values.numbers(results.time.size(), column.width);
            results.columns.push_back(std::move(column));
        }
        return results;
    } catch (const Json::exception&) {
        throw FileError("a row's series are something else");
    }
}

}  // namespace drawwell
