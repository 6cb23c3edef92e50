#pragma once

#include <string>
#include <string_view>

namespace drawwell {

/// What an input of a study is, in plain words: of a key its help's first clause, of an uncertain
/// figure what it does. An input without words gives its name.
std::string input_in_words(std::string_view name);

}  // namespace drawwell
