#include "cli/commands/list_command.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>
#include <memory>
#include <vector>

#include "cli/read/keys.h"
#include "cli/read/read_library.h"
#include "cli/read/units.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr std::size_t line_width = 100;
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

/// Breaks a text into lines that end at `line_width` and start at `indent`, the first one as it
/// stands.
std::string wrapped(std::string_view text, std::size_t indent) {
    std::string result;
    std::size_t column = indent;
    while (!text.empty()) {
        const std::size_t length = std::min(text.find(' '), text.size());
        const std::string word(text.substr(0, length));
        if (column > indent && column + 1 + shown_width(word) > line_width) {
            result += "\n" + std::string(indent, ' ') + word;
            column = indent + shown_width(word);
        } else {
            result += (column > indent ? " " : "") + word;
            column += shown_width(word) + (column > indent ? 1 : 0);
        }
        text.remove_prefix(std::min(length + 1, text.size()));
    }
    return result;
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
            for (std::size_t i = 0; i + 1 < row.size(); ++i) {
                result += padded(row[i], widths[i] + 2);
                indent += widths[i] + 2;
            }
            result += wrapped(row.back(), indent) + "\n";
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
std::string accepted(const Key& key) {
    const auto range = [&](std::string_view what) {
        const std::string units = accepted_units(key.quantity);
        return fmt::format("{}{}{}, from {} to {}", what, units.empty() ? "" : " in ", units,
                           show_quantity(key.least, key.quantity),
                           show_quantity(key.most, key.quantity));
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

std::string default_of(const Key& key) {
    if (key.required) return "required";
    return std::string(key.fallback) + (key.practice ? " *" : "");
}

}  // namespace

std::string list_keys(const std::string& word) {
    Sheet sheet({"key", "meaning; [default if the file is silent]"});
    bool practice = false;
    for (const Key& key : all_keys()) {
        if (!contains(key.name, word) && !contains(key.help, word)) continue;
        practice = practice || key.practice;
        sheet.add({std::string(key.name), fmt::format("{} [{}]", key.help, default_of(key))});
        if (!word.empty()) sheet.add({"", accepted(key)});
    }
    std::string text = sheet_text(sheet, word);
    if (practice) text += "* common practice, no source\n";
    if (word.empty()) text += "`drawwell list keys WORD` adds units and ranges.\n";
    return text;
}

std::string list_materials(const Library& library, const std::string& word) {
    Sheet sheet({"material", "kg/m3", "k 20 °C", "k 600 °C", "emits", "what it is"});
    for (const auto& [name, material] : library.materials)
        if (contains(name, word) || contains(material.meaning, word))
            sheet.add({name, fmt::format("{:.0f}", material.density),
                       fmt::format("{:.3g}", material.conductivity(room_temperature)),
                       fmt::format("{:.3g}", material.conductivity(hot_temperature)),
                       fmt::format("{:.2f}", material.emissivity), material.meaning});
    return sheet_text(sheet, word) + "k: heat conductivity in W/(m K); emits: emissivity\n";
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

std::string list_woods(const Library& library, const std::string& word) {
    Sheet sheet({"wood", "kg/m3", "MJ/kg dry, higher", "what it is"});
    for (const auto& [name, wood] : library.woods)
        if (contains(name, word) || contains(wood.meaning, word))
            sheet.add({name, fmt::format("{:.0f}", wood.density),
                       fmt::format("{:.1f}", wood.higher_heating_value * (1 - wood.ash) * 1e-6),
                       wood.meaning});
    return sheet_text(sheet, word);
}

std::string list_columns(std::span<const ColumnInfo> columns, const std::string& word) {
    Sheet sheet({"column", "unit", "along", "meaning"});
    for (const ColumnInfo& column : columns)
        if (contains(column.name, word) || contains(column.meaning, word))
            sheet.add({std::string(column.name), std::string(column.unit), std::string(column.axis),
                       std::string(column.meaning)});
    return sheet_text(sheet, word);
}

void add_list_command(CLI::App& app) {
    CLI::App* command =
        app.add_subcommand("list", "what a file can say, and what it can be made of");
    struct Request {
        std::string what, word;
    };
    auto request = std::make_shared<Request>();
    command->add_option("WHAT", request->what, "keys, materials, build-ups, woods or columns")
        ->required()
        ->check(CLI::IsMember({"keys", "materials", "build-ups", "woods", "columns"}));
    command->add_option("WORD", request->word, "only entries that contain it");
    command->callback([request] {
        const std::string& word = request->word;
        if (request->what == "keys") fmt::print("{}", list_keys(word));
        if (request->what == "materials") fmt::print("{}", list_materials(read_library(), word));
        if (request->what == "build-ups") fmt::print("{}", list_build_ups(read_build_ups(), word));
        if (request->what == "woods") fmt::print("{}", list_woods(read_library(), word));
        if (request->what == "columns") fmt::print("{}", list_columns(all_columns(), word));
    });
}

}  // namespace drawwell
