#pragma once

#include <array>

#include "models/saved_state.h"

namespace drawwell {

/// A figure of a lot that a burn left, as the group `end_state` keeps it.
struct LotField {
    const char* name;
    const char* unit;
    const char* meaning;
    double (*get)(const LeftLot& left);
    void (*set)(LeftLot& left, double value);
    double least = 0, most = 1e6;  // both allowed, SI
};

inline constexpr std::array lot_fields{
    LotField{"left_dry_mass", "kg", "dry wood when it went in",
             [](const LeftLot& left) { return left.lot.dry_mass; },
             [](LeftLot& left, double value) { left.lot.dry_mass = value; }, 1e-9},
    LotField{"left_moisture", "1", "its water, of the dry wood",
             [](const LeftLot& left) { return left.lot.moisture_dry_basis; },
             [](LeftLot& left, double value) { left.lot.moisture_dry_basis = value; }, 0, 100},
    LotField{"left_lit_area", "m2", "lit area of its whole pieces",
             [](const LeftLot& left) { return left.lot.lit_area; },
             [](LeftLot& left, double value) { left.lot.lit_area = value; }},
    LotField{"left_section", "m2", "what its whole pieces take of the feed",
             [](const LeftLot& left) { return left.lot.section; },
             [](LeftLot& left, double value) { left.lot.section = value; }},
    LotField{"left_foot_share", "1", "share of a whole piece that stands in the fire",
             [](const LeftLot& left) { return left.lot.foot_share; },
             [](LeftLot& left, double value) { left.lot.foot_share = value; }, 1e-6, 1},
    LotField{"left_rate", "kg/s", "rate at which it loses dry wood",
             [](const LeftLot& left) { return left.state[0]; },
             [](LeftLot& left, double value) { left.state[0] = value; }},
    LotField{"left_wood", "kg", "dry wood left of it",
             [](const LeftLot& left) { return left.state[1]; },
             [](LeftLot& left, double value) { left.state[1] = value; }},
    LotField{"left_char", "kg", "its embers", [](const LeftLot& left) { return left.state[2]; },
             [](LeftLot& left, double value) { left.state[2] = value; }},
    LotField{"left_warmth", "J", "heat that it has taken up and not yet given back",
             [](const LeftLot& left) { return left.state[3]; },
             [](LeftLot& left, double value) { left.state[3] = value; }, 0, 1e9},
    LotField{"left_ash", "1", "its ash, of the dry wood",
             [](const LeftLot& left) { return left.lot.ash; },
             [](LeftLot& left, double value) { left.lot.ash = value; }, 0, 1},
};
// A state that were not kept would be lost without a word.
static_assert(FuelBed::states_per_lot == 4);

}  // namespace drawwell
