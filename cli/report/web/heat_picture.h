#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "models/summary.h"

namespace drawwell {

/// One stream of a burn's heat.
struct HeatStream {
    std::string_view name;  // in the trade's words
    std::string_view kind;  // that it is painted by
    double heat = 0;        // [J]
};

/// What gave heat over a burn and where it went, each over nothing, the largest of what belongs
/// together first; both come to the same sum but for what the books miss.
struct HeatStreams {
    std::vector<HeatStream> given, gone;
};
HeatStreams heat_streams(const Summary& summary);

/// Those streams as SVG: as wide as they carry heat, from the fire on the left to where it goes.
/// Empty: no heat was given.
std::string heat_picture(const Summary& summary);

}  // namespace drawwell
