#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace drawwell {

/// Where something stands in a stove file; line 0: not in the file.
struct Place {
    std::size_t line = 0;
    std::size_t column = 0;
};

/// A value as somebody wrote it, not yet understood.
struct RawValue {
    enum class Form { text, number, boolean, list, other };
    Form form = Form::other;
    std::string text;             // of a text
    double number = 0;            // of a number; may be nan or inf
    std::vector<RawValue> items;  // of a list
    std::string shown;            // as written, for messages
    Place place;
};

/// `KEY = VALUE` from the file or the command line.
struct Entry {
    std::string key;  // `flue.stack.length`
    RawValue value;
    Place place;  // of the key
    bool from_override = false;
    std::string option = {};  // of an override, as typed: `--set riser.top=3m`
};

/// A table of the file: `[flue.stack]`.
struct TableHead {
    std::string name;
    Place place;
};

/// A stove file taken apart, in the order of its lines.
struct RawFile {
    std::vector<Entry> entries;
    std::vector<TableHead> tables;
};

/// Takes a TOML text apart. InputError names file, line and column of the first error of syntax.
RawFile parse_raw(std::string_view text, std::string_view file_name);

/// A value of the command line: a TOML list if it starts with a bracket, a list if there are commas
/// and `is_list`, otherwise a text.
RawValue parse_raw_override(std::string_view text, bool is_list);

/// A text as a TOML string, quotes included.
std::string quoted(std::string_view text);

}  // namespace drawwell
