#pragma once

#include <string_view>

namespace drawwell {

/// Text of a file of data/, by its path below it ("materials.toml"); empty if there is none.
std::string_view embedded_data(std::string_view name);

}  // namespace drawwell
