#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "models/fire/solid_fuel.h"
#include "models/gas/gas_model.h"
#include "solver/constants.h"
#include "validation/compare.h"
#include "validation/gas_bench.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/thermochemistry";

/// JANAF: heat capacity [J/(mol K)] at 298.15, 600 and 1000 K, enthalpy [kJ/mol] over 298.15 K at
/// 600 and 1000 K.
struct Row {
    Species species;
    const char* meaning;
    double molar_mass;  // [kg/mol]
    double heat_capacity[3], enthalpy[2];
};
constexpr double argon = 0.00934 / 0.7905;  // [-] that comes with the air's nitrogen
constexpr Row table[] = {
    {n2, "nitrogen", 28.155e-3, {29.124, 30.110, 32.697}, {8.894, 21.463}},
    {o2, "oxygen", 31.998e-3, {29.376, 32.090, 34.870}, {9.244, 22.703}},
    {h2o, "water vapour", 18.015e-3, {33.590, 36.325, 41.268}, {10.501, 26.000}},
    {co2, "carbon dioxide", 44.009e-3, {37.129, 47.321, 54.308}, {12.907, 33.397}},
    {co, "carbon monoxide", 28.010e-3, {29.142, 30.440, 33.183}, {8.942, 21.690}}};

Composition pure(Species species) {
    Composition y{};
    y[species] = 1;
    return y;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("gases store and set free the heat that the tables give") {
        const GasBench bench(300);
        const GasModel& model = *bench.surroundings.model;
        constexpr double t[] = {298.15, 600, 1000};
        for (const Row& row : table) {
            // The program's nitrogen holds the air's argon, a monatomic gas: 5/2 R.
            const double share = row.species == n2 ? argon : 0;
            const double inert = 2.5 * constants::molar_gas;
            const Mixture gas = model.mixture(pure(row.species));
            double capacity = 0, heat = 0;
            for (int i = 0; i < 3; ++i) {
                const double expected = (1 - share) * row.heat_capacity[i] + share * inert;
                capacity = std::max(capacity,
                                    share_off(gas.heat_capacity(t[i]) * row.molar_mass, expected));
                if (i == 0) continue;
                const double stored =
                    (1 - share) * row.enthalpy[i - 1] * 1000 + share * inert * (t[i] - t[0]);
                heat = std::max(
                    heat,
                    share_off((gas.enthalpy(t[i]) - gas.enthalpy(t[0])) * row.molar_mass, stored));
            }
            compare({name,
                     fmt::format("JANAF, {}, heat capacity, worst share off [-]", row.meaning),
                     capacity, 1.5e-3});
            compare({name, fmt::format("JANAF, {}, enthalpy, worst share off [-]", row.meaning),
                     heat, 1e-3});
        }
        for (const auto& [species, mass, formation] : {std::tuple{h2o, 18.015e-3, -241.83},
                                                       {co2, 44.009e-3, -393.51},
                                                       {co, 28.010e-3, -110.53}})
            compare_beside(
                {name,
                 fmt::format("heat of formation of species {} [kJ/mol]", static_cast<int>(species)),
                 formation, model.species_enthalpy(species, 298.15) * mass / 1000, 2e-4});
        compare_beside({name, "carbon monoxide burnt [kJ/mol]", 282.98,
                        model.higher_heating_value(pure(co)) * 28.010e-3 / 1000, 2e-4});
        compare_beside({name, "water condensed at 298.15 K [kJ/mol]", 44.00,
                        model.excess_heat(pure(h2o), 298.15, 298.15).latent * 18.015e-3 / 1000,
                        1e-3});
    }
}
