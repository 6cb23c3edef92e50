#include "cli/read/read_value.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "cli/read/nearest.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double thinnest_layer = 1e-5, thickest_layer = 2;  // [m]

/// Reads values of one key, each refusal an InputError with its reason.
class ValueReader {
  public:
    ValueReader(const Key& key, const Library& library) : key_(key), library_(library) {}

    Value read(const RawValue& raw) const {
        switch (key_.kind) {
            case Kind::quantity:
                return in_range(quantity(raw, key_.quantity), key_.quantity);
            case Kind::count:
                return count(raw);
            case Kind::text:
                return text(raw, "a text");
            case Kind::choice:
                return one_of(raw, choices(), "one of");
            case Kind::material:
                return one_of(raw, names(library_.materials), "a material:");
            case Kind::wood:
                return one_of(raw, names(library_.woods), "a kind of wood:");
            default:
                return table(raw);
        }
    }

    double item_time(const RawValue& raw) const {
        return in_range(quantity(raw, Quantity::time), Quantity::time);
    }
    std::string item_name(const RawValue& raw) const { return text(raw, "a name"); }

    Layer item_layer(const RawValue& raw) const {
        const std::string said = text(raw, "a layer as \"25 mm aes_board\"");
        const std::size_t gap = said.find_last_of(" \t");
        if (gap == std::string::npos)
            throw InputError("a layer is a thickness and a material: \"25 mm aes_board\"");
        RawValue material = raw;
        material.text = said.substr(gap + 1);
        const double thickness = parse_quantity(said.substr(0, gap), Quantity::length);
        if (!(thickness >= thinnest_layer && thickness <= thickest_layer))
            throw InputError(fmt::format("a layer is from {} to {} thick",
                                         show_quantity(thinnest_layer, Quantity::length),
                                         show_quantity(thickest_layer, Quantity::length)));
        return {one_of(material, names(library_.materials), "a material:"), thickness};
    }

  private:
    std::string text(const RawValue& raw, std::string_view what) const {
        if (raw.form != RawValue::Form::text)
            throw InputError(fmt::format("here stands {} in quotes", what));
        return raw.text;
    }

    double quantity(const RawValue& raw, Quantity quantity) const {
        if (raw.form == RawValue::Form::text) return parse_quantity(raw.text, quantity);
        if (raw.form != RawValue::Form::number) refuse_form(quantity);
        if (!std::isfinite(raw.number)) throw InputError("the number must be finite");
        if (quantity == Quantity::number || quantity == Quantity::share) return raw.number;
        throw InputError(fmt::format("the unit is missing: write a text such as \"{}\" ({})",
                                     example(raw.number, quantity), accepted_units(quantity)));
    }

    static std::string example(double number, Quantity quantity) {
        const std::string units = accepted_units(quantity);
        return fmt::format("{} {}", number, units.substr(0, units.find(',')));
    }

    [[noreturn]] static void refuse_form(Quantity quantity) {
        const std::string units = accepted_units(quantity);
        throw InputError(units.empty()
                             ? "here stands a plain number"
                             : fmt::format("here stands one {} as a text with its unit: {}",
                                           quantity_name(quantity), units));
    }

    double in_range(double value, Quantity quantity) const {
        if (value >= key_.least && value <= key_.most) return value;
        throw InputError(fmt::format(
            "{}{} to {} is allowed", value < 0 && key_.least >= 0 ? "it can't be negative; " : "",
            show_quantity(key_.least, quantity), show_quantity(key_.most, quantity)));
    }

    double count(const RawValue& raw) const {
        const double value = in_range(quantity(raw, Quantity::number), Quantity::number);
        if (std::floor(value) != value) throw InputError("here stands a whole number");
        return value;
    }

    template <class Map>
    static std::vector<std::string> names(const Map& map) {
        std::vector<std::string> list;
        for (const auto& [name, _] : map) list.push_back(name);
        return list;
    }

    std::vector<std::string> choices() const { return {key_.choices.begin(), key_.choices.end()}; }

    static std::string one_of(const RawValue& raw, const std::vector<std::string>& known,
                              std::string_view what) {
        const std::string list = fmt::format("{}", fmt::join(known, ", "));
        if (raw.form != RawValue::Form::text)
            throw InputError(fmt::format("here stands {} {}", what, list));
        if (std::find(known.begin(), known.end(), raw.text) != known.end()) return raw.text;
        const std::string meant = did_you_mean(raw.text, known);
        if (!meant.empty()) throw InputError(fmt::format("unknown name \"{}\"{}", raw.text, meant));
        throw InputError(
            fmt::format("unknown name \"{}\": here stands {} {}", raw.text, what, list));
    }

    Table table(const RawValue& raw) const {
        if (raw.form != RawValue::Form::list)
            return Table(in_range(quantity(raw, key_.quantity), key_.quantity));
        if (raw.items.empty()) throw InputError("the list is empty");
        std::vector<double> times, values;
        for (const RawValue& row : raw.items) {
            if (row.form != RawValue::Form::list || row.items.size() != 2)
                throw InputError("a table is a list of rows such as [\"10 min\", \"...\"]");
            times.push_back(quantity(row.items[0], Quantity::time));
            values.push_back(in_range(quantity(row.items[1], key_.quantity), key_.quantity));
        }
        return Table(std::move(times), std::move(values));
    }

    const Key& key_;
    const Library& library_;
};

/// Reads a list item by item, a problem for each that is refused; one item may stand alone.
template <class Item, class Read>
std::optional<Value> read_list(const Entry& entry, Problems& problems, const Read& read) {
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
    return good ? std::optional<Value>(std::move(items)) : std::nullopt;
}

std::optional<Value> read_times(const Entry& entry, const ValueReader& reader, Problems& problems) {
    auto value = read_list<double>(entry, problems,
                                   [&](const RawValue& item) { return reader.item_time(item); });
    if (!value) return {};
    const auto& times = std::get<std::vector<double>>(*value);
    if (std::adjacent_find(times.begin(), times.end(), std::greater_equal<>()) == times.end())
        return value;
    problems.add(entry, "the times must increase");
    return {};
}

}  // namespace

std::optional<Value> read_value(const Key& key, const Entry& entry, const Library& library,
                                Problems& problems) {
    const ValueReader reader(key, library);
    try {
        switch (key.kind) {
            case Kind::times:
                return read_times(entry, reader, problems);
            case Kind::names:
                return read_list<std::string>(
                    entry, problems, [&](const RawValue& item) { return reader.item_name(item); });
            case Kind::build_up:
                return read_list<Layer>(
                    entry, problems, [&](const RawValue& item) { return reader.item_layer(item); });
            default:
                return reader.read(entry.value);
        }
    } catch (const InputError& error) {
        problems.add(entry, error.what());
        return {};
    }
}

}  // namespace drawwell
