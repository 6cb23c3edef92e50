#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "cli/read/read_library.h"
#include "models/burn.h"
#include "models/fire/table_fire.h"
#include "solver/constants.h"
#include "solver/flow.h"
#include "validation/compare.h"
#include "validation/gas_bench.h"

using namespace drawwell;

namespace {

constexpr double ambient = 293.15, bore = 0.1, height = 0.3;  // [K], [m]
constexpr double loss = 4;  // [-] velocity heads of the hot gas: C = 1/2

struct Point {
    double flow = 0, temperature = 0;  // [kg/s], [K]
};

/// A duct over plain heat [W]: all loss where the hot gas leaves, none elsewhere.
Point duct_over(double power) {
    GasBench bench(ambient);
    GasPassageShape mouth = plain_duct(bore, 1e-3, 0, 1);
    GasPassageShape duct = plain_duct(bore, height, height, 4);
    LocalLoss exit;
    exit.at_end = true;
    exit.area = constants::pi / 4 * bore * bore;
    exit.forward = exit.reverse = loss;
    duct.losses.push_back(exit);
    const JunctionId hearth = bench.add_junction("hearth");
    bench.add_wall(ambient);
    bench.add_passage(bench.room, hearth, std::move(mouth), true);
    bench.add_passage(hearth, bench.outdoors, std::move(duct));
    bench.network.fire = std::make_unique<HeatSource>(Table(power));
    bench.network.fire_sites = {hearth};
    bench.network.initial_fuel = {0};
    const Network network = finish(std::move(bench.network));
    const Topology topology = find_topology(network);
    Flow flow(network, topology);
    const std::vector<double> temperature{ambient};
    flow.solve({0, temperature, network.initial_fuel});
    return {flow.inlet_flow(), network.gas_temperature(flow.march().junction_gas(hearth))};
}

double largest_flow(const GasBench& bench) {
    const double area = constants::pi / 4 * bore * bore;
    return area / std::sqrt(loss) * bench.surroundings.outdoor_density / 2 *
           std::sqrt(2 * constants::gravity * height);
}

/// A stove of one riser that neither stores nor loses heat, with its own losses; flow [kg/s].
double stove_of_one_riser(double power) {
    Library library = read_library();
    library.materials["nothing"] = {.name = "nothing",
                                    .meaning = "",
                                    .density = 1,
                                    .conductivity = Table(1e-6),
                                    .heat_capacity = Table(1000.0),
                                    .hazard = "",
                                    .source = ""};
    Stove stove;
    stove.riser.bore = bore;
    stove.riser.top = height;
    stove.riser.lining = {{"nothing", 0.02}};
    stove.site.room = ambient;
    stove.site.outdoor = Table(ambient - 1);  // else the first direction is undecided
    stove.heat_source = Table(power);
    stove.burn.duration = 600;
    stove.burn.output_every = 600;
    stove.burn.reserve_every = 0;
    const BurnOutcome outcome = run_burn(stove, library);
    return outcome.results.find("feed_air_flow")->values.back();
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("the flow through a heated duct follows the stack curve") {
        const double most = largest_flow(GasBench(ambient));
        double worst = 0, peak_flow = 0, peak_temperature = 0;
        for (double power = 200; power < 8000; power *= 1.1) {
            const Point seen = duct_over(power);
            const double theta = seen.temperature / ambient - 1;
            worst = std::max(worst,
                             std::abs(seen.flow / most / (2 * std::sqrt(theta) / (1 + theta)) - 1));
            if (seen.flow > peak_flow) {
                peak_flow = seen.flow;
                peak_temperature = seen.temperature;
            }
        }
        compare({"analytic/stack_flow", "flow against 2 sqrt(theta)/(1 + theta), share off [-]",
                 worst, 1e-3});
        compare({"analytic/stack_flow", "largest flow, share off [-]",
                 std::abs(peak_flow / most - 1), 2e-3});
        compare({"analytic/stack_flow", "gas at the largest flow over 2 T_ambient, share off [-]",
                 std::abs(peak_temperature / (2 * ambient) - 1), 0.06});
    }

    TEST_CASE("a stove of one riser keeps the curve's flat top") {
        // From a quarter to three times the power, 2.7 kW, that warms this stove's gas to twice
        // the air's temperature.
        double least = 1, most = 0;
        for (const double share : {0.25, 0.5, 1.0, 1.5, 2.0, 3.0}) {
            const double flow = stove_of_one_riser(2700 * share);
            least = std::min(least, flow);
            most = std::max(most, flow);
        }
        compare({"analytic/stack_flow", "stove of one riser, spread of flow over 12 x power [-]",
                 1 - least / most, 0.25});
    }
}
