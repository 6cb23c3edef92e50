#include "cli/study/fit/matched_stove.h"

#include <doctest/doctest.h>

#include "cli/read/read_library.h"
#include "tests/cli/read/small_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Match match_of(const std::string& input, double estimate, std::string_view text) {
    Match match;
    match.inputs = {{parse_fit_input(input, read(text), read_library()), estimate, 0.5, true}};
    return match;
}

MatchedStove matched(const std::string& text, const std::string& input, double estimate,
                     const std::vector<Override>& sets = {}) {
    return matched_stove({"s.toml", text, {}}, sets, read_library(),
                         match_of(input, estimate, text), "burn.csv");
}

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/study/fit/matched_stove") {
    TEST_CASE("a fitted key is put in the place of what the file says, all else stays") {
        const std::string text = with("top = \"725 mm\"", "top = \"725 mm\"  # measured twice");
        const MatchedStove stove = matched(text, "riser.top=+-10mm", -1.5);
        CHECK(contains(stove.text, "top = \"710 mm\"  # measured twice"));
        CHECK(read(stove.text).riser.top == near(0.71, 1e-9));
        CHECK(stove.set == std::vector<std::string>{"riser.top"});
        CHECK(stove.unset.empty());
    }

    TEST_CASE("a key that the file leaves out goes into its table, or into a new one") {
        const MatchedStove port = matched(std::string(small_stove), "port.width=+-5mm", 1);
        CHECK(read(port.text).port->width == near(read(small_stove).port->width + 0.005, 1e-6));
        const MatchedStove room = matched(std::string(small_stove), "site.room=+-4K", 1);
        CHECK(contains(room.text, "[site]"));
        CHECK(read(room.text).site.room == near(read(small_stove).site.room + 4, 1e-6));
    }

    TEST_CASE("the day is written as outdoor temperature, pressure and wood's moisture") {
        const Stove filed = read(small_stove);
        const Library library = read_library();
        const MatchedStove cold = matched(std::string(small_stove), "day.outdoor", -1);
        CHECK(read(cold.text).site.outdoor(0) ==
              near(filed.site.outdoor(0) - library.day.outdoor, 1e-6));
        const std::string high = std::string(small_stove) + "[site]\naltitude = \"500 m\"\n";
        const MatchedStove low = matched(high, "day.pressure", 2);
        CHECK(read(low.text).site.pressure > read(high).site.pressure);
        CHECK(contains(low.text, "# before the match: altitude"));
        const std::string own = with("at = [\"8 min\", \"16 min\"]",
                                     "at = [\"8 min\", \"16 min\"]\nmoisture = \"20 % wet\"");
        const MatchedStove wet = matched(own, "day.wood_moisture", 1);
        CHECK(read(wet.text).loads[0].moisture_wet_basis ==
              near(0.2 * (1 + library.day.wood_moisture), 1e-3));
    }

    TEST_CASE("what a stove file can't say is told, in the file and beside it") {
        const MatchedStove stove = matched(std::string(small_stove), "fuel_bed.surface_rate", 1);
        REQUIRE(stove.unset.size() == 1);
        CHECK(contains(stove.unset[0], "fuel_bed.surface_rate x 1."));
        CHECK(
            contains(stove.text, "# Not in this file, which can't say it: fuel_bed.surface_rate"));
    }

    TEST_CASE("what the command line sets is set in the file too") {
        const MatchedStove stove = matched(std::string(small_stove), "riser.top=+-10mm", 0,
                                           overrides({"riser.bore=130mm"}));
        CHECK(read(stove.text).riser.bore == near(0.13, 1e-9));
    }

    TEST_CASE("a value over several lines is left to be set by hand") {
        const std::string text =
            std::string(small_stove) +
            "[site]\noutdoor = [[\"0 min\", \"1 °C\"],\n  [\"1 h\", \"2 °C\"]]\n";
        CHECK_THROWS_WITH_AS(matched(text, "day.outdoor", 1), doctest::Contains("set it by hand"),
                             InputError);
    }
}
