#pragma once

#include <cstddef>
#include <vector>

#include "solver/network.h"

namespace drawwell {

/// Which flows are free and which follow: the loops of the gas path.
///
/// Each inlet passage closes one loop through the surroundings, so its flow is an unknown; every
/// other flow follows from continuity. The first inlet is the driver: the feed.
struct Topology {
    std::size_t loop_count = 0;
    std::vector<std::size_t> inlets;            // passage of each unknown flow
    std::vector<std::vector<double>> by_inlet;  // [passage][unknown] flow caused by a unit of it
    std::vector<std::vector<double>> by_site;   // [passage][fire site] flow caused by its emission
    /// [loop][passage] +1, -1 or 0: how often, and which way, a loop runs through a passage. Loops
    /// after the first avoid the flue where they can, so that they are cheap to work out.
    std::vector<std::vector<double>> loop;
    /// The boundaries at a loop's ends: +1 where it comes in, -1 where it goes out.
    struct End {
        std::size_t junction = 0;
        double share = 0;
    };
    std::vector<std::vector<End>> loop_ends;  // [loop]
    /// What each loop feels [-] of a push at the end where the first one leaves: a gust there.
    std::vector<double> gust_share;

    /// How much of a push at some boundaries, as that many pascals less there (a fan's suction in
    /// the room), counts against each loop [-]. A push of more, a gust, is minus that.
    std::vector<double> suction_share(const std::vector<JunctionId>& boundaries) const;
};

/// InputError: a part of the network is cut off, or nothing lets air in.
Topology find_topology(const Network& network);

}  // namespace drawwell
