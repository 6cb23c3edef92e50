#include <cmath>

#include "cli/read/keys/fields.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using namespace fields;
using Derived = std::optional<Value>;

Derived outlet(const StoveDraft& draft, std::string_view) {
    if (!draft.stove.barrel || draft.stove.flue.sections.empty()) return std::nullopt;
    const double bore = draft.stove.flue.sections.front().bore;
    return (bore > 0 ? bore : equal_bore(draft.stove.riser)) / 2 + 0.015;
}
Derived bore(const StoveDraft& draft, std::string_view) {
    return equal_bore(draft.stove.riser);
}

const FlueSection* section(const StoveDraft& draft, std::string_view name) {
    for (const FlueSection& each : draft.stove.flue.sections)
        if (each.name == name) return &each;
    return nullptr;
}

Derived rise(const StoveDraft& draft, std::string_view name) {
    const FlueSection* held = section(draft, name);
    if (!held) return std::nullopt;
    const auto said = draft.direction.find(std::string(name));
    const double length = held->length;
    if (said == draft.direction.end() || said->second.empty() || said->second == "up")
        return length;
    return said->second == "down" ? -length : 0.0;
}

double slope(const FlueSection& section) {
    if (!(section.length > std::abs(section.rise)))
        return std::copysign(constants::pi / 2, section.rise);
    return std::asin(section.rise / section.length);
}

// The gas leaves a barrel sideways and a bare riser upward.
Derived bend(const StoveDraft& draft, std::string_view name) {
    double before = draft.stove.barrel ? 0 : constants::pi / 2;
    for (const FlueSection& each : draft.stove.flue.sections) {
        if (each.name == name) return std::abs(slope(each) - before);
        before = slope(each);
    }
    return std::nullopt;
}

Field direction(StoveDraft& draft, std::string_view name, bool create) {
    const std::string section(name);
    if (!named_part<FlueSection>(draft, name, create)) return {};
    if (!create && !draft.direction.contains(section)) return {};
    return &draft.direction[section];
}
Field order(StoveDraft& draft, std::string_view, bool) {
    return &draft.flue_order;
}

}  // namespace

std::vector<Key> flue_keys() {
    using enum Quantity;
    return {
        {.name = "flue.outlet",
         .quantity = length,
         .fallback = "15 mm over half the flue's bore",
         .derive = outlet,
         .practice = true,
         .most = 10,
         .help = "height of the flue outlet's centre above the barrel's foot (collar)",
         .field = of<&Stove::flue, &Flue::outlet>},
        {.name = "flue.cap",
         .quantity = number,
         .fallback = "0",
         .most = 50,
         .help = "velocity heads lost in a cap on the flue's top, besides the exit",
         .field = of<&Stove::flue, &Flue::cap_loss>},
        {.name = "flue.damper",
         .kind = Kind::text,
         .fallback = "none: the first section",
         .help = "name of the section at whose start the damper of schedule.damper sits",
         .field = of<&Stove::flue, &Flue::damper>},
        {.name = "flue.order",
         .kind = Kind::names,
         .fallback = "none: as in the file",
         .help = "names of the sections in the order the gas meets them",
         .field = order},
        {.name = "flue.NAME.length",
         .quantity = length,
         .required = true,
         .least = 0.01,
         .most = 100,
         .help = "length of a flue section along its axis",
         .field = named<&FlueSection::length>},
        {.name = "flue.NAME.direction",
         .kind = Kind::choice,
         .fallback = "up",
         .choices = {"up", "level", "down"},
         .help = "which way the section runs; flue.NAME.rise says it for a slope",
         .field = direction},
        {.name = "flue.NAME.rise",
         .quantity = length,
         .fallback = "by direction",
         .derive = rise,
         .least = -100,
         .most = 100,
         .help = "height of the section's end over its start, negative if it falls",
         .field = named<&FlueSection::rise>},
        {.name = "flue.NAME.bore",
         .quantity = length,
         .fallback = "as riser.bore",
         .derive = bore,
         .practice = true,
         .least = 0.02,
         .most = 2,
         .help = "inside diameter of the section",
         .field = named<&FlueSection::bore>},
        {.name = "flue.NAME.wall",
         .kind = Kind::build_up,
         .quantity = length,
         .fallback = "0.7 mm mild_steel",
         .practice = true,
         .help = "wall of the section from the gas outwards",
         .field = named<&FlueSection::wall>},
        {.name = "flue.NAME.place",
         .kind = Kind::choice,
         .fallback = "indoors",
         .choices = {"indoors", "outdoors"},
         .help = "which air the section stands in",
         .field = named<&FlueSection::outdoors>},
        {.name = "flue.NAME.bend",
         .quantity = angle,
         .fallback = "by its direction",
         .derive = bend,
         .most = constants::pi,
         .help = "angle of the bend before the section; not used at a tee",
         .field = named<&FlueSection::entry_angle>},
        {.name = "flue.NAME.entry",
         .kind = Kind::choice,
         .fallback = "bend",
         .choices = {"bend", "tee"},
         .help =
             "how the gas comes into the section: round a bend, or by the side of a tee, whose "
             "blind end catches soot and water and opens for sweeping; a tee costs as much draw "
             "as a right angle",
         .field = named<&FlueSection::tee>},
        {.name = "flue.NAME.soot",
         .quantity = length,
         .fallback = "0 mm",
         .most = 0.5,
         .help = "thickness of soot on the section's inside: narrows it, keeps heat in the gas, "
                 "roughens it; fouled flues also burn (chimney fire): sweep by local rules",
         .field = named<&FlueSection::soot>},
    };
}

}  // namespace drawwell
