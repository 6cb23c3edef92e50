#pragma once

#include <optional>
#include <string>
#include <vector>

#include "models/stove.h"

namespace drawwell {

// What the drawing, the cut list and the templates take for granted about how the parts of a stove
// meet. The calculation asks for none of it. Lengths [m].

/// Seen from above: x along the tunnel, from the feed's centre to the riser; y across it.
struct FlatPoint {
    double x = 0, y = 0;
};

/// Half of the riser's inner section, widened by so much of its wall; the depth of a square one
/// lies along the tunnel.
double riser_half_along(const Riser& riser, double wall);
double riser_half_across(const Riser& riser, double wall);
/// Outline about the riser's axis; a round one as a polygon of at least 24 sides.
std::vector<FlatPoint> riser_outline(const Riser& riser, double wall, int sides = 180);

/// Where a wall's layers begin and end, outwards from its gas face.
struct Band {
    const Layer* layer = nullptr;
    double from = 0, to = 0;
};
std::vector<Band> bands(const BuildUp& wall);

/// The tunnel between floor and roof: first a firebox if it is larger, then the rest.
struct TunnelStretch {
    double from = 0, to = 0;       // along the tunnel, from the feed's centre
    double width = 0, height = 0;  // inside
};
std::vector<TunnelStretch> tunnel_stretches(const Stove& stove);

/// The riser's axis from the feed's centre; 0 without a tunnel.
double riser_axis(const Stove& stove);
/// The height the riser's wall stands on: the floor of a tunnel, or the riser's own foot.
double riser_stands_at(const Stove& stove);
/// The wall behind the fire, from the feed's centre.
double back_wall(const Stove& stove);
/// The outside of that wall, where the tunnel's floor begins.
double back_end(const Stove& stove);
/// The riser's outside on the far side, where the floor ends.
double riser_end(const Stove& stove);
/// The feed's outside towards the riser, where the tunnel's roof begins.
double roof_start(const Stove& stove);
/// Where the tunnel's sides and roof end: at the riser's outside, or at the feed if the riser's
/// wall is so thick that it reaches back there. Needs a tunnel.
double tunnel_end(const Stove& stove);
/// By how much a tunnel is too short for the walls of feed and riser to stand in it side by side.
double too_short_by(const Stove& stove);

/// How far barrel, jacket and plate reach on the side away from the feed; without a barrel the
/// riser.
double stove_side(const Stove& stove);

/// What a connector into a bell is made of: the barrel's sheet, else the flue's wall.
const BuildUp& connector_wall(const Stove& stove);

/// What the gas leaves barrel or riser by: the flue's first section, the connector into the first
/// bell, or, without a flue, a bare hole as large as the riser's section.
struct GasOutlet {
    const FlueSection* flue = nullptr;
    const Bell* bell = nullptr;     // where there is one, it is that
    double bore = 0, outer = 0;     // inside and outside; of a hole the same
    double shown = 0;               // how much of it the section shows
    const BuildUp* wall = nullptr;  // of a hole none
    std::string name = {};          // "flue outlet"
};
GasOutlet gas_outlet(const Stove& stove);

/// Length of an oven tube, as the calculation has it: through the middle of the space round the
/// riser. Needs a barrel.
double oven_length(const Stove& stove);

/// Where the feed's own wall begins, at the roof over the fire.
double feed_foot(const Stove& stove);

double barrel_inside(const Barrel& barrel);
/// Outer diameter of a flue section.
double outer_diameter(const FlueSection& section);

/// The opening in the riser's foot: the port, or the tunnel's own section; none without either.
struct Doorway {
    double width = 0, height = 0;
    bool port = false;
};
std::optional<Doorway> doorway(const Stove& stove);

}  // namespace drawwell
