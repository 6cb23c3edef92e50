#include "cli/study/likely_bands.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

/// Day n of 21: the drive is n Pa at first and 10 n Pa later, the plate's centre 300 + n K.
Results day(double n) {
    Results results;
    results.time = {0, 30};
    results.columns = {
        {"drive", "Pa", "what drives it", "", 1, {n, 10 * n}},
        {"plate_temperature", "K", "plate", "plate_radius", 2, {300 + n, 0, 300 + n, 0}},
        {"air_flow", "kg/s", "not drawn with a band", "", 1, {n, n}}};
    return results;
}

}  // namespace

TEST_SUITE("cli/study/likely_bands") {
    TEST_CASE("bands hold nine days of ten, moment by moment, whatever the order of the days") {
        const ScratchFolder folder;
        SeriesStore store(folder / "days");
        std::vector<Row> days(22);
        for (std::size_t i = 0; i < 21; ++i) {
            days[i].identity = "day-" + std::to_string(i);
            store.keep(days[i].identity, series_bytes(day(static_cast<double>((i * 8) % 21))));
        }
        days[21].identity = "failed";
        LikelyRanges ranges;
        add_bands(ranges, days, store);
        CHECK(ranges.low.time == std::vector<double>{0, 30});
        CHECK(ranges.high.time == ranges.low.time);
        REQUIRE(ranges.low.columns.size() == 2);
        CHECK_FALSE(ranges.low.find("air_flow"));
        // Of the numbers from 0 to 20 one lies below 1 and one above 19.
        CHECK(ranges.low.find("drive")->values == std::vector<double>{1, 10});
        CHECK(ranges.high.find("drive")->values == std::vector<double>{19, 190});
        CHECK(ranges.low.find("plate_temperature")->width == 1);
        CHECK(ranges.low.find("plate_temperature")->values == std::vector<double>{301, 301});
    }

    TEST_CASE("without a day's series there are no bands") {
        const ScratchFolder folder;
        const SeriesStore store(folder / "days");
        LikelyRanges ranges;
        add_bands(ranges, std::vector<Row>(3), store);
        CHECK(ranges.low.columns.empty());
    }
}
