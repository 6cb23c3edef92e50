#include "models/fittings/bell.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "models/build_network.h"
#include "models/burn.h"
#include "models/series.h"
#include "tests/models/fittings/fitted_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Bell bell() {
    Bell made;
    made.name = "back";
    made.width = 0.5;
    made.depth = 0.4;
    made.height = 1;
    made.opening = 0.25;
    made.inlet = 0.3;
    made.outlet = 0.15;
    made.wall = {{"brick", 0.05}};
    return made;
}

/// Two hours, of which the first has a fire of 10 kW.
BurnOutcome burn(const std::vector<Bell>& bells) {
    Stove stove = fitted_stove<Bell>(bells);
    stove.heat_source = Table({0, 3600, 3601}, {10e3, 10e3, 0});
    stove.burn.duration = 7200;
    return run_burn(stove, plain_library());
}

}  // namespace

TEST_SUITE("models/fittings/bell") {
    TEST_CASE("it stands between barrel and flue, and the flue begins at the height it leaves by") {
        const Stove stove = fitted_stove<Bell>({bell()});
        const BuiltStove built = build_network(stove, plain_library());
        const Layout& layout = built.layout;
        REQUIRE(layout.flue.size() == 3);
        const auto& passages = built.network.passages;
        CHECK(passages[layout.flue[0]].from == layout.flue_outlet);
        CHECK(passages[layout.flue[0]].to == layout.flue_starts[0].junction);
        CHECK(passages[layout.flue[1]].from == layout.flue_starts[0].junction);
        CHECK(layout.flue_starts[0].height == near(stove.outlet_height() - 0.3 + 0.15, 1e-9));
        CHECK(layout.flue_gas_way.size() == layout.flue_wall.solids.size());
        CHECK(std::is_sorted(layout.flue_gas_way.begin(), layout.flue_gas_way.end()));
    }

    TEST_CASE("of its column only the way from inlet to outlet counts, in the half it lies in") {
        const auto rises = [](double inlet, double outlet) {
            Bell made = bell();
            made.inlet = inlet;
            made.outlet = outlet;
            const BuiltStove built = build_network(fitted_stove<Bell>({made}), plain_library());
            const auto& law =
                dynamic_cast<const GasPassage&>(*built.network.passages[built.layout.flue[0]].law);
            return std::pair{law.shape().cells[0].rise, law.shape().cells[1].rise};
        };
        const auto [over, below] = rises(0.3, 0.15);  // both in the lower half
        CHECK(over == 0);
        CHECK(below == near(-0.15, 1e-9));
        const auto [upper, lower] = rises(0.8, 0.15);  // from the upper into the lower
        CHECK(upper == near(-0.3, 1e-9));
        CHECK(lower == near(-0.35, 1e-9));
    }

    TEST_CASE("its top is hotter than its foot, the gas leaves colder, and the books close") {
        const BurnOutcome outcome = burn({bell()});
        CHECK(outcome.summary.energy_residual < 1e-3);
        CHECK(outcome.summary.mass_residual < 1e-3);
        const Series top(outcome.results, "bell_top_temperature"),
            foot(outcome.results, "bell_foot_temperature"),
            in(outcome.results, "outlet_gas_temperature");
        const std::size_t hour = 3600 / 30 - 1;
        CHECK(in[hour] > top[hour] + 10);
        CHECK(top[hour] > foot[hour] + 3);
        CHECK(answer(outcome, "top_most").value() > foot[hour]);
        CHECK(answer(outcome, "skin_most").value() < top[hour]);
        CHECK(outcome.summary.exit_gas_max > burn({}).summary.flue_top_max);
    }

    TEST_CASE("it gives the room heat after the fire, out of what it took before") {
        const BurnOutcome outcome = burn({bell()});
        const double all = answer(outcome, "heat").value(),
                     after = answer(outcome, "heat_after_fire").value();
        CHECK(after > 0);
        CHECK(after < all);
        Bell thick = bell();
        thick.wall = {{"brick", 0.15}};
        const BurnOutcome slow = burn({thick});
        CHECK(answer(slow, "heat").value() < all);
        CHECK(answer(slow, "skin_most").value() < answer(outcome, "skin_most").value());
    }

    TEST_CASE("the Richardson number is that of the gas coming in over the gas at the foot") {
        const BurnOutcome outcome = burn({bell()});
        const Series richardson(outcome.results, "bell_richardson"),
            flow(outcome.results, "flue_gas_flow"), in(outcome.results, "outlet_gas_temperature"),
            foot(outcome.results, "bell_foot_temperature");
        const std::size_t i = 3000 / 30;
        const double density = 101325 / (287.05 * in[i]);  // dry air, within 1 % of its gas
        const double speed = flow[i] / density / (constants::pi / 4 * 0.25 * 0.25);
        const double by_hand = 9.81 * 1 * (in[i] / foot[i] - 1) / (speed * speed);
        CHECK(richardson[i] == doctest::Approx(by_hand).epsilon(0.03));
        // A narrow opening stirs it.
        Bell narrow = bell();
        narrow.opening = 0.1;
        CHECK(answer(burn({narrow}), "layered").value() < answer(outcome, "layered").value());
    }

    TEST_CASE("a second barrel is a round one of sheet, and warms the room while the fire burns") {
        Bell barrel = bell();
        barrel.width = barrel.depth = 0;
        CHECK(problems(barrel, plain_stove()).size() == 1);
        barrel.diameter = 0.5;
        barrel.wall = {{"sheet", 0.0012}};
        CHECK(problems(barrel, plain_stove()).empty());
        const BuiltStove built = build_network(fitted_stove<Bell>({barrel}), plain_library());
        double mass = 0;
        for (const Solid& solid : built.network.solids)
            if (solid.name.starts_with("bell.")) mass += solid.mass;
        // Round the side and over the top.
        CHECK(mass == near(7850 * 0.0012 * constants::pi * 0.5 * (1 + 0.5 / 4), 1e-6));
        const BurnOutcome steel = burn({barrel}), brick = burn({bell()});
        CHECK(answer(steel, "heat").value() > answer(brick, "heat").value());
        CHECK(answer(steel, "heat_after_fire").value() < answer(brick, "heat_after_fire").value());
    }

    TEST_CASE("openings outside the bell, and a bell with no flue after it, are refused") {
        const Stove stove = plain_stove();
        CHECK(problems(bell(), stove).empty());
        Bell high = bell(), low = bell();
        high.inlet = 0.95;
        low.outlet = 0.01;
        CHECK(problems(high, stove).size() == 1);
        CHECK(problems(low, stove).size() == 1);
        Stove bare = stove;
        bare.flue.sections.clear();
        CHECK(problems(bell(), bare).size() == 1);
    }
}
