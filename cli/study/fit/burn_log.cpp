#include "cli/study/fit/burn_log.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <cmath>
#include <limits>
#include <set>
#include <utility>

#include "cli/read/number_text.h"
#include "cli/read/several_problems.h"
#include "cli/read/unit_table.h"
#include "cli/report/file_kind.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr std::size_t most_problems = 10;
constexpr double day = 24 * 3600.0;  // [s]

constexpr std::array gap_words{"",   "nan", "na", "n/a", "null", "none", "-",
                               "--", "---", "ol", "o.l", "open", "err",  "error"};
constexpr std::array time_names{"time", "elapsed", "clock", "timestamp", "t"};
/// Endings of a header's name that say its unit, as `export` writes them.
constexpr std::array endings{
    std::pair{"_c", "°C"},      std::pair{"_f", "°F"},        std::pair{"_k", "K"},
    std::pair{"_pa", "Pa"},     std::pair{"_inh2o", "inH2O"}, std::pair{"_mmh2o", "mmH2O"},
    std::pair{"_mbar", "mbar"}, std::pair{"_kg", "kg"},       std::pair{"_g", "g"},
    std::pair{"_lb", "lb"},     std::pair{"_oz", "oz"},       std::pair{"_min", "min"},
    std::pair{"_s", "s"},       std::pair{"_h", "h"},         std::pair{"_kg_s", "kg/s"},
    std::pair{"_m_s", "m/s"},   std::pair{"_pct", "%"}};

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r\"");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t\r\"") - first + 1);
}

std::string lower(std::string_view text) {
    std::string result(text);
    for (char& c : result) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return result;
}

template <class List>
bool holds(const List& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

/// Cells of a line; a separator between double quotes belongs to the cell.
std::vector<std::string_view> cells_of(std::string_view line, char separator) {
    std::vector<std::string_view> cells;
    bool quoted = false;
    std::size_t from = 0;
    for (std::size_t i = 0; i <= line.size(); ++i) {
        if (i < line.size() && line[i] == '"') quoted = !quoted;
        if (i < line.size() && (quoted || line[i] != separator)) continue;
        cells.push_back(trimmed(line.substr(from, i - from)));
        from = i + 1;
    }
    return cells;
}

std::string known_unit(std::string_view text) {
    for (const Unit& unit : all_units())
        if (!text.empty() && lower(unit.name) == lower(text)) return std::string(unit.name);
    return {};
}

/// A number and nothing behind it; a comma counts as a decimal point.
double whole_number(std::string_view text) {
    std::string plain = with_plain_minus(text);
    std::replace(plain.begin(), plain.end(), ',', '.');
    const char* begin = plain.c_str() + (plain.starts_with('+') ? 1 : 0);
    double number = 0;
    const auto [end, error] = std::from_chars(begin, plain.c_str() + plain.size(), number);
    if (error != std::errc() || end != plain.c_str() + plain.size() || !std::isfinite(number))
        throw InputError("this is no number");
    return number;
}

bool is_date(std::string_view text) {
    return text.find('-', 1) != std::string_view::npos ||
           text.find('/') != std::string_view::npos ||
           std::count(text.begin(), text.end(), '.') == 2;
}

/// "1:02:30" or "1:02" in seconds; a date before it is passed over.
double clock_seconds(std::string_view text) {
    const std::size_t gap = text.find_first_of(" T");
    if (gap != std::string_view::npos && is_date(text.substr(0, gap)))
        text = trimmed(text.substr(gap + 1));
    double seconds = 0;
    int parts = 0;
    const bool negative = text.starts_with('-');
    if (negative) text.remove_prefix(1);
    for (bool more = true; more; ++parts) {
        const std::size_t colon = text.find(':');
        const double number = whole_number(text.substr(0, colon));
        if (number < 0 || (parts > 0 && number >= 60))
            throw InputError("a time is written as h:mm:ss");
        seconds = 60 * seconds + number;
        more = colon != std::string_view::npos;
        if (more) text.remove_prefix(colon + 1);
    }
    if (parts < 2 || parts > 3) throw InputError("a time is written as h:mm:ss");
    return (negative ? -1 : 1) * (parts == 2 ? 60 * seconds : seconds);
}

/// One reading of one file, line by line.
class LogReader {
  public:
    explicit LogReader(std::string_view file_name) { log_.name = file_name; }

    BurnLog read(std::string_view text) {
        if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);  // byte order mark
        std::size_t line = 0;
        while (!text.empty()) {
            const std::size_t end = std::min(text.find('\n'), text.size());
            take_line(text.substr(0, end), ++line);
            text.remove_prefix(std::min(end + 1, text.size()));
        }
        if (problems_.empty() && log_.headers.empty())
            throw InputError(log_.name + ": there is nothing in it");
        if (problems_.empty() && log_.time.size() < 2)
            throw InputError(log_.name + ": fewer than two rows stand under the header");
        raise();
        drop_mark();
        return std::move(log_);
    }

  private:
    void take_line(std::string_view line, std::size_t number) {
        if (trimmed(line).empty() || trimmed(line).starts_with('#')) return;
        if (log_.headers.empty())
            take_head(line, number);
        else if (time_known_)
            take_row(line, number);
    }

    void take_head(std::string_view line, std::size_t number) {
        for (const char each : {',', '\t', ';'})
            if (line.find(each) != std::string_view::npos) separator_ = each;
        std::set<std::string, std::less<>> names;
        for (const std::string_view cell : cells_of(line, separator_)) {
            if (names.contains(cell))
                add(number, fmt::format("the column \"{}\" stands here twice", cell));
            const LogHeader& header = log_.headers.emplace_back(parse_header(cell));
            names.insert({header.whole, header.name + header.cell});
        }
        log_.cells.resize(log_.headers.size());
        for (std::size_t i = log_.headers.size(); i-- > 0;)
            if (holds(time_names, lower(log_.headers[i].name))) {
                log_.time_column = i;
                time_known_ = true;
            }
        if (!time_known_)
            add(number, "no column is the time: call one time_s, time_min, or time for h:mm:ss");
        if (log_.headers.size() < 2) add(number, "there is no column besides the time");
    }

    void take_row(std::string_view line, std::size_t number) {
        const auto cells = cells_of(line, separator_);
        if (cells.size() != log_.headers.size())
            return add(number, fmt::format("{} values stand here, and the header names {} columns",
                                           cells.size(), log_.headers.size()));
        const LogHeader& header = log_.headers[log_.time_column];
        const std::string_view cell = cells[log_.time_column];
        try {
            const double time = time_of(header, cell);
            if (!log_.time.empty() && !(time > log_.time.back()))
                throw InputError("times must increase");
            log_.time.push_back(time);
        } catch (const InputError& error) {
            return add(number,
                       fmt::format("column \"{}\": \"{}\": {}", header.whole, cell, error.what()));
        }
        log_.line.push_back(number);
        for (std::size_t i = 0; i < cells.size(); ++i) log_.cells[i].emplace_back(cells[i]);
    }

    double time_of(const LogHeader& header, std::string_view cell) {
        if (cell.find(':') == std::string_view::npos) {
            const double number = whole_number(cell);
            if (header.unit.empty())
                throw InputError("in which unit? call the column time_s, time_min or time_h");
            return parse_quantity(fmt::format("{} {}", number, header.unit), Quantity::time);
        }
        double time = clock_seconds(cell) + midnights_ * day;
        if (!log_.time.empty() && log_.time.back() - time > day / 2) {
            ++midnights_;
            time += day;
        }
        return time;
    }

    void add(std::size_t line, const std::string& reason) {
        problems_.push_back(fmt::format("{}:{}: {}", log_.name, line, reason));
    }

    /// Of a table that drawwell wrote.
    void drop_mark() {
        const auto mark = static_cast<std::ptrdiff_t>(log_.find(table_mark));
        if (mark == std::ssize(log_.headers)) return;
        log_.headers.erase(log_.headers.begin() + mark);
        log_.cells.erase(log_.cells.begin() + mark);
        if (mark < static_cast<std::ptrdiff_t>(log_.time_column)) --log_.time_column;
    }

    void raise() const {
        if (problems_.empty()) return;
        std::vector<std::string> lines = problems_;
        if (lines.size() > most_problems) {
            lines.resize(most_problems);
            lines.push_back(
                fmt::format("{}: {} more like these", log_.name, problems_.size() - most_problems));
        }
        throw SeveralProblems(lines);
    }

    BurnLog log_;
    char separator_ = ',';
    bool time_known_ = false;
    int midnights_ = 0;
    std::vector<std::string> problems_;
};

}  // namespace

LogHeader parse_header(std::string_view text) {
    LogHeader header{std::string(text), {}, {}, {}};
    std::string_view rest = trimmed(text);
    for (const auto& [open, close] : {std::pair{'[', ']'}, std::pair{'(', ')'}}) {
        const std::size_t from = rest.rfind(open);
        if (from == std::string_view::npos || !rest.ends_with(close)) continue;
        const std::string_view inside = trimmed(rest.substr(from + 1, rest.size() - from - 2));
        header.unit = known_unit(inside);
        if (header.unit.empty()) continue;
        rest = trimmed(rest.substr(0, from));
        break;
    }
    if (const std::size_t from = rest.find('[');
        from != std::string_view::npos && rest.ends_with(']')) {
        header.cell = rest.substr(from);
        rest = trimmed(rest.substr(0, from));
    }
    header.name = rest;
    if (!header.unit.empty()) return header;
    std::size_t longest = 0;
    for (const auto& [ending, unit] : endings) {
        const std::string_view end = ending;
        if (end.size() <= longest || end.size() >= rest.size() || !lower(rest).ends_with(end))
            continue;
        longest = end.size();
        header.unit = unit;
    }
    header.name = rest.substr(0, rest.size() - longest);
    return header;
}

std::size_t BurnLog::find(std::string_view header) const {
    const auto by = [&](auto&& same) {
        return static_cast<std::size_t>(std::find_if(headers.begin(), headers.end(), same) -
                                        headers.begin());
    };
    const std::size_t whole = by([&](const LogHeader& each) { return each.whole == header; });
    if (whole < headers.size()) return whole;
    return by([&](const LogHeader& each) { return each.name + each.cell == header; });
}

BurnLog read_log(std::string_view text, std::string_view file_name) {
    return LogReader(file_name).read(text);
}

std::vector<double> log_values(const BurnLog& log, std::size_t column, std::string_view unit,
                               Quantity quantity) {
    std::vector<double> values;
    std::vector<std::string> problems;
    std::size_t count = 0;
    for (std::size_t row = 0; row < log.cells[column].size(); ++row) {
        const std::string& cell = log.cells[column][row];
        values.push_back(std::numeric_limits<double>::quiet_NaN());
        if (holds(gap_words, lower(cell))) continue;
        try {
            values.back() =
                parse_quantity(fmt::format("{} {}", whole_number(cell), unit), quantity);
        } catch (const InputError& error) {
            if (++count > most_problems) continue;
            problems.push_back(fmt::format("{}:{}: column \"{}\": \"{}\": {}", log.name,
                                           log.line[row], log.headers[column].whole, cell,
                                           error.what()));
        }
    }
    if (count > most_problems)
        problems.push_back(fmt::format("{}: {} more like these", log.name, count - most_problems));
    if (count > 0) throw SeveralProblems(problems);
    return values;
}

double parse_log_time(std::string_view typed) {
    const std::string plain = with_plain_minus(typed);
    const std::string_view text = trimmed(plain);
    return text.find(':') == std::string_view::npos ? parse_quantity(text, Quantity::time)
                                                    : clock_seconds(text);
}

}  // namespace drawwell
