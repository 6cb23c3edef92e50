#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "models/laws/gas_radiation.h"
#include "solver/constants.h"
#include "solver/march.h"
#include "validation/compare.h"
#include "validation/gas_bench.h"
#include "validation/handbook/gas_emissivity/leckner.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/gas_emissivity";
constexpr double bar = 1.01325;  // [bar] of an atmosphere

double leckner(double t, double water, double dioxide, double way) {
    return leckner_emissivity({t, water * bar, dioxide * bar, way});
}

/// What a wall gets by radiation [W/(m2 K)] from nitrogen with those shares of vapour and
/// dioxide, by the program's passage: its conductance less that of the same gas without depth.
double radiation_in_passage(double gas_temperature, double wall, double water, double dioxide,
                            double way, double wall_emissivity = 1) {
    const auto conductance = [&](double beam) {
        GasBench bench(300);
        Composition y{};
        const Composition moles{
            (1 - water - dioxide) * 28.155, 0, dioxide * 44.009, water * 18.015, 0, 0};
        double mass = 0;
        for (const double m : moles) mass += m;
        for (std::size_t s = 0; s < species_count; ++s) y[s] = moles[s] / mass;
        GasState& hot = bench.network.junctions[index(bench.room)].gas;
        hot.mass_fraction = y;
        hot.enthalpy = bench.surroundings.model->mixture(y).enthalpy(gas_temperature);
        const std::size_t held = bench.add_wall(wall);
        GasPassageShape shape = plain_duct(0.15, 0.1, 0, 1);
        shape.cells[0].beam_length = beam;
        shape.cells[0].faces.push_back(
            {held, 1e-4, wall_emissivity});  // too little to cool the gas
        bench.add_passage(bench.room, bench.outdoors, std::move(shape), true);
        const Network network = finish(std::move(bench.network));
        const Topology topology = find_topology(network);
        March march(network, topology);
        const std::vector<double> temperature{wall}, flow{0.01};
        march.begin({0, temperature, {}}, flow, {});
        march.complete();
        return march.conductance()[0] / 1e-4;
    };
    return conductance(way) - conductance(0);
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("flue gas and soot radiate what other gas models give") {
        constexpr struct {
            double t, water, dioxide, way, expected;  // [K], [atm], [atm], [m], Leckner
        } table[] = {{1200, .1, .1, .135, .0905}, {1200, .1, .1, .2, .1109},
                     {1200, .1, .1, 1, .2273},    {1500, .1, .1, 1, .1903},
                     {1000, .1, .1, 1, .2493},    {1200, .2, .1, 1, .2867}};
        double own = 0;
        for (const auto& row : table) {
            const double by_leckner = leckner(row.t, row.water, row.dioxide, row.way);
            own = std::max(own, std::abs(by_leckner - row.expected));
            compare_beside({name,
                            fmt::format("Leckner, {:.0f} K, water {:.0f} %, dioxide {:.0f} %, {} m",
                                        row.t, 100 * row.water, 100 * row.dioxide, row.way),
                            by_leckner, gas_emissivity(row.t, (row.water + row.dioxide) * row.way),
                            0.15});
        }
        compare({name, "Leckner's formula against six values [-]", own, 2e-3});
        for (const double t : {473.0, 523.0})  // in a flue: colder than the program's law goes
            compare_beside({name, fmt::format("Leckner, {:.0f} K, wood gas in 150 mm", t),
                            leckner(t, 0.0968, 0.0924, 0.135), gas_emissivity(t, 0.1892 * 0.135),
                            0.15});
        compare_beside({name, "Hottel's charts, 790 K, dioxide 0.0114, water 0.0228 atm m", 0.117,
                        gas_emissivity(790, 0.0342), 0.25});
        show_beside({name, "Hottel's charts, 378 K, dioxide 0.0055, water 0.0109 atm m", 0.099,
                     gas_emissivity(378, 0.01635), 0.25},
                    "colder than the range of the program's law");
        compare_beside({name, "Smith's set for two parts of water, 1200 K, 0.3 atm m", 0.3096,
                        gas_emissivity(1200, 0.3), 0.15});
        compare_beside(
            {name, "soot 1e-7, 1200 K, 0.15 m", 0.0236, soot_emissivity(1e-7, 1200, 0.15), 0.01});
        compare_beside(
            {name, "soot 1e-6, 1200 K, 0.15 m", 0.207, soot_emissivity(1e-6, 1200, 0.15), 0.01});
    }

    TEST_CASE("gas in a passage radiates to its walls by all the vapour and dioxide in it") {
        constexpr double gas = 1200, wall = 700;  // [K]
        for (const auto& [water, dioxide] : {std::pair{0.1, 0.1}, {0.12, 0.06}, {0.02, 0.15}}) {
            const double exact = constants::stefan_boltzmann * leckner(gas, water, dioxide, 0.135) *
                                 (gas * gas + wall * wall) * (gas + wall);
            compare_beside({name,
                            fmt::format("film to a black wall, water {:.0f} %, dioxide {:.0f} %, "
                                        "0.135 m [W/m2K]",
                                        100 * water, 100 * dioxide),
                            exact, radiation_in_passage(gas, wall, water, dioxide, 0.135), 0.15});
        }
        // (e + 1)/2 for a gray wall, as the worked solution has it.
        compare_beside({name, "gray wall of 0.8 over a black one", 0.9,
                        radiation_in_passage(gas, wall, 0.1, 0.1, 0.135, 0.8) /
                            radiation_in_passage(gas, wall, 0.1, 0.1, 0.135),
                        1e-3});
    }
}
