#pragma once

#include <span>
#include <string_view>

namespace drawwell {

/// What everyone who builds such a stove must know, a sentence or two each. Common practice.
std::span<const std::string_view> standing_cautions();

}  // namespace drawwell
