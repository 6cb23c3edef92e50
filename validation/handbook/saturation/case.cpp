#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "models/laws/water.h"
#include "solver/constants.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/saturation";
constexpr double ice = constants::ice_point;

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("water boils, evaporates and condenses as the steam tables say") {
        constexpr struct {
            double celsius, kilopascal;
        } table[] = {{50, 12.35}, {60, 19.95}, {70, 31.20},
                     {80, 47.41}, {90, 70.18}, {100, 101.42}};
        double boiling = 0, dew = 0;
        for (const auto& row : table) {
            compare_beside({name, fmt::format("steam tables, {:.0f} degC [kPa]", row.celsius),
                            row.kilopascal, vapour_pressure(row.celsius + ice) / 1000, 0.08});
            if (row.celsius >= 90)
                boiling = std::max(
                    boiling, std::abs(boiling_point(1000 * row.kilopascal) - ice - row.celsius));
            dew = std::max(dew, std::abs(dew_point(1000 * row.kilopascal) - ice - row.celsius));
        }
        compare({name, "boiling point at 70 and 101 kPa, worst [K]", boiling, 0.3});
        compare({name, "dew point, 12 to 101 kPa, worst [K]", dew, 0.2});
        for (const auto& [pascal, celsius] :
             {std::pair{15000, 53.97}, {10000, 45.81}, {5000, 32.88}})
            compare({name, fmt::format("dew point at {} Pa against {} degC [K]", pascal, celsius),
                     std::abs(dew_point(pascal) - ice - celsius), 0.2});
        show_beside({name, "steam tables, 20 degC: outside it [kPa]", 2.339,
                     vapour_pressure(20 + ice) / 1000, 0.08},
                    "colder than the range of the law, which a pot soon leaves");
        compare_beside({name, "heat of vaporisation [MJ/kg]", 2.26, vaporisation_heat / 1e6, 0.01});
        compare_beside({name, "a litre from 15 to 100 degC [kJ]", 356,
                        0.001 * water_heat_capacity * 85, 0.01});
        compare_beside({name, "Lewis, open water at 80 degC, film 8, 20 degC room [W/m2]",
                        8 / (1007 * std::pow(0.85, 2.0 / 3)) * 0.622 * (47.41e3 - 0.5 * 2339) /
                            101325 * 2.26e6,
                        evaporation_flux(80 + ice, 20 + ice, 8, 101325), 0.05});
    }
}
