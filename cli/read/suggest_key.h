#pragma once

#include <string>
#include <string_view>

namespace drawwell {

struct Key;

/// For a key nobody knows: `; did you mean "flue.stack.length"?`, or what its table takes.
std::string suggest_key(std::string_view key);

/// The key of that name. InputError, beginning with the option as `typed`: nobody knows it.
const Key& known_key(std::string_view key, std::string_view typed);

/// For a table nobody knows: `; did you mean "[barrel]"?`, or the tables there are.
std::string suggest_table(std::string_view table);

/// For a table's name with a value behind it: how the table is written.
std::string table_help(std::string_view table);

}  // namespace drawwell
