#include "cli/read/keys/fields.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using namespace fields;
using Derived = std::optional<Value>;

const Load* load(const StoveDraft& draft, std::string_view name) {
    for (const Load& each : draft.stove.loads)
        if (each.name == name) return &each;
    return nullptr;
}

Derived load_mass(const StoveDraft& draft, std::string_view name) {
    const Load* held = load(draft, name);
    if (!held) return std::nullopt;
    const Load& each = *held;
    const auto found = draft.library->woods.find(each.kind);
    if (found == draft.library->woods.end()) return std::nullopt;
    return found->second.density * each.pieces * each.side * each.side * each.length;
}
Derived load_kind(const StoveDraft& draft, std::string_view) {
    return draft.stove.wood_kind;
}
Derived load_side(const StoveDraft& draft, std::string_view) {
    return draft.wood_side;
}
Derived load_length(const StoveDraft& draft, std::string_view) {
    return draft.wood_length;
}
Derived load_standing(const StoveDraft& draft, std::string_view) {
    return draft.wood_standing;
}
Derived load_times(const StoveDraft& draft, std::string_view name) {
    std::vector<double> times;
    for (const LoadTime& each : draft.load_times)
        if (each.load == name) times.push_back(each.time);
    return times.empty() ? Derived() : times;
}
Derived load_moisture(const StoveDraft& draft, std::string_view) {
    return draft.stove.wood_moisture_wet_basis;
}

// 25 kg for each square metre of the riser's section: 0.3 kg at 125 mm, 0.8 kg at 200 mm.
Derived kindling_mass(const StoveDraft& draft, std::string_view) {
    return 25 * riser_area(draft.stove.riser);
}

Field wood_side(StoveDraft& draft, std::string_view, bool) {
    return &draft.wood_side;
}
Field wood_length(StoveDraft& draft, std::string_view, bool) {
    return &draft.wood_length;
}

Field wood_standing(StoveDraft& draft, std::string_view, bool) {
    return &draft.wood_standing;
}

}  // namespace

std::vector<Key> wood_keys() {
    using enum Quantity;
    return {
        {.name = "wood.kind",
         .kind = Kind::wood,
         .fallback = "ash",
         .help = "kind of wood of every load (species)",
         .field = own<&Stove::wood_kind>},
        {.name = "wood.moisture",
         .quantity = moisture,
         .fallback = "16 % wet",
         .practice = true,
         .most = 0.7,
         .help = "moisture of every load, \"16 % wet\" or \"19 % dry\" basis; stated masses stay",
         .field = own<&Stove::wood_moisture_wet_basis>},
        {.name = "wood.side",
         .quantity = length,
         .fallback = "35 mm",
         .practice = true,
         .least = 0.002,
         .most = 0.5,
         .help = "thickness of a square stick",
         .field = wood_side},
        {.name = "wood.length",
         .quantity = length,
         .fallback = "300 mm",
         .practice = true,
         .least = 0.01,
         .most = 3,
         .help = "length of a stick",
         .field = wood_length},
        {.name = "wood.standing",
         .kind = Kind::choice,
         .fallback = "apart",
         .choices = {"apart", "bundled"},
         .help =
             "how the sticks of a load stand: apart, lit all round, or as a bundle, lit outside",
         .field = wood_standing},
        {.name = "load.NAME.at",
         .kind = Kind::times,
         .quantity = time,
         .fallback = "by schedule.load",
         .derive = load_times,
         .most = 864000,
         .help = "when the load goes in after lighting: one time, or a list of them",
         .field = named<&Load::times>},
        {.name = "load.NAME.pieces",
         .kind = Kind::count,
         .fallback = "3",
         .least = 1,
         .most = 1000,
         .help = "sticks put in together",
         .field = named<&Load::pieces>},
        {.name = "load.NAME.kind",
         .kind = Kind::wood,
         .fallback = "as wood.kind",
         .derive = load_kind,
         .help = "kind of wood of this load",
         .field = named<&Load::kind>},
        {.name = "load.NAME.side",
         .quantity = length,
         .fallback = "as wood.side",
         .derive = load_side,
         .least = 0.002,
         .most = 0.5,
         .help = "thickness of this load's sticks",
         .field = named<&Load::side>},
        {.name = "load.NAME.length",
         .quantity = length,
         .fallback = "as wood.length",
         .derive = load_length,
         .least = 0.01,
         .most = 3,
         .help = "length of this load's sticks",
         .field = named<&Load::length>},
        {.name = "load.NAME.moisture",
         .quantity = moisture,
         .fallback = "as wood.moisture",
         .derive = load_moisture,
         .most = 0.7,
         .help = "moisture of this load",
         .field = named<&Load::moisture_wet_basis>},
        {.name = "load.NAME.standing",
         .kind = Kind::choice,
         .fallback = "as wood.standing",
         .derive = load_standing,
         .choices = {"apart", "bundled"},
         .help = "how this load's sticks stand",
         .field = named<&Load::standing>},
        {.name = "load.NAME.mass",
         .quantity = mass,
         .fallback = "by the wood's density",
         .derive = load_mass,
         .least = 0.001,
         .most = 1000,
         .help = "mass of all its sticks as they go in",
         .field = named<&Load::mass>},
        {.name = "kindling.mass",
         .quantity = mass,
         .fallback = "25 kg per m2 of bore",
         .derive = kindling_mass,
         .practice = true,
         .most = 50,
         .help = "kindling lit at the start; 0: none",
         .field = of<&Stove::kindling, &Kindling::mass>},
        {.name = "kindling.side",
         .quantity = length,
         .fallback = "12 mm",
         .practice = true,
         .least = 0.001,
         .most = 0.1,
         .help = "thickness of a kindling stick",
         .field = of<&Stove::kindling, &Kindling::side>},
        {.name = "kindling.kind",
         .kind = Kind::wood,
         .fallback = "as wood.kind",
         .derive = load_kind,
         .help = "kind of wood of the kindling",
         .field = of<&Stove::kindling, &Kindling::kind>},
        {.name = "kindling.moisture",
         .quantity = moisture,
         .fallback = "12 % wet",
         .practice = true,
         .most = 0.7,
         .help = "moisture of the kindling",
         .field = of<&Stove::kindling, &Kindling::moisture_wet_basis>},
        {.name = "kindling.place",
         .kind = Kind::choice,
         .fallback = "riser_foot",
         .choices = {"riser_foot", "feed", "flue"},
         .help = "where the kindling burns",
         .field = of<&Stove::kindling, &Kindling::place>},
        {.name = "heat.power",
         .kind = Kind::table,
         .quantity = power,
         .fallback = "none: wood burns",
         .most = 1e6,
         .help = "plain heat instead of wood: \"3 kW\", or [[\"0 min\", \"3 kW\"], ...]",
         .field = own<&Stove::heat_source>},
        {.name = "burn_rate.table",
         .kind = Kind::table,
         .quantity = burn_rate,
         .fallback = "none: by the loads",
         .most = 1,
         .help = "wood burned as fired, instead of loads: \"2.4 kg/h\", or [[\"0 min\", \"2 "
                 "kg/h\"], ...]",
         .field = own<&Stove::burn_rate>},
    };
}

}  // namespace drawwell
