#include "cli/report/burn_log.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

#include "cli/read/nearest.h"
#include "cli/read/number_text.h"
#include "cli/read/units.h"
#include "cli/report/cell_labels.h"
#include "cli/report/file_kind.h"
#include "cli/report/write_csv.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

std::string_view trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r' || c == '"'; };
    while (!text.empty() && blank(text.front())) text.remove_prefix(1);
    while (!text.empty() && blank(text.back())) text.remove_suffix(1);
    return text;
}

std::vector<std::string_view> cells_of(std::string_view line) {
    std::vector<std::string_view> cells;
    for (;;) {
        const std::size_t end = std::min(line.find(','), line.size());
        cells.push_back(trimmed(line.substr(0, end)));
        if (end == line.size()) return cells;
        line.remove_prefix(end + 1);
    }
}

std::optional<double> number_of(std::string_view typed) {
    const std::string cell = with_plain_minus(typed);
    double number = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), number);
    if (error != std::errc() || end != cell.data() + cell.size() || !std::isfinite(number))
        return {};
    return number;
}

/// One heading and what it stands for.
struct LoggedHead {
    LoggedColumn log;
    bool celsius = false;
};

LoggedHead head_of(std::string_view name, const Results& results) {
    const std::size_t bracket = std::min(name.find('['), name.size());
    const std::string_view stem = name.substr(0, bracket), place = name.substr(bracket);
    std::vector<std::string> known;
    for (const Column& column : results.columns) {
        const std::string with_unit = csv_name(column);
        known.push_back(with_unit);
        if (stem != column.name && stem != with_unit) continue;
        const std::vector<std::string> labels = cell_labels(results, column);
        const auto cell = std::find(labels.begin(), labels.end(), place);
        if (!place.empty() && cell == labels.end())
            throw InputError(fmt::format("{}: the column has no such place; it has {}{}", name,
                                         fmt::join(labels, ", "),
                                         did_you_mean_cell(results, column, place)));
        const auto at = place.empty() ? 0 : static_cast<std::size_t>(cell - labels.begin());
        return {{column.name, at, {}, {}}, column.unit == "K"};
    }
    throw InputError(fmt::format("{}: the result has no such column{}", name,
                                 did_you_mean(std::string(stem), known)));
}

}  // namespace

std::vector<LoggedColumn> read_burn_log(std::string_view text, const Results& results) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);  // as spreadsheets begin theirs
    std::vector<std::optional<LoggedHead>> heads;  // none: the mark of a table of drawwell's
    double second = 0;                             // [s] of the time's unit
    for (int number = 1; !text.empty(); ++number) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::vector<std::string_view> cells = cells_of(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (cells.size() == 1 && cells.front().empty()) continue;
        if (second == 0) {
            if (cells.front() == "time_s") second = 1;
            if (cells.front() == "time_min") second = 60;
            if (second == 0)
                throw InputError(
                    fmt::format("line {}: the first column is time_s or time_min, "
                                "not \"{}\"",
                                number, cells.front()));
            for (std::size_t i = 1; i < cells.size(); ++i)
                if (cells[i] == table_mark)
                    heads.emplace_back();
                else
                    heads.emplace_back(head_of(cells[i], results));
            continue;
        }
        const std::optional<double> time = number_of(cells.front());
        if (!time || cells.size() > heads.size() + 1)
            throw InputError(
                fmt::format("line {}: {}", number,
                            time ? "more cells than headings" : "the time is no number"));
        for (std::size_t i = 1; i < cells.size(); ++i) {
            if (cells[i].empty() || !heads[i - 1]) continue;
            const std::optional<double> value = number_of(cells[i]);
            if (!value)
                throw InputError(fmt::format("line {}: \"{}\" is no number", number, cells[i]));
            LoggedHead& head = *heads[i - 1];
            head.log.time.push_back(*time * second);
            head.log.value.push_back(head.celsius ? from_celsius(*value) : *value);
        }
    }
    std::vector<LoggedColumn> log;
    for (std::optional<LoggedHead>& head : heads)
        if (head && !head->log.time.empty()) log.push_back(std::move(head->log));
    if (log.empty()) throw InputError("it holds no figures");
    return log;
}

}  // namespace drawwell
