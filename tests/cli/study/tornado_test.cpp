#include "cli/study/tornado.h"

#include <doctest/doctest.h>

#include <cstdio>
#include <fstream>

#include "cli/report/file_kind.h"
#include "tests/cli/scratch_folder.h"
#include "tests/cli/study/made_row.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Row plate(double value) {
    return row_with("plate_centre_max_c", value);
}

std::vector<Influence> some() {
    return {{"riser.top", false, plate(310), plate(290)},
            {"barrel <height>", false, plate(260), plate(330)},
            {"riser.bore", false, failed_row(), plate(305)},
            {"of.no.effect", false, plate(300), plate(300)},
            {"day.outdoor", true, plate(299), plate(302)}};
}

}  // namespace

TEST_SUITE("cli/study/tornado") {
    TEST_CASE("the strongest come first, each to both sides of what the stove has") {
        const Tornado figure =
            tornado_of(some(), plate(300), headline_of("plate_centre_max_c"), false, 8);
        REQUIRE(figure.bars.size() == 3);
        CHECK(figure.bars[0].input == "barrel <height>");
        CHECK(*figure.bars[0].less == -40);
        CHECK(*figure.bars[0].more == 30);
        CHECK(figure.bars[1].input == "riser.top");
        CHECK_FALSE(figure.bars[2].less);  // that stove can't be
        CHECK(tornado_of(some(), plate(300), headline_of("plate_centre_max_c"), false, 2)
                  .bars.size() == 2);
        CHECK(tornado_of(some(), plate(300), headline_of("plate_centre_max_c"), true, 8)
                  .bars.size() == 1);
    }

    TEST_CASE("bars are as long as what they say, on one scale, to the left where it falls") {
        const std::string svg = tornado_svg(
            "all", {tornado_of(some(), plate(300), headline_of("plate_centre_max_c"), false, 8)});
        std::vector<double> from, width;
        for (std::size_t at = svg.find("<rect "); at != std::string::npos;
             at = svg.find("<rect ", at + 1)) {
            double x = 0, y = 0, across = 0;
            const int read = std::sscanf(svg.c_str() + at,
                                         "<rect x=\"%lf\" y=\"%lf\" width=\"%lf\" height=\"8\"", &x,
                                         &y, &across);
            if (read != 3 || y < 64) continue;  // y < 64: the key to the colours
            if (svg.compare(svg.find("height=", at), 10, "height=\"8\"") != 0) continue;
            from.push_back(x);
            width.push_back(across);
        }
        REQUIRE(width.size() == 5);
        // Pixels are written to a tenth.
        CHECK(width[0] / width[1] == near(40.0 / 30, 0.01));
        CHECK(width[2] == near(width[3], 0.01));
        const double zero = from[0] + width[0];
        CHECK(from[1] == near(zero, 1e-3));
        CHECK(from[2] == near(zero, 1e-3));
        CHECK(from[3] + width[3] == near(zero, 1e-3));
    }

    TEST_CASE("the figure is SVG of ours, with names as they are") {
        const ScratchFolder folder;
        std::ofstream(folder / "a.svg") << tornado_svg(
            "R & D", {tornado_of(some(), plate(300), headline_of("plate_centre_max_c"), false, 8)});
        CHECK(kind_of_file(folder / "a.svg") == FileKind::figure);
        const std::string svg = bytes_of(folder / "a.svg");
        CHECK(svg.find("R &amp; D") != std::string::npos);
        CHECK(svg.find("barrel &lt;height&gt;") != std::string::npos);
        CHECK(svg.find("less can't be") != std::string::npos);
    }
}
