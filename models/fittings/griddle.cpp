#include "models/fittings/griddle.h"

#include <array>
#include <cmath>
#include <string>
#include <utility>

#include "models/components/layered_wall.h"
#include "models/components/stove_builder.h"
#include "models/cooking_time.h"
#include "models/fittings/on_plate.h"
#include "models/fittings/reading.h"
#include "models/series.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

constexpr double usual_rings = 3;

}  // namespace

std::span<const ColumnInfo> Griddle::columns() {
    static constexpr std::array columns{
        ColumnInfo{"griddle_temperature", "K", table, "middle of each griddle"},
        ColumnInfo{"griddle_rim_temperature", "K", table, "its outermost ring"},
        ColumnInfo{"griddle_heat", "W", table, "heat that each griddle takes from the plate"},
    };
    return columns;
}

std::vector<FittingProblem> problems(const Griddle& griddle, const Stove& stove) {
    return lying_problems(stove, "griddle." + griddle.name,
                          {griddle.diameter / 2, griddle.off_centre}, griddle.there());
}

void add_fitting(StoveBuilder& builder, const Griddle& griddle) {
    const std::string name = "griddle." + griddle.name;
    const Material& metal = builder.material(griddle.material);
    const double room = builder.stove.site.room, thick = griddle.thickness;
    const std::size_t count = builder.cells(usual_rings);
    const double width = griddle.diameter / 2 / static_cast<double>(count);
    // The plate's side of the slab to its middle.
    const double conductance =
        1 / (1 / gap_conductance(griddle.bottom) + thick / (2 * metal.conductivity(room)));
    OuterFace top{.name = name,
                  .solids = {},
                  .area = {},
                  .emissivity = metal.emissivity,
                  .facing = Facing::up,
                  .length = griddle.diameter};
    std::vector<PlateContact> contacts;
    for (std::size_t i = 0; i < count; ++i) {
        const double inner = width * static_cast<double>(i), outer = inner + width;
        const double area = pi * (outer * outer - inner * inner);
        const SolidId ring =
            builder.add_solid(name + "." + std::to_string(i), griddle.material, area * thick, room);
        if (i > 0) {
            const double node = (inner + outer) / 2;
            builder.network.links.push_back(
                {.a = top.solids.back(),
                 .b = ring,
                 .shape_a = 2 * pi * thick / std::log(inner / (node - width)),
                 .shape_b = 2 * pi * thick / std::log(node / inner)});
        }
        top.solids.push_back(ring);
        top.area.push_back(area);
        const auto more = lay_on_plate(builder, {.name = name,
                                                 .body = ring,
                                                 .inner = inner,
                                                 .outer = outer,
                                                 .off_centre = griddle.off_centre,
                                                 .conductance = conductance});
        contacts.insert(contacts.end(), more.begin(), more.end());
    }
    top.area.back() += pi * griddle.diameter * thick;  // its edge loses heat as its top does
    std::vector<Reading>& readings = builder.layout.readings;
    readings.push_back(
        {"griddle_temperature",
         [at = index(top.solids.front())](const HeatBalance& b) { return b.temperature()[at]; }});
    readings.push_back(
        {"griddle_rim_temperature",
         [at = index(top.solids.back())](const HeatBalance& b) { return b.temperature()[at]; }});
    readings.push_back(
        {"griddle_heat", [contacts, rings = builder.layout.plate.solids](const HeatBalance& b) {
             return heat_by_contact(contacts, rings, b);
         }});
    add_outer_face(builder, std::move(top));
}

std::vector<FittingAnswer> answers(const Griddle&, const Stove&, std::size_t at,
                                   const Results& results) {
    const Series middle(results, "griddle_temperature", at),
        rim(results, "griddle_rim_temperature", at);
    return {{"fries_after", "fries (175 °C) after", "s", first_reaching(results, middle, fry_from)},
            {"most", "hottest, in its middle", "K", peak(results, middle).value},
            {"rim_most", "hottest, at its rim", "K", peak(results, rim).value}};
}

}  // namespace drawwell
