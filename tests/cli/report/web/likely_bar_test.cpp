#include "cli/report/web/likely_bar.h"

#include <doctest/doctest.h>

#include "tests/cli/report/sample_run.h"

using namespace drawwell;

namespace {

PageRun run_with(LikelyRanges likely) {
    PageRun run;
    run.burn.results = sample_results();
    run.burn.summary = sample_summary();
    run.burn.likely = std::move(likely);
    return run;
}

ShownSeries plate(std::size_t cell) {
    return {"ring", {10, 100, 90}, "plate_temperature", cell};
}

}  // namespace

TEST_SUITE("cli/report/web/likely_bar") {
    TEST_CASE("a line's bar stands at its peak and spans where that lies on nine days of ten") {
        const PageRun run =
            run_with({50,
                      50,
                      0,
                      {{"plate_centre_max_c", 244, 306, 358}, {"plate_rim_max_c", 180, 200, 220}}});
        const auto centre = likely_bar(run, plate(0));
        REQUIRE(centre);
        CHECK(centre->low == 244);
        CHECK(centre->high == 358);
        CHECK(centre->minutes == doctest::Approx(run.burn.results.time[1] / 60));
        REQUIRE(likely_bar(run, plate(1)));
        CHECK(likely_bar(run, plate(1))->low == 180);
    }

    TEST_CASE("a line's band is that of its column's first cell, in the unit shown") {
        LikelyRanges likely{50, 50, 0};
        likely.low.time = likely.high.time = sample_results().time;
        likely.low.columns = {{"plate_temperature", "K", "plate", "", 1, {273.15, 280, 373.15}}};
        likely.high.columns = {{"plate_temperature", "K", "plate", "", 1, {300, 300, 573.15}}};
        PageRun run = run_with(likely);
        const auto band = likely_band(run, plate(0));
        REQUIRE(band);
        REQUIRE(band->low.size() == 3);
        CHECK(band->low[0] == doctest::Approx(0));
        CHECK(band->low[2] == doctest::Approx(100));
        CHECK(band->high[2] == doctest::Approx(300));
        CHECK_FALSE(likely_band(run, plate(1)));
        CHECK_FALSE(likely_band(run, {"draw", {1, 2, 3}, "spare_draw", 0}));
        run.burn.likely.low.time.pop_back();  // of another burn
        CHECK_FALSE(likely_band(run, plate(0)));
    }

    TEST_CASE("without other days, or words on the line, there is no bar") {
        CHECK_FALSE(likely_bar(run_with({}), plate(0)));
        CHECK_FALSE(likely_bar(run_with({50, 50, 0, {{"plate_rim_max_c", 1, 2, 3}}}), plate(0)));
        CHECK_FALSE(likely_bar(run_with({50, 50, 0, {{"plate_rim_max_c", 1, 2, 3}}}),
                               {"x", {1}, "no_such_column", 0}));
    }
}
