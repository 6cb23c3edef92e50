#include "cli/read/read_value.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>

#include "cli/read/value_reader.h"
#include "solver/errors.h"
#include "solver/instants.h"

namespace drawwell {
namespace {

/// Reads a list item by item, a problem for each that is refused; one item may stand alone.
template <class Item, class Read>
std::optional<std::vector<Item>> read_list(const Entry& entry, Problems& problems,
                                           const Read& read) {
    const RawValue& raw = entry.value;
    const bool is_list = raw.form == RawValue::Form::list;
    if (is_list && raw.items.empty()) {
        problems.add(entry, "the list is empty");
        return {};
    }
    std::vector<Item> items;
    bool good = true;
    for (const RawValue& item : is_list ? raw.items : std::vector<RawValue>{raw}) {
        try {
            items.push_back(read(item));
        } catch (const InputError& error) {
            problems.add(entry, is_list ? item.place : entry.place,
                         is_list ? fmt::format("{}: {}", item.shown, error.what()) : error.what());
            good = false;
        }
    }
    if (!good) return {};
    return items;
}

std::optional<Value> read_layers(const Entry& entry, const ValueReader& reader,
                                 Problems& problems) {
    const auto items = read_list<BuildUp>(
        entry, problems, [&](const RawValue& item) { return reader.item_layers(item); });
    if (!items) return {};
    BuildUp layers;
    for (const BuildUp& item : *items) layers.insert(layers.end(), item.begin(), item.end());
    return layers;
}

/// InputError where one does not come after the one before it.
void require_increasing(const std::vector<double>& times) {
    const auto not_later = [](double a, double b) { return !(b - a > same_instant); };
    if (std::adjacent_find(times.begin(), times.end(), not_later) != times.end())
        throw InputError("the times must increase");
}

std::optional<Value> read_times(const Entry& entry, const ValueReader& reader, Problems& problems) {
    const auto times = read_list<double>(
        entry, problems, [&](const RawValue& item) { return reader.item_time(item); });
    if (!times) return {};
    require_increasing(*times);
    return *times;
}

/// Reads rows of a time and something else, a problem for each that is refused.
template <class Row, class Read>
std::optional<std::vector<Row>> read_rows(const Entry& entry, Problems& problems,
                                          std::string_view example, const Read& read) {
    return read_list<Row>(entry, problems, [&](const RawValue& row) {
        if (row.form != RawValue::Form::list || row.items.size() != 2)
            throw InputError(fmt::format("here stands a list of rows such as {}", example));
        return read(row.items[0], row.items[1]);
    });
}

struct TimedValue {
    double time = 0;   // [s] after lighting
    double value = 0;  // SI
};

/// Reads a constant, or rows over time, into a Table or Steps.
template <class Series>
std::optional<Value> read_series(const Entry& entry, const ValueReader& reader,
                                 Problems& problems) {
    if (entry.value.form != RawValue::Form::list) return reader.read(entry.value);
    const auto rows = read_rows<TimedValue>(
        entry, problems, "[\"10 min\", \"...\"]", [&](const RawValue& time, const RawValue& value) {
            return TimedValue{reader.row_time(time), reader.row_value(value)};
        });
    if (!rows) return {};
    std::vector<double> times, values;
    for (const TimedValue& row : *rows) {
        times.push_back(row.time);
        values.push_back(row.value);
    }
    require_increasing(times);
    return Series(std::move(times), std::move(values));
}

std::optional<Value> read_loads(const Entry& entry, const ValueReader& reader, Problems& problems) {
    const auto rows = read_rows<LoadTime>(
        entry, problems, "[\"8 min\", \"main\"]", [&](const RawValue& time, const RawValue& name) {
            return LoadTime{reader.item_time(time), reader.item_name(name)};
        });
    if (!rows) return {};
    std::map<std::string_view, double> last;  // time of each load
    for (std::size_t i = 0; i < rows->size(); ++i) {
        const LoadTime& row = (*rows)[i];
        if (i > 0 && row.time < (*rows)[i - 1].time - same_instant)
            throw InputError("the times must increase");
        const auto [before, first] = last.emplace(row.load, row.time);
        if (!first && std::abs(row.time - before->second) <= same_instant)
            throw InputError(
                fmt::format("the load \"{}\" goes in twice at the same time", row.load));
        before->second = row.time;
    }
    return *rows;
}

}  // namespace

std::optional<Value> read_value(const Key& key, const Entry& entry, const Library& library,
                                Problems& problems, std::optional<double> lit_at) {
    const ValueReader reader(key, library, lit_at);
    try {
        switch (key.kind) {
            case Kind::times:
                return read_times(entry, reader, problems);
            case Kind::names:
                return read_list<std::string>(
                    entry, problems, [&](const RawValue& item) { return reader.item_name(item); });
            case Kind::build_up:
                return read_layers(entry, reader, problems);
            case Kind::table:
                return read_series<Table>(entry, reader, problems);
            case Kind::steps:
                return read_series<Steps>(entry, reader, problems);
            case Kind::loads:
                return read_loads(entry, reader, problems);
            default:
                return reader.read(entry.value);
        }
    } catch (const InputError& error) {
        problems.add(entry, error.what());
        return {};
    }
}

}  // namespace drawwell
