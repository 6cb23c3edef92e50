#include <doctest/doctest.h>

#include "validation/compare.h"
#include "validation/trade/low_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "trade/low_stove";

constexpr double never = 1e6;  // [min]

std::vector<double> figures(const Library& library) {
    const Summary summary = burn(low_stove().with({"burn.reserve_every=60 s"}), library).summary;
    return {summary.smoke_back, *summary.reserve_draw_min, *summary.exchange_draw_min_early,
            summary.plate_time_to_fry.value_or(60 * never) / 60,
            celsius(*summary.plate_centre_max)};
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE(
        "a low stove of 150 mm with half its port closed draws and cooks and does not smoke") {
        const auto found = with_spread(figures);
        compare_band({name, "smoke out of the feed [s]", 0, 0, found[0]});
        compare_band({name, "least spare draw [Pa]", 2, unbounded, found[1]});
        compare_band(
            {name, "least push that may bring smoke past the air [Pa]", 0.5, unbounded, found[2]});
        compare_band({name, "plate at 175 degC after [min]", 0, 30, found[3]});
        compare_band({name, "plate's middle at most [degC]", 230, 700, found[4]});
    }
}
