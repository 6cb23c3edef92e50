#include "cli/report/web/plate_picture.h"

#include <doctest/doctest.h>

#include <cstdio>

#include "tests/cli/report/sample_run.h"
#include "tests/cli/report/svg_reading.h"

using namespace drawwell;

TEST_SUITE("cli/report/web/plate_picture") {
    TEST_CASE("the centre's ring lies at the foot of the picture, the rim's on top of it") {
        const std::string svg = plate_picture(sample_results());
        CHECK(well_formed(svg));
        double most = 0, least = 1e9, first = 0;
        for (std::size_t at = svg.find("<rect "); at != std::string::npos;
             at = svg.find("<rect ", at + 1)) {
            double x = 0, y = 0, width = 0, height = 0;
            REQUIRE(std::sscanf(svg.c_str() + at,
                                R"(<rect x="%lf" y="%lf" width="%lf" height="%lf")", &x, &y, &width,
                                &height) == 4);
            if (most == 0) first = y + height;
            most = std::max(most, y + height);
            least = std::min(least, y);
        }
        // A hair over its place hides seams.
        CHECK(first == doctest::Approx(most));
        CHECK(most == doctest::Approx(168.3).epsilon(0.001));
        CHECK(least == doctest::Approx(8).epsilon(0.01));
    }

    TEST_CASE("without a plate there is no picture") {
        CHECK(plate_picture(Results{}).empty());
    }
}
