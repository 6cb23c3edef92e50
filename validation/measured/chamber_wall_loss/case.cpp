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

constexpr auto name = "measured/chamber_wall_loss";

/// Heat [W] that gets through the walls of feed, tunnel and riser once they are hot.
double loss(const std::string& wall, const Library& library) {
    std::vector<std::string> keys{"burn.duration=6 h", "burn.output_every=60 s"};
    for (const char* part :
         {"feed.lining", "feed.foot_lining", "tunnel.lining", "tunnel.roof", "riser.lining"})
        keys.push_back(fmt::format("{}={}", part, wall));
    return value_at(burn(elbow_stove().with(keys), library).results, "heat_to_room", 6 * 3600);
}

std::vector<double> figures(const Library& library) {
    const double bare = loss("1 mm mild_steel", library);
    return {loss("50 mm cob", library) / bare,
            loss("1 mm mild_steel, 10 mm aes_blanket", library) / bare, bare};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("earth keeps more heat in the chamber than bare metal, and insulation far more") {
        const auto found = with_spread(figures);
        compare({name, "walls out of order (insulated, earth, bare) [-]",
                 static_cast<double>(!(found[1].value < found[0].value && found[0].value < 1)), 0});
        compare_band({name, "earth, once hot, over bare metal [-]", 0.45, 0.75, found[0]});
        show_band({name, "metal with 10 mm insulation over bare metal [-]", 0.11, 0.19, found[1]},
                  "a blanket at 500 degC conducts three times what it does cold");
        show_band({name, "bare metal [W]", 375, 625, found[2]},
                  "5 kW in an insulated elbow is hotter than the chamber behind the figure");
    }
}
