#include "cli/study/likely_bands.h"

#include <doctest/doctest.h>

#include <stdexcept>
#include <string>
#include <vector>

#include "cli/study/series_bytes.h"

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
        DaySeries store;
        std::vector<Row> days(22);
        for (std::size_t i = 0; i < 21; ++i) {
            days[i].identity = "day-" + std::to_string(i);
            days[i].series = series_bytes(day(static_cast<double>((i * 8) % 21)));
            store.keep(days[i]);
        }
        days[21].error = "the riser goes through the plate";
        store.keep(days[21]);
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

    TEST_CASE("where every day failed there are no bands") {
        const DaySeries none;
        Row failed;
        failed.error = "the riser goes through the plate";
        LikelyRanges ranges;
        add_bands(ranges, std::vector<Row>(3, failed), none);
        CHECK(ranges.low.columns.empty());
    }

    TEST_CASE("a day that is missing, or of other instants, is an error and no narrower band") {
        DaySeries store;
        std::vector<Row> days(3);
        for (std::size_t i = 0; i < 3; ++i) {
            days[i].identity = "day-" + std::to_string(i);
            Results series = day(static_cast<double>(i));
            if (i == 2) series.time = {0, 31};
            days[i].series = series_bytes(series);
            if (i != 1) store.keep(days[i]);
        }
        LikelyRanges ranges;
        CHECK_THROWS_WITH_AS(add_bands(ranges, days, store), doctest::Contains("missing"),
                             std::logic_error);
        store.keep(days[1]);
        ranges = {};
        CHECK_THROWS_WITH_AS(add_bands(ranges, days, store), doctest::Contains("instants"),
                             std::logic_error);
    }
}
