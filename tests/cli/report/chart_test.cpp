#include "cli/report/chart.h"

#include <doctest/doctest.h>

#include <limits>

#include "tests/cli/report/svg_reading.h"

using namespace drawwell;

TEST_SUITE("cli/report/chart") {
    TEST_CASE("a line is parted where a value is none, and axes have round numbers") {
        Chart chart("t", "d", {"x", 0, 10}, {"y", 0, 1});
        const double nan = std::numeric_limits<double>::quiet_NaN();
        chart.line({{0, 0}, {1, 1}, {2, nan}, {3, 0}, {4, 1}}, {"#000000"});
        const std::string svg = chart.svg();
        const std::size_t path = svg.find("<path d=\"M");
        REQUIRE(path != std::string::npos);
        const std::string drawn = svg.substr(path, svg.find("clip-path", path) - path);
        CHECK(count_of(drawn, "M") == 2);
        CHECK(count_of(drawn, "L") == 2);
        for (const char* tick : {">0<", ">2<", ">10<", ">0.2<", ">1.0<"})
            CHECK(svg.find(tick) != std::string::npos);
    }

    TEST_CASE("marks and labels outside the axes are left out") {
        Chart chart("t", "d", {"x", 0, 10}, {"y", 0, 1});
        chart.mark({11, 0.5}, ChartMark::filled, "#123456");
        chart.label({5, 2}, "far off", "#123456");
        chart.height({5, 2}, {"too high"}, "#123456");
        chart.band(12, 15, "#123456");
        CHECK(chart.svg().find("#123456") == std::string::npos);
        chart.band(15, 8, "#123456");
        CHECK(chart.svg().find("#123456") != std::string::npos);
    }

    TEST_CASE("axes without extent or with values that are none still make a figure") {
        const double infinity = std::numeric_limits<double>::infinity();
        for (const auto& [least, most] : {std::pair{3.0, 3.0},
                                          {0.0, 0.0},
                                          {5.0, -5.0},
                                          {infinity, -infinity},
                                          {-1e308, 1e308}}) {
            Chart chart("t", "d", {"x", least, most}, {"y", least, most});
            chart.line({{least, least}, {most, most}}, {"#000000"});
            const std::string svg = chart.svg();
            CHECK(well_formed(svg));
            CHECK(svg.find("nan") == std::string::npos);
            CHECK(svg.find("inf") == std::string::npos);
        }
    }
}
