#include "cli/read/stove_draft.h"

#include <cmath>

#include "cli/read/standard_atmosphere.h"
#include "models/components/duct_shape.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

/// `up`, `level` or `down` if the section is exactly that, else empty.
std::string direction_of(const FlueSection& section) {
    if (section.rise == section.length) return "up";
    if (section.rise == -section.length) return "down";
    return section.rise == 0 ? "level" : "";
}

}  // namespace

StoveDraft draft_of(const Stove& stove) {
    StoveDraft draft;
    draft.stove = stove;
    draft.altitude = standard_altitude(stove.site.pressure);
    for (const FlueSection& section : stove.flue.sections) {
        draft.flue_order.push_back(section.name);
        if (const std::string direction = direction_of(section); !direction.empty())
            draft.direction[section.name] = direction;
    }
    return draft;
}

void complete(StoveDraft& draft) {
    Stove& stove = draft.stove;
    for (SideAir& air : stove.side_air) {
        const double hole = constants::pi / 4 * air.hole_diameter * air.hole_diameter;
        air.area = air.slot_width * air.slot_height + air.holes * hole;
    }
    if (stove.kindling && stove.kindling->mass == 0) stove.kindling.reset();
}

double riser_area(const Riser& riser) {
    return riser.bore > 0 || (riser.width > 0 && riser.depth > 0) ? riser_section(riser).area : 0;
}

double equal_bore(const Riser& riser) {
    if (riser.bore > 0 && !riser.octagonal) return riser.bore;
    return std::sqrt(riser_area(riser) * 4 / constants::pi);
}

}  // namespace drawwell
