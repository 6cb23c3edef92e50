#include <doctest/doctest.h>

#include "validation/compare.h"
#include "validation/trade/low_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "trade/cut_barrel";

std::vector<double> figures(const Library& library) {
    const Summary whole = burn(low_stove(), library).summary;
    const Summary cut = burn(low_stove().with({"barrel.height=467 mm"}), library).summary;
    return {cut.plate_time_to_fry.value_or(1e6) / 60, celsius(*cut.plate_centre_max),
            cut.heat_to_room / cut.heat_released / (whole.heat_to_room / whole.heat_released),
            cut.smoke_back};
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("a barrel cut to two thirds still cooks and gives the room less") {
        const auto found = with_spread(figures);
        compare_band({name, "cut: plate at 175 degC after [min]", 0, 30, found[0]});
        compare_band({name, "cut: plate's middle at most [degC]", 230, 700, found[1]});
        compare_band({name,
                      "cut: share of the wood's heat to the room, over the whole barrel's [-]", 0.8,
                      0.99, found[2]});
        compare_band({name, "cut: smoke out of the feed [s]", 0, 0, found[3]});
    }
}
