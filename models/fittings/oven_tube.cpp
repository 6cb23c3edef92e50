#include "models/fittings/oven_tube.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/stove_builder.h"
#include "models/fittings/lump.h"
#include "models/fittings/reading.h"
#include "models/laws/losses.h"
#include "models/laws/water.h"
#include "models/series.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

constexpr double dry_food_heat_capacity = 1500;  // [J/(kg K)] from memory
constexpr double food_emissivity = 0.9;          // [-] from memory
constexpr double food_size = 0.06;    // [m] height of a loaf: our choice; its surface follows
constexpr double food_density = 500;  // [kg/m3] of dough, from memory
constexpr double air_film = 6;  // [W/(m2 K)] of air that stands in the tube: our choice, +-50 %
constexpr double door_emissivity = 0.8;  // [-] of rusty sheet, from memory
constexpr double door_loss = 6;    // [W/(m2 K)] of a sheet door, air inside and out: our choice
constexpr double discharge = 0.6;  // [-] of a gap, from memory
constexpr double air_heat_capacity = 1007;                 // [J/(kg K)] from memory
constexpr double bakes_from = 180 + constants::ice_point;  // [K] common practice, no source
constexpr double through_at = 95 + constants::ice_point;   // [K] a loaf's core: common practice

/// Where the tube lies in the space round the riser.
struct Place {
    double skin = 0, barrel = 0;  // [m] radii of the space
    double outer = 0;             // [m] the tube's outer radius
    double length = 0;            // [m]

    /// Plan area [m2] that the tube takes up at its axis, its widest.
    double taken() const { return 2 * outer * length; }
    /// Volume [m3] of it between two heights over its axis.
    double volume(double from, double to) const {
        const auto below = [&](double z) {
            const double s = std::clamp(z / outer, -1.0, 1.0);
            return outer * outer * (std::asin(s) + s * std::sqrt(1 - s * s));
        };
        return length * (below(to) - below(from));
    }
    /// Share [-] of its outside between two heights over its axis.
    double share(double from, double to) const {
        const auto below = [&](double z) { return std::asin(std::clamp(z / outer, -1.0, 1.0)); };
        return (below(to) - below(from)) / pi;
    }
};

Place place_of(const OvenTube& oven, const Stove& stove) {
    Place place;
    place.skin = riser_section(stove.riser).equivalent_radius() + thickness(stove.riser.lining);
    place.barrel = stove.barrel->diameter / 2 - thickness(stove.barrel->shell);
    place.outer = oven.bore / 2 + thickness(oven.wall);
    place.length = oven_tube_length(place.skin, place.barrel);
    return place;
}

/// Heat [W/m2 of gap] that hot air carries out round a door of a height [m]: what a single opening
/// exchanges, a third of C A sqrt(g H dT/T) (from memory).
double leaking(double hot, double room, double height, double density) {
    if (!(hot > room)) return 0;
    return discharge / 3 * density * air_heat_capacity * (hot - room) *
           std::sqrt(constants::gravity * height * (hot - room) / hot);
}

}  // namespace

std::span<const ColumnInfo> OvenTube::columns() {
    static constexpr std::array columns{
        ColumnInfo{"oven_wall_temperature", "K", table, "wall of each oven tube"},
        ColumnInfo{"oven_air_temperature", "K", table, "air in each oven tube"},
        ColumnInfo{"oven_food_temperature", "K", table, "food in each oven tube, all through"},
    };
    return columns;
}

double oven_tube_length(double skin_radius, double barrel_radius) {
    const double beside = (skin_radius + barrel_radius) / 2;
    return 2 * std::sqrt(barrel_radius * barrel_radius - beside * beside);
}

std::vector<FittingProblem> problems(const OvenTube& oven, const Stove& stove) {
    if (!stove.barrel || !stove.plate) return {{{"bore"}, "an oven tube lies in a [barrel]"}};
    const Place place = place_of(oven, stove);
    std::vector<FittingProblem> all;
    if (2 * place.outer > place.barrel - place.skin)
        all.push_back({{"bore"}, "the tube does not fit between riser and barrel"});
    const double outlet = stove.outlet_height();
    if (oven.height - place.outer < outlet || oven.height + place.outer > stove.riser.top)
        all.push_back({{"height", "bore"},
                       "the tube must lie between the flue outlet and the riser's top, where the "
                       "gas goes down past it"});
    return all;
}

void add_fitting(StoveBuilder& builder, const OvenTube& oven) {
    const Stove& stove = builder.stove;
    Network& network = builder.network;
    Layout& layout = builder.layout;
    const std::string name = "oven_tube." + oven.name;
    const Place place = place_of(oven, stove);
    const Wall wall = add_wall(builder, {.name = name + ".wall",
                                         .layers = oven.wall,
                                         .face_area = pi * oven.bore * place.length,
                                         .face_radius = oven.bore / 2,
                                         .temperature = stove.site.room,
                                         .held_face = {}});

    // The gas goes down past it: less room, more wall, and a narrow place at its axis.
    builder.amend(*layout.annulus, [&](GasPassageShape& shape) {
        double upper = stove.riser.top;
        double free = 0;
        for (GasCellShape& cell : shape.cells) {
            const double lower = upper + cell.rise;
            const double from = lower - oven.height, to = upper - oven.height;
            const double open = cell.area;
            cell.area -= place.volume(from, to) / (upper - lower);
            if (from <= 0 && to > 0) free = open - place.taken();
            if (const double share = place.share(from, to); share > 0)
                cell.faces.push_back({index(wall.back), share * wall.back_area, sooted_emissivity});
            upper = lower;
        }
        const double open = pi * (place.barrel * place.barrel - place.skin * place.skin);
        const double loss =
            sudden_contraction_loss(free / open) + sudden_expansion_loss(free / open);
        shape.losses.push_back(
            {.area = free, .forward = loss, .reverse = loss, .low_reynolds = low_reynolds_loss});
    });

    // Half of it looks at the riser's skin, half at the barrel.
    const auto see = [&](SolidId other, double share, const char* what) {
        const double area = share * wall.back_area / 2;
        const double exchange = area / (2 / sooted_emissivity - 1);
        network.enclosures.push_back({.name = name + what,
                                      .patches = {{{wall.back, 1}}, {{other, 1}}},
                                      .exchange_area = {0, exchange, exchange, 0}});
    };
    for (std::size_t i = 0; i < layout.riser_skin.solids.size(); ++i) {
        const auto nearest = std::min_element(
            layout.barrel.position.begin(), layout.barrel.position.end(), [&](double a, double b) {
                return std::abs(a - layout.riser_skin.position[i]) <
                       std::abs(b - layout.riser_skin.position[i]);
            });
        const double half =
            i > 0 ? (layout.riser_skin.position[i] - layout.riser_skin.position[i - 1]) / 2
                  : (layout.riser_skin.position[1] - layout.riser_skin.position[0]) / 2;
        const double middle = layout.riser_skin.position[i] - oven.height;
        const double share = place.share(middle - half, middle + half);
        if (!(share > 0)) continue;
        see(layout.riser_skin.solids[i], share, " and riser");
        see(layout.barrel
                .solids[static_cast<std::size_t>(nearest - layout.barrel.position.begin())],
            share, " and barrel");
    }

    // Inside: the food takes heat from the wall by radiation and by the air between them.
    const double heat_capacity =
        oven.food_water * water_heat_capacity + (1 - oven.food_water) * dry_food_heat_capacity;
    const SolidId food = add_lump(
        builder, {.name = name + ".food", .mass = oven.food, .heat_capacity = heat_capacity});
    const double food_area = 2 * oven.food / (food_density * food_size);
    network.links.push_back({.a = wall.face,
                             .b = food,
                             .shape_a = 1e9,
                             .shape_b = 1e9,
                             .contact = 2 / (air_film * food_area)});
    const double sees = food_emissivity * food_area;
    network.enclosures.push_back({.name = name,
                                  .patches = {{{wall.face, 1}}, {{food, 1}}},
                                  .exchange_area = {0, sees, sees, 0}});

    // Two doors, as warm inside as the air; and steam of what is baked, through their gaps.
    const double door = pi / 4 * oven.bore * oven.bore;
    const double room = stove.site.room;
    network.outside.push_back(
        {.name = name + ".doors",
         .outdoors = false,
         .solids = {wall.face},
         .area = {2 * door},
         .flux = [room, gap = oven.door_gap / door, bore = oven.bore,
                  density = builder.room_density](double, std::span<const double> temperature,
                                                  std::span<double> flux) {
             const double hot = temperature[0];
             const double radiated = door_emissivity / (2 - door_emissivity) *
                                     constants::stefan_boltzmann *
                                     (std::pow(hot, 4) - std::pow(room, 4)) / 2;  // a sheet between
             flux[0] =
                 door_loss / 2 * (hot - room) + radiated + gap * leaking(hot, room, bore, density);
         }});
    const double boils = boiling_point(stove.site.pressure);
    if (oven.food_water > 0)
        network.outside.push_back(
            {.name = name + ".steam",
             .outdoors = false,
             .solids = {food},
             .area = {food_area},
             .flux = [boils](double, std::span<const double> temperature, std::span<double> flux) {
                 flux[0] = boiling_flux(temperature[0], boils);
             }});

    const std::size_t face = index(wall.face), inside = index(food);
    const double wall_share =
        pi * oven.bore * place.length / (pi * oven.bore * place.length + food_area);
    layout.readings.push_back({"oven_wall_temperature",
                               [face](const HeatBalance& at) { return at.temperature()[face]; }});
    layout.readings.push_back(
        {"oven_air_temperature", [face, inside, wall_share](const HeatBalance& at) {
             return wall_share * at.temperature()[face] +
                    (1 - wall_share) * at.temperature()[inside];
         }});
    layout.readings.push_back({"oven_food_temperature", [inside](const HeatBalance& at) {
                                   return at.temperature()[inside];
                               }});
}

std::vector<FittingAnswer> answers(const OvenTube&, const Stove&, std::size_t at,
                                   const Results& results) {
    const Series air(results, "oven_air_temperature", at),
        food(results, "oven_food_temperature", at);
    const double bakes = integrate(
        results, [](std::size_t) { return 1.0; },
        [&](std::size_t i) { return air[i] >= bakes_from; });
    return {
        {"air_most", "air, at most", "K", peak(results, air).value},
        {"bakes_after", "bakes (180 °C) after", "s", first_reaching(results, air, bakes_from)},
        {"bakes", "bakes for", "s", bakes},
        {"food_through", "food at 95 °C after", "s", first_reaching(results, food, through_at)}};
}

}  // namespace drawwell
