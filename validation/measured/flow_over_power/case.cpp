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

constexpr auto name = "measured/flow_over_power";

constexpr double ambient = 293.15;                                 // [K]
constexpr double rates[] = {0.2, 0.3, 0.45, 0.65, 0.9, 1.2, 1.5};  // [kg/h] of wood

struct Point {
    double flow = 0, riser = 0;  // [kg/s], [K] mean of the riser's gas
};

std::vector<Point> sweep(const Library& library) {
    std::vector<Point> points;
    for (const double rate : rates) {
        const BurnOutcome outcome =
            burn(elbow_stove().with({fmt::format("burn_rate.table={} kg/h", rate)}), library);
        const std::size_t cells = outcome.results.find("riser_gas_temperature")->width;
        double mean = 0;
        for (std::size_t c = 0; c < cells; ++c)
            mean += value_at(outcome.results, "riser_gas_temperature", 3600, c) /
                    static_cast<double>(cells);
        points.push_back({value_at(outcome.results, "flue_gas_flow", 3600), mean});
    }
    return points;
}

std::vector<double> figures(const Library& library) {
    const std::vector<Point> points = sweep(library);
    const auto by_flow = [](const Point& a, const Point& b) { return a.flow < b.flow; };
    const auto [least, most] = std::minmax_element(points.begin(), points.end(), by_flow);
    // The formula's flow at each temperature, both over their own largest.
    double worst = 0;
    for (const Point& point : points) {
        const double theta = point.riser / ambient - 1;
        const double formula = 2 * std::sqrt(theta) / (1 + theta);
        worst = std::max(worst, std::abs(point.flow / most->flow / formula - 1));
    }
    return {1 - least->flow / most->flow, celsius(most->riser), worst};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE(
        "an elbow stove's flow is nearly flat in fire power and largest near twice the air's "
        "kelvins") {
        const auto found = with_spread(figures);
        compare_band(
            {name, "flow's fall from its largest, 0.2 to 1.5 kg/h [-]", 0, 0.25, found[0]});
        compare_band({name, "riser gas at the largest flow [degC]", 213, 413, found[1]});
        compare_band({name, "flow off 2 sqrt(theta)/(1 + theta), worst [-]", 0, 0.15, found[2]});
    }
}
