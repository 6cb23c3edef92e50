#include "cli/read/raw_value.h"

#include <fmt/format.h>

#include <algorithm>

// Of what it reads, toml++ 3.3 takes for granted that a name stands behind a bracket: in debug
// builds it aborts, in others the behaviour is undefined. Without its assertions it refuses that in
// words.
#undef NDEBUG
#define TOML_ASSERT(condition) static_assert(true)
#include <toml++/toml.h>

#include "cli/read/beyond_ascii.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

Place place_of(const toml::source_region& source) {
    return {source.begin.line, source.begin.column};
}

RawValue raw_of(const toml::node& node) {
    using Form = RawValue::Form;
    RawValue raw;
    raw.place = place_of(node.source());
    if (const auto* text = node.as_string()) {
        raw.form = Form::text;
        raw.text = text->get();
        raw.shown = quoted(raw.text);
    } else if (const auto* number = node.as_floating_point()) {
        raw.form = Form::number;
        raw.number = number->get();
        raw.shown = fmt::format("{}", raw.number);
    } else if (const auto* whole = node.as_integer()) {
        raw.form = Form::number;
        raw.number = static_cast<double>(whole->get());
        raw.shown = fmt::format("{}", whole->get());
    } else if (const auto* flag = node.as_boolean()) {
        raw.form = Form::boolean;
        raw.shown = flag->get() ? "true" : "false";
    } else if (const auto* list = node.as_array()) {
        raw.form = Form::list;
        for (const toml::node& item : *list) raw.items.push_back(raw_of(item));
        for (const RawValue& item : raw.items)
            raw.shown += (raw.shown.empty() ? "" : ", ") + item.shown;
        raw.shown = "[" + raw.shown + "]";
    } else {
        raw.shown = node.is_table() ? "{...}" : "a date or time";
    }
    return raw;
}

void take_apart(const toml::table& table, const std::string& prefix, RawFile& file) {
    for (const auto& [key, node] : table) {
        const std::string name = prefix + std::string(key.str());
        const Place place = place_of(key.source());
        if (const toml::table* inner = node.as_table()) {
            file.tables.push_back({name, place});
            take_apart(*inner, name + ".", file);
        } else {
            file.entries.push_back({name, raw_of(node), place});
        }
    }
}

constexpr const char* unquoted =
    "a letter or sign beyond a to z stands outside quotes; put the name or value in quotes";

template <class Part>
void sort_by_line(std::vector<Part>& parts) {
    std::stable_sort(parts.begin(), parts.end(), [](const Part& a, const Part& b) {
        return std::pair(a.place.line, a.place.column) < std::pair(b.place.line, b.place.column);
    });
}

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

RawValue raw_text(std::string_view text) {
    RawValue raw;
    raw.form = RawValue::Form::text;
    raw.text = trimmed(text);
    raw.shown = raw.text;
    return raw;
}

}  // namespace

RawFile parse_raw(std::string_view text, std::string_view file_name) {
    if (const auto place = beyond_ascii_unquoted(text))
        throw InputError(
            fmt::format("{}:{}:{}: {}", file_name, place->line, place->column, unquoted));
    try {
        const toml::table table = toml::parse(text, file_name);
        RawFile file;
        take_apart(table, "", file);
        sort_by_line(file.entries);
        sort_by_line(file.tables);
        return file;
    } catch (const toml::parse_error& error) {
        const Place place = place_of(error.source());
        throw InputError(fmt::format("{}:{}:{}: this is not TOML: {}", file_name, place.line,
                                     place.column, error.description()));
    }
}

RawValue parse_raw_override(std::string_view text, bool is_list) {
    text = trimmed(text);
    if (text.starts_with('[')) {
        if (beyond_ascii_unquoted(text)) throw InputError(unquoted);
        try {
            const toml::table table = toml::parse(fmt::format("value = {}", text));
            RawValue raw = raw_of(*table.get("value"));
            raw.shown = text;
            return raw;
        } catch (const toml::parse_error& error) {
            throw InputError(fmt::format("this is not a list: {}", error.description()));
        }
    }
    RawValue raw = raw_text(text);
    if (!is_list || text.find(',') == std::string_view::npos) return raw;
    raw.form = RawValue::Form::list;
    for (bool more = true; more;) {
        const std::size_t comma = text.find(',');
        raw.items.push_back(raw_text(text.substr(0, comma)));
        more = comma != std::string_view::npos;
        if (more) text.remove_prefix(comma + 1);
    }
    return raw;
}

std::string quoted(std::string_view text) {
    std::string result = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') result += '\\';
        if (c == '\n')
            result += "\\n";
        else if (static_cast<unsigned char>(c) < 0x20)
            result +=
                fmt::format("\\u{:04x}", static_cast<unsigned>(static_cast<unsigned char>(c)));
        else
            result += c;
    }
    return result + "\"";
}

}  // namespace drawwell
