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

    TEST_CASE("what no stove could mend is refused when the formula is read") {
        const auto refused = [](std::string_view text, std::string_view part) {
            CHECK_THROWS_WITH_AS(parse_follow(text), doctest::Contains(std::string(part).c_str()),
                                 InputError);
        };
        refused("plate.underside = riser.top +", "--follow plate.underside");
        refused("plate.underside = riser.tup + 45mm", "riser.top");
        refused("plate.underside = riser.top + 45 apples", "apples");
        refused("plate.underside = (riser.top + 45mm", "--follow");
    }

    TEST_CASE("figures carry their units") {
        CHECK(refusal("plate.underside = riser.top + 45").find("without its unit") !=
              std::string::npos);
        CHECK(refusal("plate.underside = 0.77").find("write 45 mm") != std::string::npos);
        CHECK(refusal("plate.underside = max(riser.top, 1)").find("without its unit") !=
              std::string::npos);
        CHECK(refusal("plate.underside = riser.top * riser.bore").find("different kinds") !=
              std::string::npos);
        CHECK(refusal("plate.underside = riser.top > 0.6 ? 1m : 2m").find("without its unit") !=
              std::string::npos);
        CHECK(refusal("plate.underside = riser.top + 3 min").find("different kinds") !=
              std::string::npos);
        CHECK(result("plate.underside = sqrt(riser.top * riser.top) + 45mm") == near(0.77, 1e-9));
        CHECK(result("plate.underside = riser.top * (1 + riser.bore / riser.top)") ==
              near(0.85, 1e-9));
        CHECK(result("plate.underside = riser.top > 60cm ? 1m : 2m") == near(1, 1e-9));
        CHECK(result("plate.underside = 10 cm2 / 1 cm + 0") == near(0.1, 1e-9));
        CHECK(result("plate.underside = riser.top \u2212 25mm") == near(0.7, 1e-9));
    }

    TEST_CASE("a comma parts arguments, no number and no formulas") {
        CHECK(refusal("plate.underside = riser.top + 45,5mm").find("write a decimal point") !=
              std::string::npos);
        CHECK(refusal("plate.underside = 2m, riser.top").find("a comma parts") !=
              std::string::npos);
    }

    TEST_CASE("a key follows one formula and is not varied besides") {
        const Follow follow = parse_follow("plate.underside = riser.top + 45mm");
        CHECK_NOTHROW(check_follows({follow}, {"riser.top"}));
        CHECK_THROWS_WITH_AS(check_follows({follow, follow}, {}), doctest::Contains("two formulas"),
                             InputError);
        CHECK_THROWS_WITH_AS(check_follows({follow}, {"plate.underside"}),
                             doctest::Contains("varied as well"), InputError);
    }
}
