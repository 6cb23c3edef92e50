#include <doctest/doctest.h>
#include <fmt/format.h>

#include "models/gas/transport.h"
#include "models/laws/outside.h"
#include "validation/compare.h"
#include "validation/gas_bench.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/transport";

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("air and flue gas rub and conduct as the tables say") {
        const GasBench bench(300);
        const GasModel& model = *bench.surroundings.model;
        const auto at = [&](const Composition& y, double t) {
            return transport(y, t, model.mixture(y).heat_capacity(t));
        };
        constexpr struct {
            double t, viscosity, conductivity, heat_capacity;  // 1e-7, 1e-3
        } air[] = {{300, 184.6, 26.3, 1007},
                   {600, 305.8, 46.9, 1051},
                   {1000, 424.4, 66.7, 1141},
                   {1300, 496.0, 82.0, 1189}};
        for (const auto& row : air) {
            const Transport gas = at(dry_air(), row.t);
            const AirFilm film = air_properties(row.t);
            const auto beside = [&](const char* what, double source, double value, double limit) {
                compare_beside({name, fmt::format("Incropera, {}, {:.0f} K", what, row.t), source,
                                value, limit});
            };
            beside("air in the stove, viscosity [1e-7 Pa s]", row.viscosity, 1e7 * gas.viscosity,
                   0.03);
            beside("air in the stove, conductivity [1e-3 W/mK]", row.conductivity,
                   1e3 * gas.conductivity, 0.04);
            beside("air in the stove, heat capacity [J/kgK]", row.heat_capacity,
                   model.mixture(dry_air()).heat_capacity(row.t), 5e-3);
            beside("air round it, viscosity [1e-7 Pa s]", row.viscosity, 1e7 * film.viscosity,
                   0.03);
            beside("air round it, conductivity [1e-3 W/mK]", row.conductivity,
                   1e3 * film.conductivity, 0.04);
        }
        for (const auto& [t, density, conductivity] :
             {std::tuple{293.15, 1.204, 25.14}, {573.15, 0.6158, 44.18}, {873.15, 0.4042, 60.93}}) {
            compare_beside({name, fmt::format("Cengel, air, density, {:.0f} K [kg/m3]", t), density,
                            model.mixture(dry_air()).density(t, 101325), 3e-3});
            const Beside conducts{name,
                                  fmt::format("Cengel, air, conductivity, {:.0f} K [1e-3 W/mK]", t),
                                  conductivity, 1e3 * at(dry_air(), t).conductivity, 0.04};
            if (t < 300)
                show_beside(
                    conducts,
                    "tables differ by 2 % at room temperature, which no gas in a stove keeps");
            else
                compare_beside(conducts);
        }
        // N2 70, CO2 10, H2O 12, O2 8 % by volume, Wilke's mixing and the modified Eucken relation.
        Composition flue{0.70 * 28.014, 0.08 * 31.998, 0.10 * 44.009, 0.12 * 18.015, 0, 0};
        double mass = 0;
        for (const double part : flue) mass += part;
        for (double& part : flue) part /= mass;
        constexpr struct {
            double t, viscosity, conductivity;
        } wet[] = {
            {300, 166.4, 25.6}, {600, 285.4, 47.0}, {1000, 404.2, 73.2}, {1300, 477.3, 90.9}};
        for (const auto& row : wet) {
            compare_beside({name, fmt::format("Wilke, flue gas, viscosity, {:.0f} K [1e-7]", row.t),
                            row.viscosity, 1e7 * at(flue, row.t).viscosity, 0.05});
            compare_beside({name,
                            fmt::format("Eucken, flue gas, conductivity, {:.0f} K [1e-3]", row.t),
                            row.conductivity, 1e3 * at(flue, row.t).conductivity, 0.05});
        }
    }
}
