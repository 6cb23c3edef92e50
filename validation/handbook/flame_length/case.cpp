#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>

#include "models/fire/flame.h"
#include "solver/constants.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/flame_length";

/// Zukoski: 3.3 D Q*^(2/5) above Q* 1, 3.3 D Q*^(2/3) below; 1110 kW/m^2.5 is air's density, heat
/// capacity, temperature and the root of gravity.
double zukoski(double kilowatt, double width) {
    const double q = kilowatt / (1110 * std::pow(width, 2.5));
    return 3.3 * width * std::pow(q, q > 1 ? 0.4 : 2.0 / 3);
}

/// Thomas: 42 D (m / (rho sqrt(g D)))^0.61, m [kg/(m2 s)] of wood with 15 MJ/kg.
double thomas(double kilowatt, double width) {
    const double flux = kilowatt / 15e3 / (constants::pi / 4 * width * width);
    return 42 * width * std::pow(flux / (1.2 * std::sqrt(constants::gravity * width)), 0.61);
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("flames are as long as other correlations of free flames say") {
        for (const auto& [kilowatt, width] : {std::pair{10.0, 0.11}, {25.0, 0.15}, {60.0, 0.3}}) {
            const double seen = flame_length(kilowatt * 1000, width);
            const auto row = [&](const char* who) {
                return fmt::format("{}, {:.0f} kW over {:.0f} mm [m]", who, kilowatt, 1000 * width);
            };
            compare_beside({name, row("Zukoski"), zukoski(kilowatt, width), seen, 0.25});
            show_beside({name, row("Thomas"), thomas(kilowatt, width), seen, 0.25},
                        "Thomas measured cribs on the ground");
        }
        compare_beside({name, "Heskestad, 100 kW over 0.3 m [m]",
                        0.235 * std::pow(100, 0.4) - 1.02 * 0.3, flame_length(100e3, 0.3), 1e-9});
    }
}
