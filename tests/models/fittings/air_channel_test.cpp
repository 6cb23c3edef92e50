#include "models/fittings/air_channel.h"

#include <doctest/doctest.h>

#include "models/build_network.h"
#include "models/burn.h"
#include "tests/models/fittings/fitted_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

AirChannel channel(double height = 0.02) {
    AirChannel made;
    made.name = "floor";
    made.width = 0.08;
    made.height = height;
    made.length = 0.34;
    return made;
}

BurnOutcome burn(const std::vector<AirChannel>& channels) {
    Stove stove = fitted_stove(channels);
    // A thin lining lets heat through in time to see it.
    stove.tunnel->lining = {{"brick", 0.02}};
    stove.heat_source = Table(8e3);
    stove.burn.duration = 3600;
    return run_burn(stove, plain_library());
}

}  // namespace

TEST_SUITE("models/fittings/air_channel") {
    TEST_CASE("it brings air beside the feed's, warmer than the room, and the books close") {
        const BurnOutcome outcome = burn({channel()});
        CHECK(outcome.summary.energy_residual < 1e-3);
        CHECK(outcome.summary.mass_residual < 1e-3);
        REQUIRE(outcome.summary.fittings.size() == 2);
        CHECK(*outcome.summary.fittings[0].value > 0.1);
        CHECK(*outcome.summary.fittings[1].value > plain_stove().site.room + 10);
        const Column* side = outcome.results.find("side_air_flow");
        const Column* through = outcome.results.find("channel_air_flow");
        for (std::size_t i = 0; i < side->values.size(); ++i)
            CHECK(through->values[i] == near(side->values[i], 1e-9));
    }

    TEST_CASE("a higher channel brings more air, less warm") {
        const BurnOutcome low = burn({channel(0.01)}), high = burn({channel(0.03)});
        CHECK(*high.summary.fittings[0].value > *low.summary.fittings[0].value);
        CHECK(*high.summary.fittings[1].value < *low.summary.fittings[1].value);
    }

    TEST_CASE("the lining it lies against no longer warms the room") {
        const BurnOutcome without = burn({}), with = burn({channel()});
        CHECK(with.results.columns.size() == without.results.columns.size() + 2);
        const BuiltStove built =
            build_network(fitted_stove<AirChannel>({channel()}), plain_library());
        const BuiltStove bare = build_network(plain_stove(), plain_library());
        const auto sides = [](const BuiltStove& of) {
            for (const OutsideFace& face : of.network.outside)
                if (face.name == "tunnel") return sum_of(face.area);
            return 0.0;
        };
        CHECK(sides(bare) - sides(built) == near(0.08 * 0.34, 1e-9));
    }

    TEST_CASE("a channel longer or wider than the tunnel is refused") {
        AirChannel far = channel(), wide = channel();
        far.length = 1;
        wide.width = 0.5;
        CHECK(problems(far, plain_stove()).size() == 1);
        CHECK(problems(wide, plain_stove()).size() == 1);
        CHECK(problems(channel(), plain_stove()).empty());
        Stove bare = plain_stove();
        bare.tunnel.reset();
        CHECK(problems(channel(), bare).size() == 1);
    }
}
