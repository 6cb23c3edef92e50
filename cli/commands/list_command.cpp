#include "cli/commands/list_command.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cctype>
#include <iostream>
#include <map>
#include <memory>
#include <vector>

#include "cli/commands/units_option.h"
#include "cli/read/keys.h"
#include "cli/read/read_library.h"
#include "cli/read/units.h"
#include "cli/report/answer_infos.h"
#include "cli/report/page_text.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr std::size_t widest_lead = 44;            // characters before a text beside them
constexpr double pounds_a_cubic_foot = 0.0624280;  // of kg/m3: 0.45359237 kg, 0.3048 m, exact
constexpr double room_temperature = 293.15,
                 hot_temperature = 873.15;  // [K] conductivities are shown at

/// Characters a terminal shows of a UTF-8 text.
std::size_t shown_width(std::string_view text) {
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

std::string padded(const std::string& text, std::size_t width) {
    return text + std::string(width - std::min(width, shown_width(text)), ' ');
}

/// Rows of cells in aligned columns; the last column is wrapped.
class Sheet {
  public:
    explicit Sheet(std::vector<std::string> head) { rows_.push_back(std::move(head)); }
    void add(std::vector<std::string> row) { rows_.push_back(std::move(row)); }
    bool empty() const { return rows_.size() == 1; }

    std::string text() const {
        std::vector<std::size_t> widths(rows_.front().size(), 0);
        for (const auto& row : rows_)
            for (std::size_t i = 0; i < row.size(); ++i)
                widths[i] = std::max(widths[i], shown_width(row[i]));
        std::string result;
        for (const auto& row : rows_) {
            std::size_t indent = 0;
            std::string lead;
            for (std::size_t i = 0; i + 1 < row.size(); ++i) {
                lead += padded(row[i], widths[i] + 2);
                indent += widths[i] + 2;
            }
            if (indent <= widest_lead) {
                result += wrapped(lead, row.back(), indent);
                continue;
            }
            // Too little room beside it: the text stands below.
            lead.erase(lead.find_last_not_of(' ') + 1);
            result += lead + "\n" + wrapped("    ", row.back(), 4);
        }
        return result;
    }

  private:
    std::vector<std::vector<std::string>> rows_;
};

std::string sheet_text(const Sheet& sheet, const std::string& word) {
    if (sheet.empty()) throw InputError(fmt::format("nothing in this list contains \"{}\"", word));
    return sheet.text();
}

bool contains(std::string_view text, const std::string& word) {
    return text.find(word) != std::string_view::npos;
}

/// "length in mm, cm, m, in, ft, from 20 mm to 5 m", or what else the key takes.
std::string accepted(const Key& key, UnitSystem system) {
    const auto range = [&](std::string_view what) {
        const std::string units = accepted_units(key.quantity);
        return fmt::format("{}{}{}, from {} to {}", what, units.empty() ? "" : " in ", units,
                           show_setting(key.least, key.quantity, system),
                           show_setting(key.most, key.quantity, system));
    };
    switch (key.kind) {
        case Kind::quantity:
            return range(quantity_name(key.quantity));
        case Kind::count:
            return fmt::format("whole number from {} to {}", key.least, key.most);
        case Kind::text:
            return "text";
        case Kind::choice:
            return fmt::format("one of {}", fmt::join(key.choices, ", "));
        case Kind::material:
            return "a name of `list materials`";
        case Kind::wood:
            return "a name of `list woods`";
        case Kind::times:
            return range("time, or a list of them,");
        case Kind::names:
            return "list of names";
        case Kind::build_up:
            return "list, from the gas outwards, of layers such as \"25 mm aes_board\" and of "
                   "names of `list build-ups`";
        case Kind::table:
            return range(fmt::format("{}, or a list of [time, {}],", quantity_name(key.quantity),
                                     quantity_name(key.quantity)));
        case Kind::steps: {
            std::vector<std::string_view> words;
            for (const NumberWord& word : key.words) words.push_back(word.name);
            return fmt::format("{}; or {}; or a list of [time, {}], each held until the next",
                               range(quantity_name(key.quantity)), fmt::join(words, ", "),
                               quantity_name(key.quantity));
        }
        case Kind::loads:
            return "list of [time, name of a load]";
        case Kind::clock:
            return "time of day such as \"19:30\"";
    }
    return {};
}

std::string default_of(const Key& key, UnitSystem system) {
    if (key.required) return "required";
    std::string fallback(key.fallback);
    if (system == UnitSystem::us && key.kind == Kind::quantity && !fallback.empty() &&
        std::isdigit(static_cast<unsigned char>(fallback.front())) != 0)
        try {
            fallback = show_setting(parse_quantity(fallback, key.quantity), key.quantity, system);
        } catch (const InputError&) {
            // In words, which no unit changes.
        }
    return fallback + (key.practice ? " *" : "");
}

}  // namespace

std::string list_keys(const std::string& word, UnitSystem system) {
    Sheet sheet({"key", "meaning; [default if the file is silent]"});
    bool practice = false;
    for (const Key& key : all_keys()) {
        if (!contains(key.name, word) && !contains(key.help, word)) continue;
        practice = practice || key.practice;
        sheet.add(
            {std::string(key.name), fmt::format("{} [{}]", key.help, default_of(key, system))});
        if (!word.empty()) sheet.add({"", accepted(key, system)});
    }
    std::string text = sheet_text(sheet, word);
    if (practice) text += "* common practice, no source\n";
    if (word.empty()) text += "`drawwell list keys WORD` adds units and ranges.\n";
    return text;
}

std::string list_materials(const Library& library, const std::string& word, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const double weight = us ? pounds_a_cubic_foot : 1;
    Sheet sheet({"material", us ? "lb/ft3" : "kg/m3", "leads", "hot", "radiates", "what it is"});
    for (const auto& [name, material] : library.materials)
        if (contains(name, word) || contains(material.meaning, word))
            sheet.add({name, fmt::format("{:.0f}", material.density * weight),
                       fmt::format("{:.3g}", material.conductivity(room_temperature)),
                       fmt::format("{:.3g}", material.conductivity(hot_temperature)),
                       fmt::format("{:.2f}", material.emissivity), material.meaning});
    return sheet_text(sheet, word) +
           wrapped("",
                   in_system("leads, hot: how well it leads heat at 20 °C and at 600 °C (heat "
                             "conductivity, W/(m K)); radiates: its share of what a black face "
                             "would radiate (emissivity)",
                             system),
                   0);
}

std::string list_build_ups(std::span<const NamedBuildUp> build_ups, const std::string& word) {
    Sheet sheet({"build-up", "what it is, and its layers from the gas outwards"});
    for (const NamedBuildUp& each : build_ups) {
        const std::string layers = fmt::format("{}", fmt::join(each.layers, ", "));
        if (!contains(each.name, word) && !contains(each.meaning, word) && !contains(layers, word))
            continue;
        sheet.add({each.name, each.meaning});
        sheet.add({"", layers});
    }
    return sheet_text(sheet, word) +
           "A name stands wherever a wall takes layers: riser.lining = \"board\"\n";
}

std::string list_woods(const Library& library, const std::string& word, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const double weight = us ? pounds_a_cubic_foot : 1;
    const double heat = us ? 1 / number_in(1, "lb", Quantity::mass) : 1;
    Sheet sheet({"wood", us ? "lb/ft3" : "kg/m3", us ? "MJ/lb dry" : "MJ/kg dry", "what it is"});
    for (const auto& [name, wood] : library.woods)
        if (contains(name, word) || contains(wood.meaning, word))
            sheet.add(
                {name, fmt::format("{:.0f}", wood.density * weight),
                 fmt::format("{:.1f}", wood.higher_heating_value * (1 - wood.ash) * 1e-6 * heat),
                 wood.meaning});
    return sheet_text(sheet, word) +
           wrapped("",
                   "heat: all that dry wood gives, with the warmth of its steam (higher "
                   "heating value)",
                   0);
}

std::string list_columns(std::span<const ColumnInfo> columns, const std::string& word) {
    Sheet sheet({"column", "unit", "along", "meaning"});
    for (const ColumnInfo& column : columns)
        if (contains(column.name, word) || contains(column.meaning, word))
            sheet.add({std::string(column.name), std::string(column.unit), std::string(column.axis),
                       std::string(column.meaning)});
    return sheet_text(sheet, word);
}

std::string list_answers(const std::string& word) {
    Sheet sheet({"answer", "unit", "meaning"});
    const auto add = [&](const AnswerInfo& info) {
        if (contains(info.name, word) || contains(info.meaning, word))
            sheet.add({info.name, info.unit, info.meaning});
    };
    for (const AnswerInfo& info : burn_answers()) add(info);
    for (const AnswerInfo& info : fitting_answer_infos()) add(info);
    return sheet_text(sheet, word);
}

void add_list_command(CLI::App& app) {
    CLI::App* command =
        app.add_subcommand("list", "what a file can say, and what it can be made of");
    struct Request {
        std::string what, word;
        UnitSystem units = UnitSystem::metric;
    };
    auto request = std::make_shared<Request>();
    command
        ->add_option("WHAT", request->what, "keys, materials, build-ups, woods, columns or answers")
        ->required()
        ->check(CLI::IsMember({"keys", "materials", "build-ups", "woods", "columns", "answers"}));
    command->add_option("WORD", request->word, "only entries that contain it");
    add_units_option(*command, request->units);
    command->footer(
        "Examples:\n"
        "  drawwell list keys riser\n"
        "  drawwell list answers smoke\n");
    command->callback([request] {
        const std::string& word = request->word;
        if (request->what == "keys") std::cout << list_keys(word, request->units);
        if (request->what == "materials")
            std::cout << list_materials(read_library(), word, request->units);
        if (request->what == "build-ups") std::cout << list_build_ups(read_build_ups(), word);
        if (request->what == "woods") std::cout << list_woods(read_library(), word, request->units);
        if (request->what == "answers") std::cout << list_answers(word);
        if (request->what == "columns") std::cout << list_columns(all_columns(), word);
    });
}

}  // namespace drawwell
