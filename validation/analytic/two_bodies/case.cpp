#include <doctest/doctest.h>

#include <cmath>

#include "validation/bench.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr double first_capacity = 4000, second_capacity = 12000;  // [J/K]
constexpr double conductance = 10;                                // [W/K]
constexpr double first = 500, second = 300, moment = 600;         // [K], [s]

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("two bodies come together at the rate of the closed form and keep their heat") {
        Bench bench;
        const SolidId a = bench.add(8, first_capacity / 8, 50, first);
        const SolidId b = bench.add(24, second_capacity / 24, 50, second);
        // Half of the resistance on either side.
        bench.network.links.push_back(
            {.a = a, .b = b, .shape_a = 2 * conductance / 50, .shape_b = 2 * conductance / 50});
        const auto at = bench.run({moment}, 1e-6).back();
        const double mean = (first_capacity * first + second_capacity * second) /
                            (first_capacity + second_capacity);
        const double left =
            std::exp(-moment * conductance * (1 / first_capacity + 1 / second_capacity));
        compare({"analytic/two_bodies", "warmer body after 600 s [K]",
                 std::abs(at[0] - (mean + (first - mean) * left)), 0.002});
        compare({"analytic/two_bodies", "cooler body after 600 s [K]",
                 std::abs(at[1] - (mean + (second - mean) * left)), 0.002});
        compare({"analytic/two_bodies", "heat of both, change as a share [-]",
                 std::abs((first_capacity * at[0] + second_capacity * at[1]) /
                              (first_capacity * first + second_capacity * second) -
                          1),
                 1e-9});
    }
}
