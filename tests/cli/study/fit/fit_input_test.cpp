#include "cli/study/fit/fit_input.h"

#include <doctest/doctest.h>

#include "cli/read/read_library.h"
#include "solver/errors.h"
#include "tests/cli/read/small_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

FitInput parse(const std::string& text) {
    return parse_fit_input(text, read(small_stove), read_library());
}

}  // namespace

TEST_SUITE("cli/study/fit/fit_input") {
    TEST_CASE("what is uncertain has its spread from data, as a factor that stays over nothing") {
        const FitInput input = parse("fuel_bed.surface_rate");
        CHECK(input.sort == FitInput::Sort::uncertain);
        CHECK(input.value(0) == near(1, 1e-12));
        CHECK(input.value(1) == near(1 + input.spread, 1e-12));
        CHECK(input.value(-1) == near(1 / (1 + input.spread), 1e-12));
        CHECK(parse("day.outdoor").value(-2) == near(-2 * parse("day.outdoor").spread, 1e-12));
    }

    TEST_CASE("a key is known about a figure or about what the file says") {
        const FitInput said = parse("riser.top=700mm+-10mm"), filed = parse("riser.top=±1cm");
        CHECK(said.value(0) == near(0.7, 1e-12));
        CHECK(said.value(2) == near(0.72, 1e-12));
        CHECK(filed.value(0) == near(0.725, 1e-12));
        CHECK(filed.value(-1) == near(0.715, 1e-12));
        CHECK(parse("site.outdoor=+-3K").spread == near(3, 1e-12));
        CHECK(said.shown(0) == "700 mm");
    }

    TEST_CASE("what is no input is refused with the reason") {
        const auto refuses = [](const char* text, const char* part) {
            CHECK_THROWS_WITH_AS(parse(text), doctest::Contains(part), InputError);
        };
        refuses("fuel_bed.surface_rat", "did you mean \"fuel_bed.surface_rate\"");
        refuses("riser.top", "how well is it known?");
        refuses("riser.top=700mm", "how well is it known?");
        refuses("riser.tip=700mm+-1mm", "riser.top");
        refuses("title=a+-b", "no single figure");
        refuses("riser.top=700mm+-0mm", "over nothing");
    }

    TEST_CASE("a clock is known exactly or within a spread") {
        CHECK(parse_clock_offset("").middle == 0);
        CHECK(parse_clock_offset("4min").middle == near(240, 1e-12));
        CHECK(parse_clock_offset("-90 s").middle == near(-90, 1e-12));
        CHECK(parse_clock_offset("0:04:00").spread == 0);
        const FitInput clock = parse_clock_offset("19:30 +- 2min");
        CHECK(clock.middle == near(70200, 1e-12));
        CHECK(clock.value(1) == near(70320, 1e-12));
        CHECK_THROWS_WITH_AS(parse_clock_offset("soon"), doctest::Contains("--clock-offset soon"),
                             InputError);
    }

    TEST_CASE("a variant sets keys and shifts what is uncertain, the clock is no part of a burn") {
        const std::vector<FitInput> inputs{parse("riser.top=±1cm"), parse("day.outdoor"),
                                           parse_clock_offset("0s+-1min")};
        const Variant variant = variant_of(inputs, {1, -1, 2});
        REQUIRE(variant.settings.size() == 1);
        CHECK(variant.settings[0].key == "riser.top");
        REQUIRE(variant.off.size() == 1);
        CHECK(variant.off[0].second == -1);
    }
}
