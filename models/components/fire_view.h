#pragma once

#include <span>
#include <vector>

#include "models/components/stove_builder.h"
#include "models/fire/fuel_site.h"

namespace drawwell {

// What fires see, as view factors from the fire's own surface. Each builds on exact factors
// between discs or rectangles, so that the shares sum to one but for what is open.

/// A ring of plate over a bore, and where it lies.
struct RingsAbove {
    std::vector<SolidId> rings;
    std::vector<double> edge;  // [m] radii, one more than rings
    double distance = 0;       // [m] from the bore's upper end
};

/// A fire that fills the foot of a straight bore sees its wall, cell by cell: the disc at a cell's
/// near end less that at its far end. `foot` is where the fire lies on the scale of the wall's
/// positions [m], `radius` the bore's [m], more than 0. What goes out at the upper end is open.
FireView bore_view(const SolidRow& wall, double foot, double radius);

/// Adds what the fire sees through the upper end of the bore, `length` [m] above it: the rings
/// within the bore by the discs at their edges, all else by area on those that a ray can meet.
void add_rings_above(FireView& view, const RingsAbove& above, double length, double radius);

/// What a fire at the riser's foot sees: riser and, over it, the plate.
FireView riser_view(const StoveBuilder& builder);

/// What a fire in the hearth sees. It fills the hearth below the feed, a box, and its surfaces see
/// the wall behind, floor and sides at once, the feed's lining above as if no wood stood there, and
/// the tunnel ahead; what reaches the tunnel's end meets the riser's foot through the port, or the
/// end round it. The room at the feed's mouth is open. Needs a tunnel.
FireView hearth_view(const StoveBuilder& builder);

}  // namespace drawwell
