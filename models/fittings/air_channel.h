#pragma once

#include "models/fittings/kind.h"

namespace drawwell {

/// A channel along the outside of the tunnel's floor and sides that brings air to the fire, warmed
/// by what the lining loses. It ends in the hearth.
struct AirChannel {
    static constexpr std::string_view table = "air_channel";
    static constexpr std::string_view axis_meaning = "length of the channel along the tunnel";
    std::string name;
    double width = 0, height = 0;  // [m] its section; its width lies against the lining
    double length = 0;             // [m] along the tunnel
    bool outdoors = false;         // takes its air from outdoors, else from the room

    double position() const { return length; }
    static std::span<const ColumnInfo> columns();
};

/// No tunnel to run along, a channel longer than the tunnel, or wider than its outside.
std::vector<FittingProblem> problems(const AirChannel& channel, const Stove& stove);

/// Lays the channel along the tunnel, which must be there already.
void add_fitting(StoveBuilder& builder, const AirChannel& channel);

/// How much air it brings, how warm. `at`: which of the channels it is.
std::vector<FittingAnswer> answers(const AirChannel& channel, const Stove& stove, std::size_t at,
                                   const Results& results);

}  // namespace drawwell
