#include <doctest/doctest.h>

#include <cmath>

#include "solver/constants.h"
#include "solver/march.h"
#include "validation/compare.h"
#include "validation/gas_bench.h"

using namespace drawwell;

namespace {

constexpr double outside = 293.15;  // [K]
struct Leg {
    double rise = 0, temperature = 0;  // [m] upward, [K]
};
constexpr Leg legs[] = {{1.0, 1073.15}, {-0.8, 573.15}, {3.0, 423.15}};

/// Column [Pa] of air at one temperature with 287.05 J/(kg K).
double column(const Leg& leg) {
    return constants::gravity / 287.05 * constants::standard_pressure * leg.rise *
           (1 / outside - 1 / leg.temperature);
}

/// The same three legs as passages, each kept at its temperature by walls without end.
std::vector<double> computed() {
    GasBench bench(outside);
    JunctionId from = bench.room;
    for (std::size_t i = 0; i < 3; ++i) {
        GasPassageShape shape = plain_duct(0.15, std::abs(legs[i].rise), legs[i].rise, 4);
        const std::size_t wall = bench.add_wall(legs[i].temperature);
        for (GasCellShape& cell : shape.cells) cell.faces.push_back({wall, 1e6, 0.9});
        const JunctionId to = i == 2 ? bench.outdoors : bench.add_junction("between");
        bench.add_passage(from, to, std::move(shape), i == 0);
        from = to;
    }
    const Network network = finish(std::move(bench.network));
    const Topology topology = find_topology(network);
    March march(network, topology);
    std::vector<double> temperature(3);
    network.temperatures(network.initial_state(), temperature);
    const std::vector<double> flow{0.015};
    march.begin({0, temperature, {}}, flow, {});
    march.complete();
    std::vector<double> buoyancy;
    for (std::size_t p = 0; p < 3; ++p) buoyancy.push_back(march.crossing(p).buoyancy);
    return buoyancy;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("what rises hot draws and what falls hot holds back") {
        const double exact = column(legs[0]) + column(legs[1]) + column(legs[2]);
        compare({"analytic/signed_columns", "formula against 14.85 Pa [Pa]",
                 std::abs(exact - 14.85), 0.01});
        const auto seen = computed();
        double worst = 0;
        for (std::size_t i = 0; i < 3; ++i)
            worst = std::max(worst, std::abs(seen[i] / column(legs[i]) - 1));
        compare({"analytic/signed_columns", "worst leg, share off [-]", worst, 0.004});
        compare({"analytic/signed_columns", "sum of the legs, share off [-]",
                 std::abs((seen[0] + seen[1] + seen[2]) / exact - 1), 0.004});
    }
}
