#include <doctest/doctest.h>

#include "cli/read/embedded_data.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/burn.h"

using namespace drawwell;

TEST_SUITE("models/fittings") {
    TEST_CASE("oven tube and pots go through six hours with two reloads, and the books close") {
        const Library library = read_library();
        const Stove stove =
            read_stove(embedded_data("stoves/workshop-kitchen.toml"), "sample", {}, library);
        CHECK(stove.burn.duration == 6 * 3600);
        const BurnOutcome outcome = run_burn(stove, library);
        CHECK(outcome.complete);
        CHECK(outcome.summary.draws);
        CHECK(outcome.summary.energy_residual < 1e-3);
        CHECK(outcome.summary.mass_residual < 1e-3);
        CHECK(outcome.summary.element_residual < 1e-3);
        for (const FittingAnswer& answer : outcome.summary.fittings) {
            if (answer.key == "steam") CHECK(*answer.value > 0);
            if (answer.key == "heat") CHECK(*answer.value > 0.5e6);
            // Hotter than a room, colder than the gas past it.
            if (answer.key == "air_most") {
                CHECK(*answer.value > 373);
                CHECK(*answer.value < outcome.summary.exit_gas_max);
            }
        }
        CHECK(outcome.summary.fittings.size() == 3 + 3 + 4);
    }
}
