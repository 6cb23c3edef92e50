#include <doctest/doctest.h>

#include "cli/read/embedded_data.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/burn.h"

using namespace drawwell;

namespace {

/// A sample's six hours, whose books close and whose stove draws.
BurnOutcome sound_burn(const char* sample) {
    const Library library = read_library();
    const Stove stove = read_stove(embedded_data(sample), "sample", {}, library);
    CHECK(stove.burn.duration == 6 * 3600);
    BurnOutcome outcome = run_burn(stove, library);
    CHECK(outcome.complete);
    CHECK(outcome.summary.draws);
    CHECK(outcome.summary.energy_residual < 1e-3);
    CHECK(outcome.summary.mass_residual < 1e-3);
    CHECK(outcome.summary.element_residual < 1e-3);
    return outcome;
}

}  // namespace

TEST_SUITE("models/fittings") {
    TEST_CASE("oven tube and pots go through six hours with two reloads, and the books close") {
        const BurnOutcome outcome = sound_burn("stoves/workshop-kitchen.toml");
        CHECK(outcome.summary.fittings.size() == 3 + 3 + 4);
        for (const FittingAnswer& answer : outcome.summary.fittings) {
            if (answer.key == "steam") CHECK(*answer.value > 0);
            if (answer.key == "heat") CHECK(*answer.value > 0.5e6);
            // Hotter than a room, colder than the gas past it.
            if (answer.key == "air_most") {
                CHECK(*answer.value > 373);
                CHECK(*answer.value < outcome.summary.exit_gas_max);
            }
        }
    }

    TEST_CASE(
        "window, grid and air channel go through six hours with two reloads, and the books close") {
        const BurnOutcome outcome = sound_burn("stoves/kitchen-window.toml");
        CHECK(outcome.summary.fittings.size() == 2 + 3 + 2);
        // A pane by the fire gets hot; a grid is no hotter than the hottest gas.
        CHECK(*outcome.summary.fittings[0].value > 500);
        CHECK(*outcome.summary.fittings[2].value < outcome.summary.riser_gas_max + 100);
        CHECK(outcome.summary.flue_wet.has_value());
    }
}
