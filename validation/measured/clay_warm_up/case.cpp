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

constexpr auto name = "measured/clay_warm_up";
constexpr auto hotter = "the run's chamber loses three times what the one behind the figures did";

BurnOutcome with_wall(const std::string& wall, const Library& library) {
    std::vector<std::string> keys{"burn.duration=4 h"};
    for (const char* part :
         {"feed.lining", "feed.foot_lining", "tunnel.lining", "tunnel.roof", "riser.lining"})
        keys.push_back(fmt::format("{}={}", part, wall));
    return burn(elbow_stove().with(keys), library);
}

/// Heat [W] that the fire's gas gives to the chamber's walls, as far as columns tell: set free less
/// carried off. What the vapours bring with them is left out of all walls alike.
double taken(const Results& results, std::size_t i) {
    return results.find("heat_release")->values[i] - results.find("heat_up_flue")->values[i];
}

/// Minutes until a wall takes no more than `level` [W], after the first two.
double minutes_down_to(double level, const Results& results) {
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (results.time[i] >= 120 && taken(results, i) <= level) return results.time[i] / 60;
    return results.time.back() / 60;
}

std::vector<double> figures(const Library& library) {
    const Results bare = with_wall("1 mm mild_steel", library).results;
    const double level = taken(bare, bare.time.size() - 1);
    const double massive = minutes_down_to(level, with_wall("150 mm cob", library).results);
    const double thin = minutes_down_to(level, with_wall("15 mm brick", library).results);
    return {massive, thin, massive / thin};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE(
        "a massive earth wall costs more heat than bare metal at first, for longer than thin "
        "clay") {
        const auto found = with_spread(figures);
        compare({name, "thin clay is the later one [-]",
                 static_cast<double>(found[1].value >= found[0].value), 0});
        show_band({name, "massive earth down to bare metal's loss after [min]", 60, 100, found[0]},
                  hotter);
        show_band({name, "thin fired clay after [min]", 15, 25, found[1]}, hotter);
        show_band({name, "massive over thin [-]", 3, 5, found[2]}, hotter);
    }
}
