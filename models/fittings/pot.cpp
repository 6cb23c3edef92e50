#include "models/fittings/pot.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "models/components/layered_wall.h"
#include "models/components/stove_builder.h"
#include "models/fittings/lump.h"
#include "models/fittings/on_plate.h"
#include "models/fittings/reading.h"
#include "models/laws/outside.h"
#include "models/laws/water.h"
#include "models/series.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

// [W/(m2 K)] 1 mm of stainless steel, and boiling water: both from memory.
constexpr double through_bottom = 16 / 1e-3, bottom_to_water = 3000;

constexpr double near_boiling = 0.5;                              // [K] below it that counts
constexpr double wet_emissivity = 0.95, bright_emissivity = 0.3;  // [-] from memory

// A pot that boils dry has a gauge: a solid of next to no heat that is so much warmer as it is
// full. Ten kelvin, so that a step's error, some hundredths of one, is some thousandths of the
// water.
constexpr double gauge_empty = 300, gauge_span = 10;  // [K]
constexpr double gauge_heat = 1e-3;                   // [J/K]
// Shares of the water, our choice: with less the bottom is no longer wet all over; with less the
// pot counts as dry; with less what the water that left still holds goes to the room, in a minute.
constexpr double film_share = 0.05, dry_share = 0.01, gone_share = 0.002;
constexpr double leaving_time = 60;  // [s]

double in_series(double first, double second) {
    return 1 / (1 / first + 1 / second);
}

double left_by_gauge(double gauge) {
    return std::clamp((gauge - gauge_empty) / gauge_span, 0.0, 1.0);
}
/// Share of the bottom that water wets.
double wet(double gauge) {
    return std::min(left_by_gauge(gauge) / film_share, 1.0);
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

/// The solids that a pot is made of; one where its water is topped up.
struct Body {
    SolidId metal{}, water{}, gauge{};
    bool one = true;

    double left(const HeatBalance& at) const {
        return one ? 1 : left_by_gauge(at.temperature()[index(gauge)]);
    }
    double wet_share(const HeatBalance& at) const {
        return one ? 1 : wet(at.temperature()[index(gauge)]);
    }
    /// Of the water, or of the metal where none is left [K].
    double temperature(const HeatBalance& at) const {
        const double share = wet_share(at);
        return share * at.temperature()[index(water)] +
               (1 - share) * at.temperature()[index(metal)];
    }
};

Body add_body(StoveBuilder& builder, const Pot& pot, double metal_mass) {
    const std::string name = "pot." + pot.name;
    const double metal = metal_mass * pot_heat_capacity, water = pot.water * water_heat_capacity;
    Body body;
    if (pot.topped_up) {
        const double mass = pot.water + metal_mass;
        body.metal = body.water = body.gauge = add_lump(
            builder, {.name = name, .mass = mass, .heat_capacity = (water + metal) / mass});
        return body;
    }
    body.one = false;
    body.metal = add_lump(builder, {name, metal_mass, pot_heat_capacity});
    body.water = add_lump(builder, {name + ".water", pot.water, water_heat_capacity});
    body.gauge = add_lump(builder, {name + ".left", gauge_heat, 1});
    builder.network.solids[index(body.gauge)].initial_temperature = gauge_empty + gauge_span;
    builder.network.links.push_back(
        {.a = body.metal,
         .b = body.water,
         .shape_a = 1e9,
         .shape_b = 1e9,
         .contact = 1 / (bottom_to_water * pi / 4 * pot.diameter * pot.diameter),
         .share = [gauge = index(body.gauge)](double, auto temperature) {
             return wet(temperature[gauge]);
         }});
    return body;
}

/// Steam that leaves; of a pot that boils dry, the gauge falls with it, and what the water that
/// left still holds goes to the room once it is dry.
void add_steam(StoveBuilder& builder, const Pot& pot, const Body& body, const Steaming& steaming) {
    OutsideFace face;
    face.name = "pot." + pot.name + ".steam";
    face.solids = {body.water};
    face.area = {pi / 4 * pot.diameter * pot.diameter};
    if (pot.topped_up) {
        face.flux = [steaming](double, std::span<const double> temperature,
                               std::span<double> flux) { flux[0] = steaming(temperature[0]); };
    } else {
        face.solids.push_back(body.gauge);
        face.gauges = 1;
        face.area.push_back(face.area.front());
        const double forgets =
            pot.water * water_heat_capacity / leaving_time / face.area.front();  // [W/(m2 K)]
        const double falls = gauge_heat * gauge_span / (pot.water * vaporisation_heat);
        face.flux = [steaming, forgets, falls](double, std::span<const double> temperature,
                                               std::span<double> flux) {
            const double steam = wet(temperature[1]) * steaming(temperature[0]);
            const double gone = std::max(1 - left_by_gauge(temperature[1]) / gone_share, 0.0);
            flux[0] = steam + gone * forgets * (temperature[0] - steaming.room);
            flux[1] = falls * steam;
        };
    }
    builder.network.outside.push_back(std::move(face));
}

}  // namespace

Steps Pot::there() const {
    return on_and_off(put_on, taken_off);
}

std::span<const ColumnInfo> Pot::columns() {
    static constexpr std::array columns{
        ColumnInfo{"pot_temperature", "K", table, "water in each pot; its metal once it is dry"},
        ColumnInfo{
            "pot_heat", "W", table,
            "heat that each pot takes from the plate, and by its bottom over a hole from gas "
            "and flame"},
        ColumnInfo{"pot_steam", "kg/s", table, "steam that leaves each pot"},
        ColumnInfo{"pot_water", "kg", table, "water left in each pot"},
    };
    return columns;
}

const Pot* pot_over_hole(const Stove& stove) {
    if (!stove.plate || !stove.plate->hole || stove.plate->hole_cover) return nullptr;
    for (const Fitting& fitting : stove.fittings)
        if (const Pot* pot = std::get_if<Pot>(&fitting);
            pot && pot->off_centre + *stove.plate->hole / 2 <= pot->diameter / 2)
            return pot;
    return nullptr;
}

std::vector<FittingProblem> problems(const Pot& pot, const Stove& stove) {
    if (!take_turns(pot.put_on, pot.taken_off))
        return {{{"taken_off", "put_on"}, "a pot is put on and taken off in turns"}};
    const Steps there = pot.there();
    auto found =
        lying_problems(stove, "pot." + pot.name, {pot.diameter / 2, pot.off_centre}, there);
    const Pot* over_hole = pot_over_hole(stove);
    if (over_hole && over_hole->name == pot.name && is_moved(there, 1))
        found.push_back({{"put_on", "taken_off"},
                         "without it the plate's hole is open to the fire: leave it there, or say "
                         "plate.hole_cover"});
    return found;
}

void add_fitting(StoveBuilder& builder, const Pot& pot) {
    const Site& site = builder.stove.site;
    Network& network = builder.network;
    const Layout& layout = builder.layout;
    const std::string name = "pot." + pot.name;
    const bool in_hole = layout.hole_pot == pot.name;
    const double hole = in_hole ? *builder.stove.plate->hole : 0;
    const Body body = add_body(
        builder, pot, std::max(pot.metal - pot_bottom_mass * pi / 4 * hole * hole, pot.metal / 10));

    const double onward =
        pot.topped_up ? in_series(through_bottom, bottom_to_water) : through_bottom;
    const std::vector<PlateContact> contacts =
        lay_on_plate(builder, {.name = name,
                               .body = body.metal,
                               .outer = pot.diameter / 2,
                               .off_centre = pot.off_centre,
                               .conductance = in_series(gap_conductance(pot.bottom), onward),
                               .there = pot.there()});
    // In a hole the plate's rings are the pot's own bottom.
    std::vector<PlateContact> takes = contacts;
    for (std::size_t i = 0; in_hole && i < layout.hole_rings; ++i) {
        const double inner = layout.plate_edge[i], outer = layout.plate_edge[i + 1];
        const double conductance = onward * pi * (outer * outer - inner * inner);
        network.links.push_back({.a = layout.plate.solids[i],
                                 .b = body.metal,
                                 .shape_a = 1e9,
                                 .shape_b = 1e9,
                                 .contact = 1 / conductance});
        takes.push_back({i, body.metal, conductance});
    }

    // Sides and lid of bright steel; an open pot shows its water instead.
    const double bottom = pi / 4 * pot.diameter * pot.diameter;
    add_outer_face(builder, {.name = name + ".side",
                             .solids = {body.metal},
                             .area = {pi * pot.diameter * pot.height},
                             .emissivity = bright_emissivity,
                             .facing = Facing::upright,
                             .length = pot.height});
    add_outer_face(builder, {.name = name + ".top",
                             .solids = {body.metal},
                             .area = {bottom},
                             .emissivity = pot.open ? wet_emissivity : bright_emissivity,
                             .facing = Facing::up,
                             .length = pot.diameter});
    const Steaming steaming{.pressure = site.pressure,
                            .room = site.room,
                            .wind = site.wind_at_stove,
                            .diameter = pot.diameter,
                            .open = pot.open};
    add_steam(builder, pot, body, steaming);

    std::vector<Reading>& readings = builder.layout.readings;
    readings.push_back(
        {"pot_temperature", [body](const HeatBalance& at) { return body.temperature(at); }});
    readings.push_back({"pot_heat", [takes, rings = layout.plate.solids](const HeatBalance& at) {
                            return heat_by_contact(takes, rings, at);
                        }});
    readings.push_back({"pot_steam", [body, steaming, bottom](const HeatBalance& at) {
                            return body.wet_share(at) *
                                   steaming(at.temperature()[index(body.water)]) * bottom /
                                   vaporisation_heat;
                        }});
    readings.push_back({"pot_water", [body, water = pot.water](const HeatBalance& at) {
                            return water * body.left(at);
                        }});
}

std::vector<FittingAnswer> answers(const Pot& pot, const Stove& stove, std::size_t at,
                                   const Results& results) {
    const Series water(results, "pot_temperature", at), steam(results, "pot_steam", at),
        heat(results, "pot_heat", at), left(results, "pot_water", at);
    const double boils = boiling_point(stove.site.pressure) - near_boiling;
    const double since = pot.put_on.empty() || !(pot.there()(0) < 1) ? 0 : pot.put_on.front();
    const auto after = [&](std::optional<double> time) {
        return time ? std::optional(*time - since) : time;
    };
    std::vector<FittingAnswer> told{
        {"boils_after", "boils after", "s", after(first_reaching(results, water, boils))},
        {"steam", "steam given off", "kg", integrate(results, steam)},
        {"heat", "heat it took", "J", integrate(results, heat)}};
    if (pot.topped_up) return told;
    std::optional<double> dry;
    for (std::size_t i = 0; i < results.time.size() && !dry; ++i)
        if (left[i] < dry_share * pot.water) dry = results.time[i];
    told.push_back({"dry_after", "boiled dry after", "s", after(dry)});
    told.push_back({"most", "pot", "K", peak(results, water).value});
    return told;
}

}  // namespace drawwell
