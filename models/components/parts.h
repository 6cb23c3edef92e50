#pragma once

#include "models/components/stove_builder.h"

namespace drawwell {

// The parts of a stove, each adding itself to the network in the order the gas meets them. Each
// reads its own section of the stove and the marks that earlier parts left in the layout.

/// Feed tube: room air past the standing wood down to the hearth. Without a feed, room air enters
/// straight at the hearth through the port, or a plain opening.
void add_feed(StoveBuilder& builder);

/// Slots and rows of holes that let air to the hearth, from the room or ducted from outdoors.
void add_side_air(StoveBuilder& builder);

/// Burn tunnel from hearth to riser foot, its roof, the wall behind the fire, and the port.
void add_tunnel(StoveBuilder& builder);

/// Riser from its foot to its upper end.
void add_riser(StoveBuilder& builder);

/// A lid on the barrel's rim, a cover in the plate's hole: 200 W/(m2 K) over a seat [m] wide (our
/// choice; a rope seal gives less, a bolted flange more).
inline constexpr double seat_conductance = 200, seat_width = 0.01;

/// Plate, what lies in its hole, and the turn of the gas under it.
void add_plate(StoveBuilder& builder);

/// How far heat bows the plate, told beside the burn and fed back into nothing; after all that lies
/// on it. Nothing where the expansion of its metal is not known.
void add_plate_bow(StoveBuilder& builder);

/// Barrel and the space round the riser, down to the flue outlet.
void add_barrel(StoveBuilder& builder);

/// Short cut from under the plate to the flue outlet or the start of a section of the flue, which
/// must be there; of the barrel's sheet.
void add_bypass(StoveBuilder& builder);

/// Joints that are not tight, towards the room.
void add_leaks(StoveBuilder& builder);

/// Flue sections to the outdoors.
void add_flue(StoveBuilder& builder);

}  // namespace drawwell
