// Values of keys on their way into a draft, out of it, and into text.
#include <fmt/format.h>

#include <algorithm>

#include "cli/read/clock_time.h"
#include "cli/read/keys.h"
#include "cli/read/raw_value.h"

namespace drawwell {
namespace {

template <class... Cases>
struct Overloaded : Cases... {
    using Cases::operator()...;
};
template <class... Cases>
Overloaded(Cases...) -> Overloaded<Cases...>;

std::size_t choice_index(const Key& key, const std::string& value) {
    return static_cast<std::size_t>(std::find(key.choices.begin(), key.choices.end(), value) -
                                    key.choices.begin());
}

Value choice_at(const Key& key, std::size_t index) {
    return std::string(key.choices.at(index));
}

/// The members of an enumeration stand in the order of the key's choices.
template <class Enum>
void choose(const Key& key, const Value& value, Enum& home) {
    home = Enum{static_cast<int>(choice_index(key, std::get<std::string>(value)))};
}
template <class Enum>
Value chosen(const Key& key, Enum held) {
    return choice_at(key, static_cast<std::size_t>(held));
}

std::string list_text(const std::vector<std::string>& items) {
    return fmt::format("[{}]", fmt::join(items, ", "));
}

std::string quantity_text(double value, Quantity quantity) {
    const std::string text = format_quantity(value, quantity);
    return quantity == Quantity::number ? text : quoted(text);
}

/// Values over time; a single one is a constant.
std::string rows_text(const std::vector<double>& times, const std::vector<double>& values,
                      Quantity quantity) {
    if (times.size() == 1) return quantity_text(values.front(), quantity);
    std::vector<std::string> rows;
    for (std::size_t i = 0; i < times.size(); ++i)
        rows.push_back(list_text(
            {quantity_text(times[i], Quantity::time), quantity_text(values[i], quantity)}));
    return list_text(rows);
}

}  // namespace

void set_value(StoveDraft& draft, const FoundKey& found, const Value& value) {
    const Key& key = *found.key;
    std::visit(
        Overloaded{
            [](std::monostate) {},
            [&](double* home) { *home = std::get<double>(value); },
            [&](std::optional<double>* home) { *home = std::get<double>(value); },
            [&](int* home) { *home = static_cast<int>(std::get<double>(value)); },
            [&](bool* home) { *home = choice_index(key, std::get<std::string>(value)) == 1; },
            [&](KindlingPlace* home) { choose(key, value, *home); },
            [&](LeakPlace* home) { choose(key, value, *home); },
            [&](Standing* home) { choose(key, value, *home); },
            [&](std::string* home) { *home = std::get<std::string>(value); },
            [&](std::vector<double>* home) { *home = std::get<std::vector<double>>(value); },
            [&](std::vector<std::string>* home) {
                *home = std::get<std::vector<std::string>>(value);
            },
            [&](BuildUp* home) { *home = std::get<BuildUp>(value); },
            [&](Table* home) { *home = std::get<Table>(value); },
            [&](std::optional<Table>* home) { *home = std::get<Table>(value); },
            [&](Steps* home) { *home = std::get<Steps>(value); },
            [&](std::vector<LoadTime>* home) { *home = std::get<std::vector<LoadTime>>(value); },
        },
        key.field(draft, found.name, true));
}

std::optional<Value> get_value(StoveDraft& draft, const FoundKey& found) {
    using Maybe = std::optional<Value>;
    const Key& key = *found.key;
    const auto unless_empty = [](const auto& held) { return held.empty() ? Maybe() : Maybe(held); };
    return std::visit(
        Overloaded{
            [](std::monostate) { return Maybe(); },
            [](const double* home) { return Maybe(*home); },
            [](const std::optional<double>* home) { return *home ? Maybe(**home) : Maybe(); },
            [](const int* home) { return Maybe(static_cast<double>(*home)); },
            [&](const bool* home) { return Maybe(choice_at(key, *home ? 1 : 0)); },
            [&](const KindlingPlace* home) { return Maybe(chosen(key, *home)); },
            [&](const LeakPlace* home) { return Maybe(chosen(key, *home)); },
            [&](const Standing* home) { return Maybe(chosen(key, *home)); },
            [&](const std::string* home) { return unless_empty(*home); },
            [&](const std::vector<double>* home) { return unless_empty(*home); },
            [&](const std::vector<std::string>* home) { return unless_empty(*home); },
            [&](const BuildUp* home) { return unless_empty(*home); },
            [](const Table* home) { return Maybe(*home); },
            [](const std::optional<Table>* home) { return *home ? Maybe(**home) : Maybe(); },
            [](const Steps* home) { return Maybe(*home); },
            [&](const std::vector<LoadTime>* home) { return unless_empty(*home); },
        },
        key.field(draft, found.name, false));
}

std::string value_text(const Key& key, const Value& value) {
    return std::visit(
        Overloaded{
            [&](double held) {
                if (key.kind == Kind::clock) return quoted(clock_text(held));
                return key.kind == Kind::count ? fmt::format("{:.0f}", held)
                                               : quantity_text(held, key.quantity);
            },
            [](const std::string& held) { return quoted(held); },
            [&](const std::vector<double>& held) {
                std::vector<std::string> items;
                items.reserve(held.size());
                for (const double each : held) items.push_back(quantity_text(each, key.quantity));
                return list_text(items);
            },
            [](const std::vector<std::string>& held) {
                std::vector<std::string> items;
                items.reserve(held.size());
                for (const std::string& each : held) items.push_back(quoted(each));
                return list_text(items);
            },
            [](const BuildUp& held) {
                std::vector<std::string> items;
                items.reserve(held.size());
                for (const Layer& layer : held)
                    items.push_back(quoted(format_quantity(layer.thickness, Quantity::length) +
                                           " " + layer.material));
                return list_text(items);
            },
            [&](const Table& held) { return rows_text(held.x(), held.y(), key.quantity); },
            [&](const Steps& held) { return rows_text(held.time(), held.value(), key.quantity); },
            [](const std::vector<LoadTime>& held) {
                std::vector<std::string> rows;
                rows.reserve(held.size());
                for (const LoadTime& each : held)
                    rows.push_back(
                        list_text({quantity_text(each.time, Quantity::time), quoted(each.load)}));
                return list_text(rows);
            },
        },
        value);
}

}  // namespace drawwell
