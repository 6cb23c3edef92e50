#include "models/fittings/pot.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "models/components/layered_wall.h"
#include "models/components/stove_builder.h"
#include "models/fittings/lump.h"
#include "models/fittings/reading.h"
#include "models/laws/outside.h"
#include "models/laws/water.h"
#include "models/series.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

constexpr double steel_heat_capacity = 480;  // [J/(kg K)] from memory

// [W/(m2 K)] across the gap between plate and bottom, of air as thick as the surfaces are rough: a
// tenth of a millimetre and twice that give 420 and 220 at 230 degC, half a millimetre and more
// under 100. Our choice of three, a factor of 1.5 either way.
constexpr double flat_contact = 500, ordinary_contact = 250, dented_contact = 75;
// 1 mm of stainless steel, then boiling water: both from memory.
constexpr double bottom_and_water = 1 / (1e-3 / 16 + 1.0 / 3000);

constexpr double near_boiling = 0.5;                              // [K] below it that counts
constexpr double wet_emissivity = 0.95, bright_emissivity = 0.3;  // [-] from memory

double contact_of(const Pot& pot) {
    const double gap = pot.bottom == "flat"     ? flat_contact
                       : pot.bottom == "dented" ? dented_contact
                                                : ordinary_contact;
    return 1 / (1 / gap + 1 / bottom_and_water);
}

/// What steam carries off [W/m2] from a pot at a temperature [K].
struct Steaming {
    double pressure = 0;  // [Pa]
    double room = 0;      // [K]
    double wind = 0;      // [m/s]
    double diameter = 0;  // [m]
    bool open = false;

    double operator()(double temperature) const {
        const double boils = boiling_point(pressure);
        const double boiling = boiling_flux(temperature, boils);
        if (!open) return boiling;
        const double film = horizontal_up_outside(temperature, room, diameter, wind);
        return boiling + evaporation_flux(std::min(temperature, boils), room, film, pressure);
    }
};

/// What a pot covers of a ring of the plate.
struct Covered {
    std::size_t ring = 0;
    double area = 0;  // [m2]
};

std::vector<Covered> covered_rings(const Pot& pot, std::span<const double> edge) {
    std::vector<Covered> all;
    for (std::size_t i = 0; i + 1 < edge.size(); ++i) {
        const double share = share_under(edge[i], edge[i + 1], pot.diameter / 2, pot.off_centre);
        if (share > 0)
            all.push_back({i, share * pi * (edge[i + 1] * edge[i + 1] - edge[i] * edge[i])});
    }
    return all;
}

}  // namespace

std::span<const ColumnInfo> Pot::columns() {
    static constexpr std::array columns{
        ColumnInfo{"pot_temperature", "K", table, "water in each pot"},
        ColumnInfo{"pot_heat", "W", table, "heat that each pot takes from the plate"},
        ColumnInfo{"pot_steam", "kg/s", table, "steam that leaves each pot"},
    };
    return columns;
}

double share_under(double inner, double outer, double disc_radius, double off_centre) {
    // Arcs of the ring under the disc, midpoint rule over its width.
    constexpr int parts = 64;
    double under = 0, whole = 0;
    for (int i = 0; i < parts; ++i) {
        const double r = inner + (outer - inner) * (i + 0.5) / parts;
        const double cosine = off_centre > 0
                                  ? (r * r + off_centre * off_centre - disc_radius * disc_radius) /
                                        (2 * r * off_centre)
                                  : (r < disc_radius ? -1.0 : 1.0);
        under += r * std::acos(std::clamp(cosine, -1.0, 1.0)) / pi;
        whole += r;
    }
    return under / whole;
}

std::vector<FittingProblem> problems(const Pot& pot, const Stove& stove) {
    if (!stove.plate) return {{{"diameter"}, "a pot needs a plate to stand on: add [plate]"}};
    if (pot.off_centre + pot.diameter / 2 > stove.plate->diameter / 2 + 1e-9)
        return {{{"off_centre", "diameter"}, "the pot hangs over the plate's edge"}};
    return {};
}

void add_fitting(StoveBuilder& builder, const Pot& pot) {
    const Site& site = builder.stove.site;
    Network& network = builder.network;
    const std::string name = "pot." + pot.name;
    const double mass = pot.water + pot.metal;
    const double heat_capacity =
        (pot.water * water_heat_capacity + pot.metal * steel_heat_capacity) / mass;
    const SolidId body =
        add_lump(builder, {.name = name, .mass = mass, .heat_capacity = heat_capacity});
    const std::size_t water = index(body);

    OutsideFace& top = outer_face(builder, "plate");
    std::vector<std::pair<std::size_t, double>> through;  // ring's solid, [W/K]
    for (const auto& [ring, area] : covered_rings(pot, builder.layout.plate_edge)) {
        const SolidId solid = builder.layout.plate.solids[ring];
        const double conductance = contact_of(pot) * area;
        top.area[ring] = std::max(top.area[ring] - area, 0.0);
        network.links.push_back(
            {.a = solid, .b = body, .shape_a = 1e9, .shape_b = 1e9, .contact = 1 / conductance});
        through.emplace_back(index(solid), conductance);
    }

    // Sides and lid of bright steel; an open pot shows its water instead.
    const double bottom = pi / 4 * pot.diameter * pot.diameter;
    add_outer_face(builder, {.name = name + ".side",
                             .solids = {body},
                             .area = {pi * pot.diameter * pot.height},
                             .emissivity = bright_emissivity,
                             .facing = Facing::upright,
                             .length = pot.height});
    add_outer_face(builder, {.name = name + ".top",
                             .solids = {body},
                             .area = {bottom},
                             .emissivity = pot.open ? wet_emissivity : bright_emissivity,
                             .facing = Facing::up,
                             .length = pot.diameter});
    const Steaming steaming{.pressure = site.pressure,
                            .room = site.room,
                            .wind = site.wind_at_stove,
                            .diameter = pot.diameter,
                            .open = pot.open};
    network.outside.push_back(
        {.name = name + ".steam",
         .outdoors = false,
         .solids = {body},
         .area = {bottom},
         .flux = [steaming](double, std::span<const double> temperature, std::span<double> flux) {
             flux[0] = steaming(temperature[0]);
         }});

    std::vector<Reading>& readings = builder.layout.readings;
    readings.push_back(
        {"pot_temperature", [water](const HeatBalance& at) { return at.temperature()[water]; }});
    readings.push_back({"pot_heat", [water, through](const HeatBalance& at) {
                            double heat = 0;
                            for (const auto& [ring, conductance] : through)
                                heat += conductance *
                                        (at.temperature()[ring] - at.temperature()[water]);
                            return heat;
                        }});
    readings.push_back({"pot_steam", [water, steaming, bottom](const HeatBalance& at) {
                            return steaming(at.temperature()[water]) * bottom / vaporisation_heat;
                        }});
}

std::vector<FittingAnswer> answers(const Pot&, const Stove& stove, std::size_t at,
                                   const Results& results) {
    const Series water(results, "pot_temperature", at), steam(results, "pot_steam", at),
        heat(results, "pot_heat", at);
    const double boils = boiling_point(stove.site.pressure) - near_boiling;
    return {{"boils_after", "boils after", "s", first_reaching(results, water, boils)},
            {"steam", "steam given off", "kg", integrate(results, steam)},
            {"heat", "heat from the plate", "J", integrate(results, heat)}};
}

}  // namespace drawwell
