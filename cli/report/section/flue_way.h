#pragma once

#include <vector>

#include "cli/report/section/fitting_shapes.h"
#include "models/stove.h"

namespace drawwell {

/// A straight piece of the flue, in the section's coordinates [m].
struct FlueRun {
    const FlueSection* section = nullptr;
    FlatPoint from, along;  // where its axis begins; its direction, of length 1
    double length = 0;
    double start = 0;            // of the gas's way from the flue outlet, as the columns count it
    double half = 0, outer = 0;  // half of its bore, half of its outside
    bool bent = false;           // it begins at a bend

    FlatPoint end() const { return {from.x + along.x * length, from.y + along.y * length}; }
    /// A point so far along it, and so far to the left of its axis.
    FlatPoint at(double way, double aside) const {
        return {from.x + along.x * way - along.y * aside, from.y + along.y * way + along.x * aside};
    }
};

/// A bell cut through its middle.
struct BellCut {
    const Bell* bell = nullptr;
    double x1 = 0, y1 = 0, x2 = 0, y2 = 0;  // inside
    double start = 0;                       // of the gas's way; it goes on for the bell's height
};

/// How the gas goes from the stove to the open air, as far as a file tells: each piece as long, as
/// wide and as steep as it is, all turned into the section's plane, away from the feed.
struct FlueWay {
    FlatPoint outlet;             // where it leaves barrel or riser
    std::vector<CutShape> stubs;  // level ones from there to what stands beside the barrel
    std::vector<BellCut> bells;
    std::vector<FlueRun> runs;
    std::vector<CutShape> bypass;  // from under the plate, as short as it may go
};

FlueWay flue_way(const Stove& stove);

}  // namespace drawwell
