#include "cli/study/follow.h"

#include <doctest/doctest.h>

#include "cli/read/units.h"
#include "solver/errors.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

double result(std::string_view text) {
    return parse_quantity(followed(parse_follow(text), plain_stove()).value, Quantity::length);
}

std::string refusal(std::string_view text) {
    try {
        followed(parse_follow(text), plain_stove());
    } catch (const InputError& error) {
        return error.what();
    }
    return "";
}

}  // namespace

TEST_SUITE("cli/study/follow") {
    TEST_CASE("keys stand for their values, numbers may carry units") {
        CHECK(result("plate.underside = riser.top + 45mm") == near(0.77, 1e-9));
        CHECK(result("plate.underside = riser.top + 45 mm") == near(0.77, 1e-9));
        CHECK(result("plate.underside=max(riser.top, 1 m) - 2*10 cm") == near(0.8, 1e-9));
        CHECK(result("flue.stack.length = 3 * riser.bore") == near(0.375, 1e-9));
        CHECK(result("barrel.diameter = riser.bore + 0.1 * feed.mouth") == near(0.149, 1e-9));
    }

    TEST_CASE("a formula that can't be worked out is refused, and says which") {
        CHECK(refusal("plate.underside = riser.tup + 45mm").find("riser.top") != std::string::npos);
        CHECK(refusal("plate.underside = riser.top +").find("--follow plate.underside") == 0);
        CHECK(refusal("plate.underside = riser.top + 45 apples").find("apples") !=
              std::string::npos);
        CHECK(refusal("plate.underside = flue.attic.length").find("no figure") !=
              std::string::npos);
        CHECK_THROWS_AS(parse_follow("plate.underside"), InputError);
        CHECK_THROWS_AS(parse_follow("plate.undersid = 1m"), InputError);
        CHECK_THROWS_AS(parse_follow("riser.lining = 1m"), InputError);
    }
}
