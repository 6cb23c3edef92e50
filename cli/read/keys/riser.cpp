#include "cli/read/keys/fields.h"

namespace drawwell {
namespace {

using namespace fields;
using Derived = std::optional<Value>;

Derived riser_foot(const StoveDraft& draft, std::string_view) {
    return draft.stove.tunnel ? draft.stove.tunnel->height / 2 : 0.0;
}
Derived plate_diameter(const StoveDraft& draft, std::string_view) {
    return draft.stove.barrel ? Derived(draft.stove.barrel->diameter + 0.02) : std::nullopt;
}
Derived plate_underside(const StoveDraft& draft, std::string_view) {
    return draft.stove.riser.top + equal_bore(draft.stove.riser) / 3;
}

Derived jacket_from(const StoveDraft& draft, std::string_view) {
    const Stove& stove = draft.stove;
    return stove.barrel && stove.plate ? Derived(stove.barrel_foot()) : std::nullopt;
}
Derived jacket_to(const StoveDraft& draft, std::string_view) {
    return draft.stove.plate ? Derived(draft.stove.plate->underside) : std::nullopt;
}
Derived bypass_bore(const StoveDraft& draft, std::string_view) {
    return equal_bore(draft.stove.riser);
}
Derived barrel_height(const StoveDraft& draft, std::string_view) {
    return draft.stove.barrel ? Derived(draft.stove.barrel->height) : std::nullopt;
}

}  // namespace

std::vector<Key> riser_keys() {
    using enum Quantity;
    return {
        {.name = "riser.bore",
         .quantity = length,
         .fallback = "none: a slot",
         .least = 0.02,
         .most = 1,
         .help = "inside diameter of a round riser; of an octagonal one, from flat to flat",
         .field = of<&Stove::riser, &Riser::bore>},
        {.name = "riser.section",
         .kind = Kind::choice,
         .fallback = "round",
         .choices = {"round", "octagonal"},
         .help = "shape of a riser that has a bore: eight boards or bricks make an octagon, 5 % "
                 "more section than a round one of its bore; what follows from the bore by default "
                 "then takes that of a round riser of its section",
         .field = of<&Stove::riser, &Riser::octagonal>},
        {.name = "riser.width",
         .quantity = length,
         .fallback = "none: round",
         .least = 0.005,
         .most = 3,
         .help = "inside width of a square riser or slot, instead of riser.bore",
         .field = of<&Stove::riser, &Riser::width>},
        {.name = "riser.depth",
         .quantity = length,
         .fallback = "none: round",
         .least = 0.005,
         .most = 3,
         .help = "inside depth of a square riser or slot",
         .field = of<&Stove::riser, &Riser::depth>},
        {.name = "riser.foot",
         .quantity = length,
         .fallback = "half tunnel.height",
         .derive = riser_foot,
         .most = 10,
         .help = "height of the riser's lower end; with a tunnel, the tunnel's axis",
         .field = of<&Stove::riser, &Riser::foot>},
        {.name = "riser.top",
         .quantity = length,
         .required = true,
         .least = 0.05,
         .most = 20,
         .help = "height of the riser's upper end above the tunnel floor",
         .field = of<&Stove::riser, &Riser::top>},
        {.name = "riser.lining",
         .kind = Kind::build_up,
         .quantity = length,
         .fallback = "25 mm aes_board, 1 mm stainless_304",
         .practice = true,
         .help = "wall of the riser from the gas outwards (insulation, skin)",
         .field = of<&Stove::riser, &Riser::lining>},
        {.name = "riser.wall_temperature",
         .quantity = temperature,
         .fallback = "none: it follows",
         .least = 200,
         .most = 1800,
         .help = "holds the riser's inner faces at this (bench tests)",
         .field = of<&Stove::riser, &Riser::wall_temperature>},
        {.name = "riser.soot",
         .quantity = length,
         .fallback = "0 mm",
         .most = 0.2,
         .help = "thickness of soot on the riser's inside, as flue.NAME.soot; where it is hotter "
                 "than some 600 °C soot burns off (from memory)",
         .field = of<&Stove::riser, &Riser::soot>},
        {.name = "plate.underside",
         .quantity = length,
         .fallback = "a third of the bore over riser.top",
         .derive = plate_underside,
         .practice = true,
         .least = 0.05,
         .most = 20,
         .help =
             "height of the plate's lower face; less riser.top it is the opening under the plate "
             "(curtain gap)",
         .field = of<&Stove::plate, &Plate::underside>},
        {.name = "plate.diameter",
         .quantity = length,
         .fallback = "20 mm over barrel.diameter",
         .derive = plate_diameter,
         .practice = true,
         .least = 0.05,
         .most = 3,
         .help = "diameter of the cooking plate (lid)",
         .field = of<&Stove::plate, &Plate::diameter>},
        {.name = "plate.thickness",
         .quantity = length,
         .fallback = "6 mm",
         .practice = true,
         .least = 0.0003,
         .most = 0.2,
         .help = "thickness of the cooking plate",
         .field = of<&Stove::plate, &Plate::thickness>},
        {.name = "plate.material",
         .kind = Kind::material,
         .fallback = "mild_steel",
         .practice = true,
         .help = "what the cooking plate is made of",
         .field = of<&Stove::plate, &Plate::material>},
        {.name = "plate.rim",
         .kind = Kind::choice,
         .fallback = "free",
         .practice = true,
         .choices = {"free", "clamped"},
         .help = "how its rim is held: lying free, or clamped so that it can't turn (bolted flange "
                 "ring); says how far heat bows it",
         .field = of<&Stove::plate, &Plate::clamped>},
        {.name = "plate.hole",
         .quantity = length,
         .fallback = "none",
         .least = 0.02,
         .most = 2,
         .help =
             "diameter of a round hole in its middle; a pot over it hangs its bottom in gas and "
             "flame, or plate.hole_cover fills it; lift neither while anything glows: flame and "
             "carbon monoxide come out",
         .field = of<&Stove::plate, &Plate::hole>},
        {.name = "plate.hole_cover",
         .quantity = length,
         .fallback = "none: a pot stands over the hole",
         .least = 0.0003,
         .most = 0.2,
         .help = "thickness of a loose cover in that hole, of the plate's metal; pots stand on it "
                 "as on the plate",
         .field = of<&Stove::plate, &Plate::hole_cover>},
        {.name = "plate.cover_resistance",
         .quantity = heat_resistance,
         .fallback = "0.5 m2 K/W",
         .practice = true,
         .least = 0.001,
         .most = 20,
         .help = "heat resistance of a cover laid on the plate (schedule.plate_cover): thickness "
                 "over conductivity; 20 mm of fibre board make 0.5",
         .field = of<&Stove::plate, &Plate::cover_resistance>},
        {.name = "barrel.diameter",
         .quantity = length,
         .required = true,
         .least = 0.05,
         .most = 3,
         .help = "outside diameter of the barrel",
         .field = of<&Stove::barrel, &Barrel::diameter>},
        {.name = "barrel.height",
         .quantity = length,
         .required = true,
         .least = 0.05,
         .most = 10,
         .help = "height of the barrel; it hangs from the plate's underside",
         .field = of<&Stove::barrel, &Barrel::height>},
        {.name = "barrel.shell",
         .kind = Kind::build_up,
         .quantity = length,
         .fallback = "1.2 mm mild_steel",
         .practice = true,
         .help = "wall of the barrel",
         .field = of<&Stove::barrel, &Barrel::shell>},
        {.name = "barrel.jacket",
         .kind = Kind::build_up,
         .quantity = length,
         .fallback = "none",
         .help = "insulation round the barrel or a part of its height, from the shell outwards: "
                 "keeps heat in the gas for a plate, a bench or the flue, and people from hot "
                 "steel; say it as layers or as the name of a build-up",
         .field = of<&Stove::barrel, &Barrel::jacket>},
        {.name = "barrel.jacket_from",
         .quantity = length,
         .fallback = "the barrel's foot",
         .derive = jacket_from,
         .most = 20,
         .help = "height of the jacket's lower edge above the tunnel floor; counts to the nearest "
                 "stretch that the barrel is divided into, about an eighth of it",
         .field = of<&Stove::barrel, &Barrel::jacket_from>},
        {.name = "barrel.jacket_to",
         .quantity = length,
         .fallback = "the barrel's top",
         .derive = jacket_to,
         .most = 20,
         .help = "height of the jacket's upper edge, counted likewise",
         .field = of<&Stove::barrel, &Barrel::jacket_to>},
        {.name = "barrel.soot",
         .quantity = length,
         .fallback = "0 mm",
         .most = 0.2,
         .help = "thickness of soot on the barrel's inside, the riser's skin in it and a bypass, "
                 "as flue.NAME.soot; the plate stays clean",
         .field = of<&Stove::barrel, &Barrel::soot>},
        {.name = "bypass.bore",
         .quantity = length,
         .fallback = "as riser.bore",
         .derive = bypass_bore,
         .practice = true,
         .least = 0.02,
         .most = 1,
         .help = "inside diameter of a short cut from under the plate to the flue outlet",
         .field = of<&Stove::bypass, &Bypass::bore>},
        {.name = "bypass.length",
         .quantity = length,
         .fallback = "as barrel.height",
         .derive = barrel_height,
         .practice = true,
         .least = 0.02,
         .most = 10,
         .help = "length of that short cut; schedule.bypass opens it",
         .field = of<&Stove::bypass, &Bypass::length>},
        {.name = "bypass.into",
         .kind = Kind::text,
         .fallback = "none: at the flue outlet",
         .help = "flue section at whose start it joins the flue, past a bench or a level run",
         .field = of<&Stove::bypass, &Bypass::into>},
        {.name = "leak.NAME.area",
         .quantity = area,
         .required = true,
         .most = 0.01,
         .help = "open area of a joint that is not tight (leakage)",
         .field = named<&Leak::area>},
        {.name = "leak.NAME.place",
         .kind = Kind::choice,
         .required = true,
         .choices = {"under_plate", "flue_outlet", "tunnel"},
         .help = "where the joint is: under_plate, flue_outlet or tunnel",
         .field = named<&Leak::place>},
    };
}

}  // namespace drawwell
