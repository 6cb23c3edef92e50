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

constexpr auto name = "measured/oxygen_threshold";

struct Point {
    double oxygen = 0;  // [%] in the dry flue gas
    double air_ratio = 0;
    double unburnt = 0;  // [%] of the heat that plenty of air sets free
};

/// The allotment kitchen at a steady 2.4 kg/h, its feed covered further each twenty minutes.
std::vector<Point> sweep(const Library& library) {
    const BurnOutcome outcome = burn(
        sample("allotment-kitchen")
            .with({"burn_rate.table=2.4 kg/h", "burn.duration=3 h",
                   R"(schedule.feed_cover=[["0 min","off"],["40 min","50 %"],["60 min","70 %"],)"
                   R"(["80 min","80 %"],["100 min","85 %"],["120 min","90 %"],["140 min","93 %"],)"
                   R"(["160 min","96 %"]])"}),
        library);
    std::vector<Point> points;
    double most = 0;
    for (double minute = 59; minute < 180; minute += 20) {
        const auto at = [&](const char* column) {
            return value_at(outcome.results, column, 60 * minute);
        };
        most = std::max(most, at("heat_release"));
        points.push_back({100 * at("oxygen_at_flue"), at("air_ratio"), at("heat_release")});
    }
    for (Point& point : points) point.unburnt = 100 * (1 - point.unburnt / most);
    return points;
}

/// What stands at the place in the sweep where another quantity passes a level; both run one way.
double where(const std::vector<Point>& points, double Point::*of, double level,
             double Point::*wanted) {
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double before = points[i - 1].*of - level, after = points[i].*of - level;
        if (before * after <= 0)
            return points[i - 1].*wanted +
                   (points[i].*wanted - points[i - 1].*wanted) * before / (before - after);
    }
    return 99;
}

std::vector<double> figures(const Library& library) {
    const std::vector<Point> points = sweep(library);
    return {where(points, &Point::oxygen, 8, &Point::air_ratio),
            where(points, &Point::unburnt, 1, &Point::oxygen)};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE(
        "burning becomes incomplete where the flue's oxygen falls below some eight per cent") {
        const auto found = with_spread(figures);
        compare_band({name, "air ratio at 8 % oxygen [-]", 1.55, 1.7, found[0]});
        compare_band(
            {name, "oxygen at which 1 % of the heat is left unburnt [%]", 6, 10, found[1]});
    }
}
