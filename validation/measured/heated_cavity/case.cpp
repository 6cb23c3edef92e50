#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "cli/read/read_library.h"
#include "models/burn.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr double ambient = 293.15;             // [K]
constexpr double width = 1.5, height = 2.0;    // [m] of the cavity
constexpr double slot = 1.4, opening = 0.4;    // [m] of its inlet
constexpr double warmer[] = {10, 20, 30, 40};  // [K] of both faces over the air
constexpr struct {
    double gap;          // [m]
    double measured[4];  // [kg/s] per metre of width
} series[] = {{0.1, {0.046, 0.067, 0.080, 0.086}},
              {0.2, {0.064, 0.094, 0.103, 0.118}},
              {0.3, {0.067, 0.097, 0.107, 0.121}}};

/// Flow [kg/s] per metre of width, as the program has it.
double flow(double gap, double excess) {
    const Library library = read_library();
    Stove stove;
    stove.riser.width = width;
    stove.riser.depth = gap;
    stove.riser.top = height;
    stove.riser.lining = {{library.materials.begin()->first, 0.02}};
    stove.riser.wall_temperature = ambient + excess;
    stove.site.room = ambient;
    stove.site.outdoor = Table(ambient);
    stove.burn.duration = 60;
    stove.burn.output_every = 60;
    stove.burn.reserve_every = 0;
    const BurnOutcome outcome = run_burn(stove, library);
    return outcome.results.find("feed_air_flow")->values.back() / width;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("air drawn through a heated cavity, against measurement") {
        double worst = 0, sum = 0, worst_exponent = 0;
        double out_of_order = 0;
        double narrower[4] = {0, 0, 0, 0};
        for (const auto& row : series) {
            double computed[4];
            std::string ratios;
            for (std::size_t i = 0; i < 4; ++i) {
                computed[i] = flow(row.gap, warmer[i]);
                const double ratio = computed[i] / row.measured[i];
                worst = std::max(worst, std::abs(ratio - 1));
                sum += ratio / 12;
                ratios += fmt::format(" {:.2f}", ratio);
                if (computed[i] <= narrower[i]) ++out_of_order;
                if (i > 0 && computed[i] <= computed[i - 1]) ++out_of_order;
                narrower[i] = computed[i];
            }
            fmt::print(
                "measured/heated_cavity  gap {} m, computed over measured at 10, 20, 30, 40 "
                "K:{}\n",
                row.gap, ratios);
            worst_exponent = std::max(
                worst_exponent, std::abs(std::log(computed[3] / computed[0]) / std::log(4) - 0.42));
        }
        compare({"measured/heated_cavity", "exponent of flow on the faces' excess, off 0.42 [-]",
                 worst_exponent, 0.08});
        compare({"measured/heated_cavity", "points that do not rise with excess and gap [-]",
                 out_of_order, 0});
        compare({"measured/heated_cavity", "flow, mean of 12 points, share off [-]",
                 std::abs(sum - 1), 0.25});
        show({"measured/heated_cavity", "flow, worst of 12 points, share off [-]", worst, 0.25},
             "films are those of forced flow, and gas fills the cavity with one density");
    }
}
