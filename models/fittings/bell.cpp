#include "models/fittings/bell.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/stove_builder.h"
#include "models/fittings/reading.h"
#include "models/laws/enclosure.h"
#include "models/laws/losses.h"
#include "models/series.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double fire_over_below = 0.02;  // [-] of the greatest heat set free
constexpr double most_richardson = 99;    // [-] shown where gas hardly comes in

/// The upper or the lower half.
struct Zone {
    std::string name;
    double side_area = 0;  // [m2]
    double volume = 0;     // [m3]
    double surface = 0;    // [m2] all round, the open boundary between the halves included
};

Wall add_zone_wall(StoveBuilder& builder, const Bell& bell, const std::string& part, double area) {
    return add_wall(builder, {.name = "bell." + bell.name + "." + part,
                              .layers = bell.wall,
                              .face_area = area,
                              .temperature = builder.stove.site.room,
                              .held_face = {}});
}

/// Buoyancy over the stream's momentum [-]: g H (rho_foot - rho_in) / (rho_in u^2) of gas that
/// comes in at that mass flux [kg/(m2 s)] over gas at the foot; temperatures [K], one composition.
double richardson(double height, double incoming, double foot, double density, double mass_flux) {
    const double speed = mass_flux / density;
    return constants::gravity * height * std::max(incoming / foot - 1, 0.0) / (speed * speed);
}

}  // namespace

std::span<const ColumnInfo> Bell::columns() {
    static constexpr std::array columns{
        ColumnInfo{"bell_top_temperature", "K", table, "gas in the upper half of each bell"},
        ColumnInfo{"bell_foot_temperature", "K", table, "gas in its lower half, which leaves it"},
        ColumnInfo{"bell_skin_temperature", "K", table, "outside of its upper half"},
        ColumnInfo{"bell_heat_to_room", "W", table, "given off by its outside"},
        ColumnInfo{"bell_richardson", "1", table,
                   "buoyancy over the momentum of the gas that comes in (Richardson number); near "
                   "1 or less the stream stirs the whole bell"},
    };
    return columns;
}

std::vector<FittingProblem> problems(const Bell& bell, const Stove& stove) {
    std::vector<FittingProblem> all;
    if (!(bell.diameter > 0) && !(bell.width > 0 && bell.depth > 0))
        all.push_back({{"diameter", "width", "depth"},
                       "how large it is inside is missing: say diameter, or width and depth"});
    if (stove.flue.sections.empty())
        all.push_back({{"outlet"}, "a bell leads on into a flue: add [flue.NAME]"});
    const double half = bell.opening / 2;
    if (bell.inlet < half || bell.inlet + half > bell.height)
        all.push_back({{"inlet", "opening", "height"}, "the gas comes in outside the bell"});
    const double leaves = stove.flue.sections.empty() ? 0 : stove.flue.sections.front().bore / 2;
    if (bell.outlet < leaves || bell.outlet + leaves > bell.height)
        all.push_back({{"outlet", "height"}, "the flue leaves outside the bell"});
    return all;
}

void add_fitting(StoveBuilder& builder, const Bell& bell) {
    Network& network = builder.network;
    Layout& layout = builder.layout;
    const std::string name = "bell." + bell.name;
    const DuctSection section = bell.diameter > 0 ? round_section(bell.diameter)
                                                  : rectangular_section(bell.width, bell.depth);
    const double plan = section.area, half = bell.height / 2;
    const double sides = section.perimeter * half;
    const double half_surface = sides + 2 * plan;

    const Wall roof = add_zone_wall(builder, bell, "roof", plan);
    const Wall upper = add_zone_wall(builder, bell, "upper", sides);
    const Wall lower = add_zone_wall(builder, bell, "lower", sides);
    std::vector<std::size_t> outside;
    const auto faces_room = [&](const Wall& wall, const char* part, Facing facing, double length) {
        outside.push_back(network.outside.size());
        add_outer_face(builder, {.name = name + part,
                                 .solids = {wall.back},
                                 .area = {wall.back_area},
                                 .emissivity = wall.back_emissivity,
                                 .facing = facing,
                                 .length = length});
    };
    faces_room(roof, ".roof", Facing::up, section.hydraulic_diameter);
    faces_room(upper, ".upper", Facing::upright, bell.height);
    faces_room(lower, ".lower", Facing::upright, bell.height);

    // Each half sees the other through the plane between them; roof and upper sides are as one.
    const double emissivity = upper.face_emissivity;
    const double exchange =
        1 / (1 / plan + (1 - emissivity) / emissivity * (1 / (sides + plan) + 1 / sides));
    const double roof_share = plan / (plan + sides);
    network.enclosures.push_back(
        {.name = name,
         .patches = {{{upper.face, 1 - roof_share}, {roof.face, roof_share}}, {{lower.face, 1}}},
         .exchange_area = {0, exchange, exchange, 0}});

    // The gas goes up to the top whatever the height at which it comes in, then down; of its
    // column, only the way from inlet to outlet counts.
    GasPassageShape shape;
    shape.film = Film::chamber;
    shape.friction = false;
    shape.film_length = half;
    const auto add_half = [&](double rise, std::vector<WallFace> faces) {
        GasCellShape cell = duct_cell(section, half, rise);
        cell.beam_length = 3.6 * plan * half / half_surface;
        cell.stirred = true;
        cell.faces = std::move(faces);
        shape.cells.push_back(std::move(cell));
    };
    const auto over = [&](double height) { return std::max(height, half); };
    const auto below = [&](double height) { return std::min(height, half); };
    add_half(over(bell.outlet) - over(bell.inlet),
             {{index(upper.face), sides, emissivity}, {index(roof.face), plan, emissivity}});
    add_half(below(bell.outlet) - below(bell.inlet), {{index(lower.face), sides, emissivity}});
    const double opening = round_section(bell.opening).area;
    shape.losses.push_back({.area = opening,
                            .forward = exit_loss(),
                            .reverse = entrance_loss(),
                            .low_reynolds = low_reynolds_loss});

    const JunctionId from = layout.outlet;
    layout.outlet = builder.add_junction("after " + name);
    const std::size_t passage = builder.add_passage(name, from, layout.outlet, std::move(shape));
    layout.flue.push_back(passage);
    for (const auto& [face, share] : {std::pair{upper.face, 0.25}, std::pair{lower.face, 0.75}}) {
        layout.flue_wall.solids.push_back(face);
        layout.flue_wall.position.push_back(layout.flue_way + share * bell.height);
        layout.flue_gas_way.push_back(layout.flue_way + share * bell.height);
    }
    layout.flue_way += bell.height;
    layout.flue_height += bell.outlet - bell.inlet;

    const auto gas_in = [passage](std::size_t cell) {
        return [passage, cell](const HeatBalance& at) {
            const std::size_t first = at.network().passages[passage].first_cell;
            return at.flow().march().cells()[first + cell].mean_temperature;
        };
    };
    layout.readings.push_back({"bell_top_temperature", gas_in(0)});
    layout.readings.push_back({"bell_foot_temperature", gas_in(1)});
    layout.readings.push_back(
        {"bell_skin_temperature",
         [skin = index(upper.back)](const HeatBalance& at) { return at.temperature()[skin]; }});
    layout.readings.push_back({"bell_heat_to_room", [outside](const HeatBalance& at) {
                                   double sum = 0;
                                   for (const std::size_t f : outside)
                                       sum += at.fluxes().outside[f];
                                   return sum;
                               }});
    layout.readings.push_back(
        {"bell_richardson", [passage, opening, height = bell.height, gas = builder.gas.model,
                             pressure = builder.gas.pressure](const HeatBalance& at) {
             const March& march = at.flow().march();
             const double flow = march.mass_flow(passage);
             if (!(flow > 0)) return most_richardson;
             const GasCell* cells = &march.cells()[at.network().passages[passage].first_cell];
             const double density = gas->mixture(march.crossing(passage).outlet.mass_fraction)
                                        .density(cells[0].inlet_temperature, pressure);
             return std::min(most_richardson,
                             richardson(height, cells[0].inlet_temperature,
                                        cells[1].mean_temperature, density, flow / opening));
         }});
}

std::vector<FittingAnswer> answers(const Bell&, const Stove&, std::size_t at,
                                   const Results& results) {
    const Series top(results, "bell_top_temperature", at),
        skin(results, "bell_skin_temperature", at), given(results, "bell_heat_to_room", at),
        richardson(results, "bell_richardson", at), release(results, "heat_release");
    const double fire = fire_over_below * peak(results, release).value;
    std::size_t last = 0;
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (release[i] > fire) last = i;
    const double after = integrate(
        results, [&](std::size_t i) { return given[i]; }, [&](std::size_t i) { return i >= last; });
    const auto burning = [&](std::size_t i) { return release[i] > fire; };
    const double burns = integrate(
        results, [](std::size_t) { return 1.0; }, burning);
    const double layered = integrate(
        results, [&](std::size_t i) { return richardson[i] > 1 ? 1.0 : 0.0; }, burning);
    return {{"top_most", "gas on top, at most", "K", peak(results, top).value},
            {"skin_most", "outside, at most", "K", peak(results, skin).value},
            {"heat", "given to the room", "J", integrate(results, given)},
            {"heat_after_fire", "  after the fire", "J", after},
            {"layered", "gas in two layers", "1",
             burns > 0 ? std::optional(layered / burns) : std::nullopt}};
}

}  // namespace drawwell
