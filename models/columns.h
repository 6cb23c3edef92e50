#pragma once

#include <span>
#include <string_view>

namespace drawwell {

/// One column that a burn can write: the single list behind files, `list columns` and plots.
struct ColumnInfo {
    std::string_view name;
    std::string_view unit;     // SI
    std::string_view axis;     // empty: one value an instant
    std::string_view meaning;  // one phrase, in the trade's words
};

/// Every column, in the order of the file.
std::span<const ColumnInfo> all_columns();

}  // namespace drawwell
