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

/// A level pipe that no section of the file tells: a connector into a bell, or the piece from
/// barrel or bell to the foot of an upright flue. As short as it may be; the calculation gives it
/// no length.
struct LevelPipe {
    std::string name;
    const Bell* into = nullptr;  // a connector's; null: it leads to the flue
    FlatPoint from;              // where its axis begins
    double to = 0;               // where it ends
    double bore = 0, outer = 0;  // inside, outside
    const BuildUp* wall = nullptr;

    double length() const { return to - from.x; }
    /// Its outline, half so wide.
    CutShape shape(double half) const;
};

/// How the gas goes from the stove to the open air, as far as a file tells: each piece as long, as
/// wide and as steep as it is, all turned into the section's plane, away from the feed.
struct FlueWay {
    FlatPoint outlet;                // where it leaves barrel or riser
    std::vector<LevelPipe> connect;  // in the order the gas meets them
    std::vector<BellCut> bells;
    std::vector<FlueRun> runs;
    std::vector<CutShape> bypass;  // from under the plate, as short as it may go
};

FlueWay flue_way(const Stove& stove);

/// Length of the bypass: as the file says, or more where it has farther to go up or down. Needs a
/// bypass.
double bypass_length(const Stove& stove);

}  // namespace drawwell
