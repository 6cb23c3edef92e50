#include "cli/read/weather_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

#include "cli/read/keys.h"
#include "cli/read/nearest.h"
#include "cli/read/number_text.h"
#include "solver/errors.h"
#include "solver/instants.h"

namespace drawwell {
namespace {

constexpr std::size_t most_problems = 10;  // told of one file

struct ColumnSort {
    std::string_view name;
    std::string_view key;  // empty: a time
    std::string_view unit;
};

constexpr std::array sorts{
    ColumnSort{"time_s", "", "s"},
    ColumnSort{"time_min", "", "min"},
    ColumnSort{"time_h", "", "h"},
    ColumnSort{"outdoor_c", "site.outdoor", "°C"},
    ColumnSort{"wind_m_s", "site.wind", "m/s"},
    ColumnSort{"gust_m_s", "site.gust", "m/s"},
    ColumnSort{"room_suction_pa", "site.room_suction", "Pa"},
};

std::vector<std::string> known_names() {
    std::vector<std::string> names;
    names.reserve(sorts.size());
    for (const ColumnSort& sort : sorts) names.emplace_back(sort.name);
    return names;
}

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r\"");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t\r\"") - first + 1);
}

std::vector<std::string_view> cells_of(std::string_view line, char separator) {
    std::vector<std::string_view> cells;
    for (std::size_t at = line.find(separator); at != std::string_view::npos;
         at = line.find(separator)) {
        cells.push_back(trimmed(line.substr(0, at)));
        line.remove_prefix(at + 1);
    }
    cells.push_back(trimmed(line));
    return cells;
}

/// One reading of one file, line by line.
class WeatherReader {
  public:
    explicit WeatherReader(std::string_view file_name) : file_name_(file_name) {}

    Weather read(std::string_view text) {
        if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);  // byte order mark
        while (!text.empty()) {
            const std::size_t end = std::min(text.find('\n'), text.size());
            ++line_;
            take_line(text.substr(0, end));
            text.remove_prefix(std::min(end + 1, text.size()));
        }
        if (weather_.problems.empty()) finish();
        if (weather_.problems.size() > most_problems) {
            const std::size_t more = weather_.problems.size() - most_problems;
            weather_.problems.resize(most_problems);
            weather_.problems.push_back(fmt::format("{}: {} more like these", file_name_, more));
        }
        if (!weather_.problems.empty()) weather_.tables.clear();
        return std::move(weather_);
    }

  private:
    void take_line(std::string_view line) {
        line = line.substr(0, line.find('#'));
        if (trimmed(line).empty()) return;
        if (!columns_.empty())
            take_row(line);
        else if (weather_.problems.empty())
            take_head(line);
    }

    void take_head(std::string_view line) {
        for (const char each : {',', '\t', ';'})
            if (line.find(each) != std::string_view::npos) separator_ = each;
        std::vector<const ColumnSort*> columns;
        for (const std::string_view name : cells_of(line, separator_)) {
            const auto found =
                std::find_if(sorts.begin(), sorts.end(),
                             [&](const ColumnSort& each) { return each.name == name; });
            if (found == sorts.end()) {
                const auto known = known_names();
                const std::string meant = did_you_mean(name, known);
                add(fmt::format(
                    "unknown column \"{}\"{}", name,
                    meant.empty() ? fmt::format("; there are {}", fmt::join(known, ", ")) : meant));
                continue;
            }
            if (std::find(columns.begin(), columns.end(), &*found) != columns.end())
                add(fmt::format("the column {} stands here twice", name));
            columns.push_back(&*found);
        }
        const auto times = std::count_if(columns.begin(), columns.end(),
                                         [](const ColumnSort* each) { return each->key.empty(); });
        if (!weather_.problems.empty()) return;
        if (times != 1)
            add("one column must be the time after lighting: time_s, time_min or time_h");
        if (columns.size() < 2) add("there is no column besides the time");
        columns_ = std::move(columns);
        values_.resize(columns_.size());
    }

    void take_row(std::string_view line) {
        const auto cells = cells_of(line, separator_);
        if (cells.size() != columns_.size()) {
            add(fmt::format("{} values stand here, and the first line names {} columns",
                            cells.size(), columns_.size()));
            return;
        }
        for (std::size_t i = 0; i < cells.size(); ++i) {
            try {
                values_[i].push_back(value_of(*columns_[i], cells[i], values_[i]));
            } catch (const InputError& error) {
                add(fmt::format("{} = {}: {}", columns_[i]->name, cells[i], error.what()));
            }
        }
    }

    /// SI. InputError: no number, out of range, a time that does not increase.
    static double value_of(const ColumnSort& column, std::string_view cell,
                           const std::vector<double>& above) {
        std::string_view rest = cell;
        take_number(rest);
        if (!rest.empty()) throw InputError("here stands a number alone");
        const std::string text = fmt::format("{} {}", cell, column.unit);
        if (column.key.empty()) {
            const double time = parse_quantity(text, Quantity::time);
            if (!above.empty() && !(time - above.back() > same_instant))
                throw InputError("times must increase");
            return time;
        }
        const Key& key = *find_key(column.key).key;
        const double value = parse_quantity(text, key.quantity);
        if (value >= key.least && value <= key.most) return value;
        throw InputError(fmt::format("{} to {} is allowed", show_quantity(key.least, key.quantity),
                                     show_quantity(key.most, key.quantity)));
    }

    void finish() {
        if (columns_.empty() || values_.front().empty()) {
            weather_.problems.push_back(fmt::format(
                "{}: there is {}", file_name_,
                columns_.empty() ? "nothing in it" : "no row under the names of the columns"));
            return;
        }
        std::size_t time = 0;
        while (!columns_[time]->key.empty()) ++time;
        for (std::size_t i = 0; i < columns_.size(); ++i)
            if (i != time)
                weather_.tables.emplace(columns_[i]->key, Table(values_[time], values_[i]));
    }

    void add(const std::string& reason) {
        weather_.problems.push_back(fmt::format("{}:{}: {}", file_name_, line_, reason));
    }

    std::string_view file_name_;
    std::size_t line_ = 0;
    char separator_ = ',';
    std::vector<const ColumnSort*> columns_;
    std::vector<std::vector<double>> values_;  // SI, column by column
    Weather weather_;
};

}  // namespace

Weather read_weather(std::string_view text, std::string_view file_name) {
    return WeatherReader(file_name).read(text);
}

}  // namespace drawwell
