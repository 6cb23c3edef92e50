#include "models/fittings/grid.h"

#include <doctest/doctest.h>

#include "models/burn.h"
#include "tests/models/fittings/fitted_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Grid grid() {
    Grid made;
    made.name = "embers";
    made.wire = 0.003;
    made.pitch = 0.015;
    return made;
}

/// Loss [Pa] of the tunnel with these grids in it, at a flow [kg/s] of 600 K.
double loss(const std::vector<Grid>& grids, double flow) {
    Workshop shop(fitted_stove<Grid>(grids));
    add_feed(shop.builder);
    add_tunnel(shop.builder);
    add_fittings(shop.builder);
    const auto& network = shop.builder.network;
    return Crossed(*network.passages[*shop.builder.layout.tunnel].law, flow, 600, 600,
                   *shop.builder.gas.model, network.solids.size(), network.settings)
        .crossing.loss;
}

}  // namespace

TEST_SUITE("models/fittings/grid") {
    TEST_CASE("no wire costs nothing, a half closed grid nearly two velocity heads") {
        CHECK(grid_loss(1) == 0);
        CHECK(grid_loss(0.5) == near(0.65 + 1, 1e-12));
        // 3 mm in 15 mm leave (12/15)^2 of the opening.
        CHECK(grid().free_share() == near(0.64, 1e-12));
    }

    TEST_CASE("in the tunnel it costs what its velocity heads say, either way") {
        const double more = loss({grid()}, 0.01) - loss({}, 0.01);
        Workshop shop;
        const double density =
            shop.builder.gas.model->mixture(dry_air()).density(600, shop.builder.gas.pressure);
        const double velocity = 0.01 / (density * 0.125 * 0.11);
        CHECK(more == near(grid_loss(0.64) * density * velocity * velocity / 2, 1e-6));
        CHECK(loss({grid()}, -0.01) - loss({}, -0.01) == near(-more, 1e-6));
    }

    TEST_CASE("a wire is as hot as gas and walls where they agree, between them where not") {
        CHECK(wire_temperature({0.003, 2, 900, 900}) == near(900, 1e-6));
        const double slow = wire_temperature({0.003, 0.5, 1200, 800});
        const double fast = wire_temperature({0.003, 8, 1200, 800});
        CHECK(slow > 800);
        CHECK(fast > slow + 20);
        CHECK(fast < 1200);
        // Thin wires are closer to the gas.
        CHECK(wire_temperature({0.001, 2, 1200, 800}) > wire_temperature({0.006, 2, 1200, 800}));
        // By hand: 8 m/s across 3 mm, film at 1000 K (1.2e-4 m2/s, 0.067 W/(m K)): Re 200, Nu
        // 7.2, 160 W/(m2 K); 0.8 sigma (T^4 - 800^4) balances it near 1030 K.
        CHECK(std::abs(fast - 1030) < 25);
    }

    TEST_CASE("a grid in a burning stove takes some draw and says how hot its wires get") {
        const auto burn = [](const std::vector<Grid>& grids) {
            Stove stove = fitted_stove<Grid>(grids);
            stove.heat_source = Table(8e3);
            stove.burn.duration = 1800;
            return run_burn(stove, plain_library());
        };
        Grid fine = grid();
        fine.pitch = 0.006;
        const BurnOutcome without = burn({}), with = burn({fine});
        CHECK(with.summary.air_flow_mean < without.summary.air_flow_mean);
        CHECK(with.summary.energy_residual < 1e-3);
        REQUIRE(with.summary.fittings.size() == 3);
        CHECK(*with.summary.fittings[0].value > 350);
        CHECK(*with.summary.fittings[0].value < with.summary.riser_gas_max + 50);
    }

    TEST_CASE("wires that touch are refused, and so is a grid without a tunnel") {
        Grid shut = grid();
        shut.pitch = 0.003;
        CHECK(problems(shut, plain_stove()).size() == 1);
        CHECK(problems(grid(), plain_stove()).empty());
        Stove bare = plain_stove();
        bare.tunnel.reset();
        CHECK(problems(grid(), bare).size() == 1);
    }
}
