#include "cli/read/starting_stove.h"

#include <doctest/doctest.h>

#include <string>

#include "cli/read/stove_draft.h"
#include "tests/cli/read/small_stove.h"

using namespace drawwell;

TEST_SUITE("cli/read/starting_stove") {
    TEST_CASE("whatever bore and drum a builder has, the file reads without a fault") {
        for (int bore_mm = 80; bore_mm <= 250; bore_mm += 17)
            for (int litres = 30; litres <= 210; litres += 15) {
                const std::string text = starting_stove({bore_mm / 1000.0, litres / 1000.0});
                INFO(bore_mm, " mm, ", litres, " l\n", text);
                const Stove stove = tests::read(text);
                CHECK(stove.riser.bore ==
                      doctest::Approx(bore_mm / 1000.0).epsilon(1e-3));  // shown to 4 digits
                // Room to sweep round the riser.
                CHECK(stove.barrel->diameter - stove.riser.bore -
                          2 * thickness(stove.riser.lining) >
                      0.055);
            }
        CHECK_NOTHROW(tests::read(starting_stove({})));
        CHECK_NOTHROW(tests::read(starting_stove({0.25, {}})));
        CHECK_NOTHROW(tests::read(starting_stove({{}, 0.21})));
    }

    TEST_CASE("the barrel holds about the drum's volume, and a narrow drum is replaced aloud") {
        const Barrel barrel = *tests::read(starting_stove({0.125, 0.06})).barrel;
        const double volume = 0.785 * barrel.diameter * barrel.diameter * barrel.height;
        CHECK(volume == doctest::Approx(0.06).epsilon(0.06));  // rounded to 5 mm
        CHECK(starting_stove({0.125, 0.06}).find("too narrow") == std::string::npos);
        CHECK(starting_stove({0.25, 0.03}).find("# A drum of 30 l is too narrow") !=
              std::string::npos);
    }

    TEST_CASE("the file carries the standing cautions and says where its sizes come from") {
        const std::string text = starting_stove({});
        for (const char* word :
             {"Carbon monoxide", "outdoors", "CO alarm", "burn skin", "galvanised", "zinc",
              "ceramic fibre", "local codes", "licensed", "common practice, no source"}) {
            INFO(word);
            CHECK(text.find(word) != std::string::npos);
        }
    }

    TEST_CASE("what the rules do not reach is refused") {
        CHECK_THROWS_AS(starting_stove({0.05, {}}), InputError);
        CHECK_THROWS_AS(starting_stove({0.3, {}}), InputError);
        CHECK_THROWS_AS(starting_stove({{}, 0.4}), InputError);
    }
}
