#pragma once

#include <string_view>
#include <vector>

#include "models/stove.h"

namespace drawwell {

/// What a block of the cut stove is of: gas in a part of its way, or a wall round it.
enum class CutPart {
    feed_gas,
    feed_wall,
    tunnel_gas,
    tunnel_floor,
    tunnel_roof,
    doorway,  // through the riser's wall
    riser_gas,
    riser_wall,
    space_round_riser,
    under_plate,
    barrel_wall,
    barrel_ring,  // closes the barrel's foot
    jacket,
    plate,
    plate_cover,  // in its hole
    flue_gas,
    flue_wall,
};

/// A rectangle of the stove cut along its tunnel [m]: x from the feed's centre towards the riser, y
/// over the tunnel floor.
struct CutBlock {
    CutPart part;
    std::string_view material;  // empty: gas; from the stove, which must outlive it
    double x1 = 0, y1 = 0, x2 = 0, y2 = 0;
    bool inmost = true;  // of a wall's layers the one at the gas
};

/// The stove cut open, each block painted over those before it; of the flue its first piece, of a
/// bell the connector into it, of neither the hole by which the gas leaves. Blocks without extent
/// are left out. Sheet and report page draw by it.
std::vector<CutBlock> cut_outline(const Stove& stove);

}  // namespace drawwell
