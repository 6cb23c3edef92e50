#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;
using drawwell::testing::value_at;

namespace {

constexpr auto name = "measured/draft_fades";

/// The builder's stove, its flue a level pipe, or one that rises 6 ft.
struct Draft {
    double early = 0, late = 0;              // [kg/s] air at 2 and 60 min
    double smoke_early = 0, smoke_late = 0;  // [Pa] push from which smoke may trickle out
    double annulus = 0;                      // [Pa] by which its column pulls back more
};

Draft draft(const std::string& shell, const std::string& rise, const Library& library) {
    const BurnOutcome outcome =
        burn(builders_stove().with({"flue.level.length=1.5 m", "flue.stack.length=6 ft",
                                    "flue.stack.rise=" + rise, "site.outdoor=18 °C",
                                    "barrel.shell=" + shell, "burn.reserve_every=60 s"}),
             library);
    const Results& results = outcome.results;
    const Column& smoke = *results.find("exchange_draw_early");
    double least = 1e9;
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (results.time[i] >= 3600 && results.time[i] <= 7200)
            least = std::min(least, smoke.values[i]);
    return {
        value_at(results, "feed_air_flow", 120), value_at(results, "feed_air_flow", 3600),
        value_at(results, "exchange_draw_early", 120), least,
        value_at(results, "buoyancy_annulus", 120) - value_at(results, "buoyancy_annulus", 7200)};
}

std::vector<double> figures(const Library& library) {
    const std::string brick = "1.2 mm mild_steel, 100 mm brick";
    const Draft level = draft(brick, "0 mm", library), risen = draft(brick, "6 ft", library);
    const Draft bare = draft("1.2 mm mild_steel", "0 mm", library);
    return {level.late / level.early, level.smoke_early, level.smoke_late,
            risen.smoke_late,         level.annulus,     bare.smoke_late};
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE(
        "without a rising flue the draw fades as the drum warms and six feet of flue cure it") {
        const auto found = with_spread(figures);
        compare_band({name, "level flue, air after an hour over the first [-]", 0, 0.8, found[0]});
        compare_band(
            {name, "level flue, push that brings smoke, at first [Pa]", 3, unbounded, found[1]});
        compare_band({name, "level flue, the same in the second hour, least [Pa]", 0, 1, found[2]});
        compare_band({name, "6 ft of rise, the same [Pa]", 3, unbounded, found[3]});
        compare_band({name, "annulus pulls back more, first minutes to two hours [Pa]", 0.2,
                      unbounded, found[4]});
        show_band({name, "bare drum, level flue, second hour, least [Pa]", 0, 1, found[5]},
                  "the source's drum is not known; required of the one in brick");
    }
}
