#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "cli/read/read_library.h"
#include "models/components/parts.h"
#include "models/components/stove_builder.h"
#include "solver/constants.h"
#include "solver/settled_walls.h"
#include "validation/compare.h"
#include "validation/handbook/flue_standard/standard_flue.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/flue_standard";
constexpr double bore = 0.15, sheet = 0.7e-3, blanket = 0.025;   // [m]
constexpr double entering = 250 + 273.15, around = 10 + 273.15;  // [K]
constexpr double insulates = 0.06;                               // [W/(m K)]
constexpr double roughness = 1e-3;                               // [m] as the program's

enum class Build { windy, still, insulated };

/// Wood gas at air ratio 2, 20 % moisture: volume shares from stoichiometry.
Composition wood_gas() {
    const Composition moles{
        0.716 * 28.155, 0.0948 * 31.998, 0.0924 * 44.009, 0.0968 * 18.015, 0, 0};
    Composition y{};
    double sum = 0;
    for (const double part : moles) sum += part;
    for (std::size_t s = 0; s < species_count; ++s) y[s] = moles[s] / sum;
    return y;
}

/// The program's own flue with that gas sent through, its walls standing.
StandardAnswer computed(Build kind, double length, double flow, bool air) {
    Library library = read_library();
    library.materials["blanket"] = {.name = "blanket",
                                    .meaning = "",
                                    .density = 128,
                                    .conductivity = Table(insulates),
                                    .heat_capacity = Table(900.0),
                                    .emissivity = 0.8,
                                    .hazard = "",
                                    .source = ""};
    Stove stove;
    stove.site.room = around;
    stove.site.outdoor = Table(around);
    stove.site.wind = Table(kind == Build::still ? 0.0 : 5.0);
    FlueSection section;
    section.name = "stack";
    section.length = section.rise = length;
    section.bore = bore;
    section.wall = {{"mild_steel", sheet}};
    if (kind == Build::insulated) section.wall.push_back({"blanket", blanket});
    section.outdoors = kind != Build::still;
    stove.flue.sections = {section};
    const SolidFuel fuel{.wood = library.woods.at("ash"),
                         .char_yield = library.bed.char_yield.value};
    StoveBuilder builder(stove, library, fuel);
    GasState hot;
    hot.mass_fraction = air ? dry_air() : wood_gas();
    hot.enthalpy = builder.gas.model->mixture(hot.mass_fraction).enthalpy(entering);
    hot.temperature = entering;
    builder.layout.outlet = builder.add_junction("hot gas");
    Junction& start = builder.network.junctions[index(builder.layout.outlet)];
    start.boundary = true;
    start.gas = hot;
    add_flue(builder);
    builder.network.passages.front().inlet = true;
    const Network network = finish(std::move(builder.network));
    const Topology topology = find_topology(network);
    HeatBalance balance(network, topology);
    std::vector<double> state = network.initial_state();
    settle_walls(balance, 0, flow, state);
    const Crossing& crossing = balance.flow().march().crossing(0);
    return {network.gas_temperature(crossing.outlet), crossing.buoyancy, crossing.loss};
}

StandardAnswer standard(Build kind, double length, double flow, bool air) {
    StandardFlue flue{.bore = bore,
                      .length = length,
                      .film_outside = kind == Build::still ? 8.0 : 23.0,
                      .roughness = roughness,
                      .flow = flow,
                      .entering = entering,
                      .around = around,
                      .air = air};
    if (kind == Build::insulated) {
        flue.outer_over_inner = 1 + 2 * (sheet + blanket) / bore;
        flue.wall_resistance = bore / (2 * insulates) * std::log(flue.outer_over_inner);
    }
    return standard_answer(flue);
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("the chimney standard's form is coded as its check values have it") {
        compare_beside({name, "film inside, smooth, Re 1e4, Nusselt", 30.18,
                        standard_nusselt(1e4, 0.7, 0, 0.15, 5), 3e-3});
        compare_beside({name, "film inside, 1 mm, Re 1e4, Nusselt", 35.62,
                        standard_nusselt(1e4, 0.7, 1e-3, 0.15, 5), 3e-3});
        compare_beside({name, "film inside, 1 mm, Re 5000, Nusselt", 18.42,
                        standard_nusselt(5000, 0.7, 1e-3, 0.15, 5), 3e-3});
        compare_beside(
            {name, "overall [W/m2K]", 3.822, standard_overall(15, 0.12, 1 / 0.6, 8), 1e-3});
        const auto [mean, top] = standard_cooling(constants::pi * 0.15 * 3 * 5 / (0.010 * 1050),
                                                  250 + 273.15, 15 + 273.15);
        compare({name, "mean and top of a cooling flue against 186.02 and 134.87 degC [K]",
                 std::max(std::abs(mean - 273.15 - 186.02), std::abs(top - 273.15 - 134.87)),
                 0.05});
    }

    TEST_CASE("a flue cools and draws as the chimney standard's form says") {
        constexpr struct {
            Build kind;
            const char* meaning;
            double length, flow;  // [m], [kg/s]
        } flues[] = {{Build::windy, "bare, wind 5 m/s", 2, 0.010},
                     {Build::windy, "bare, wind 5 m/s", 5, 0.005},
                     {Build::windy, "bare, wind 5 m/s", 5, 0.010},
                     {Build::windy, "bare, wind 5 m/s", 5, 0.020},
                     {Build::windy, "bare, wind 5 m/s", 8, 0.010},
                     {Build::still, "bare, indoors", 5, 0.010},
                     {Build::still, "bare, indoors", 5, 0.020},
                     {Build::insulated, "25 mm blanket", 5, 0.010},
                     {Build::insulated, "25 mm blanket", 8, 0.020}};
        for (const auto& flue : flues)
            for (const bool air : {true, false}) {
                const StandardAnswer theirs = standard(flue.kind, flue.length, flue.flow, air);
                const StandardAnswer ours = computed(flue.kind, flue.length, flue.flow, air);
                const auto what = [&](const char* quantity) {
                    return fmt::format("{}, {:.0f} m, {:.0f} g/s of {}, {}", flue.meaning,
                                       flue.length, 1000 * flue.flow, air ? "air" : "wood gas",
                                       quantity);
                };
                // Wood gas radiates to the wall, for which the standard has nothing.
                const auto beside = [&](const Beside& row) {
                    if (air)
                        compare_beside(row);
                    else
                        show_beside(
                            row,
                            "the standard's method has no term for gas that radiates to the wall");
                };
                beside({name, what("top over outdoors [K]"), theirs.top - around, ours.top - around,
                        0.15});
                beside({name, what("draught [Pa]"), theirs.draught, ours.draught, 0.05});
                beside({name, what("resistance [Pa]"), theirs.resistance, ours.resistance, 0.15});
            }
    }
}
