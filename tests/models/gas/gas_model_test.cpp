#include "models/gas/gas_model.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numeric>

#include "models/laws/heating_value.h"
#include "solver/constants.h"
#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

constexpr VolatileGas vapours{
    .carbon = 0.42, .hydrogen = 0.075, .oxygen = 0.505, .higher_heating_value = 16e6};
const GasModel gas(vapours);

// [kg/mol]; nitrogen with the air's argon, 1.18 % of it by volume.
constexpr double argon_share = 0.0118;
constexpr double molar_mass[] = {28.155e-3, 31.998e-3, 44.009e-3, 18.015e-3, 28.010e-3};

double sum(const Composition& c) {
    return std::accumulate(c.begin(), c.end(), 0.0);
}

Composition only(Species s) {
    Composition c{};
    c[s] = 1;
    return c;
}

/// [kJ/mol] gained from 298.15 K.
double warming(Species s, double t) {
    return 1e-3 * molar_mass[s] * (gas.species_enthalpy(s, t) - gas.species_enthalpy(s, 298.15));
}

double molar_heat_capacity(Species s, double t) {
    return molar_mass[s] * gas.mixture(only(s)).heat_capacity(t);
}

/// Wood burnt whole as if it were all volatiles, at an air ratio, with its moisture; per kg of dry
/// wood free of ash.
struct WoodGas {
    GasModel model;
    Composition mass;  // [kg]
};
WoodGas wood_gas(const WoodAnalysis& wood, double water, double air_ratio) {
    GasModel model({wood.carbon, wood.hydrogen, wood.oxygen, wood_heating_value(wood)});
    Composition mass = model.volatile_burning();
    mass[volatiles] += 1;
    const double air = air_ratio * model.oxygen_demand() / dry_air()[o2];
    for (Species s : {n2, o2}) mass[s] += air * dry_air()[s];
    mass[h2o] += water;
    return {model, mass};
}

constexpr WoodAnalysis hardwood{.carbon = 0.493, .hydrogen = 0.061, .oxygen = 0.446};

Composition fractions(Composition mass) {
    const double total = sum(mass);
    for (double& m : mass) m /= total;
    return mass;
}

}  // namespace

TEST_CASE("species hold the heat of the JANAF tables") {
    // Heat capacity [J/(mol K)] at 298.15, 600, 1000 K (0.15 %) and heat from 298.15 K [kJ/mol] at
    // 600 and 1000 K (0.1 %); from memory of JANAF.
    struct Row {
        Species species;
        double cp_298, cp_600, cp_1000, heat_600, heat_1000;
    };
    const Row rows[] = {{n2, 29.124, 30.110, 32.697, 8.894, 21.463},
                        {o2, 29.376, 32.090, 34.870, 9.244, 22.703},
                        {h2o, 33.590, 36.325, 41.268, 10.501, 26.000},
                        {co2, 37.129, 47.321, 54.308, 12.907, 33.397},
                        {co, 29.142, 30.440, 33.183, 8.942, 21.690}};
    // Argon carries 2.5 R = 20.786 J/(mol K).
    const auto with_argon = [](Species species, double tabled, double warmed_by) {
        return species == n2 ? (1 - argon_share) * tabled + argon_share * 20.786 * warmed_by
                             : tabled;
    };
    for (const Row& row : rows) {
        CHECK(molar_heat_capacity(row.species, 298.15) ==
              near(with_argon(row.species, row.cp_298, 1), 1.5e-3));
        CHECK(molar_heat_capacity(row.species, 600) ==
              near(with_argon(row.species, row.cp_600, 1), 1.5e-3));
        CHECK(molar_heat_capacity(row.species, 1000) ==
              near(with_argon(row.species, row.cp_1000, 1), 1.5e-3));
        CHECK(warming(row.species, 600) ==
              near(with_argon(row.species, row.heat_600, 1e-3 * (600 - 298.15)), 1e-3));
        CHECK(warming(row.species, 1000) ==
              near(with_argon(row.species, row.heat_1000, 1e-3 * (1000 - 298.15)), 1e-3));
    }
}

TEST_CASE("species hold their heats of formation, and the elements none") {
    // [kJ/mol] -241.83, -393.51, -110.53: computed from the published coefficients, 0.01.
    CHECK(1e-3 * molar_mass[h2o] * gas.species_enthalpy(h2o, 298.15) == near(-241.83, 1e-4));
    CHECK(1e-3 * molar_mass[co2] * gas.species_enthalpy(co2, 298.15) == near(-393.51, 1e-4));
    CHECK(1e-3 * molar_mass[co] * gas.species_enthalpy(co, 298.15) == near(-110.53, 1e-4));
    CHECK(std::abs(gas.species_enthalpy(n2, 298.15)) < 0.01 / 28e-6);
    CHECK(std::abs(gas.species_enthalpy(o2, 298.15)) < 0.01 / 32e-6);
}

TEST_CASE("dry air is a fifth oxygen and has the heat capacity of the tables") {
    const Composition air = dry_air();
    CHECK(sum(air) == near(1, 1e-12));
    const double o2_moles = air[o2] / molar_mass[o2], n2_moles = air[n2] / molar_mass[n2];
    CHECK(o2_moles / (o2_moles + n2_moles) == near(0.2095, 1e-4));
    CHECK(air[o2] == near(0.2314, 1e-3));  // by mass, from memory of the standard atmosphere
    // 1007, 1051, 1141, 1189 J/(kg K): Incropera table A.4, from memory; computed from the same
    // polynomials 1005, 1050, 1142, 1187.
    const Mixture mixture = gas.mixture(air);
    CHECK(mixture.heat_capacity(300) == near(1007, 0.0025));
    CHECK(mixture.heat_capacity(600) == near(1051, 0.0025));
    CHECK(mixture.heat_capacity(1000) == near(1141, 0.0025));
    CHECK(mixture.heat_capacity(1300) == near(1189, 0.004));
}

TEST_CASE("a warm column draws, and a warm column leading down takes back") {
    const Mixture air = gas.mixture(dry_air());
    const auto draft = [&](double rise, double celsius) {
        return constants::gravity * rise *
               (air.density(293.15, 101325) - air.density(celsius + 273.15, 101325));
    };
    // D1, D4: computed with 287.05 J/(kg K).
    CHECK(draft(3, 300) == near(17.31, 0.002));
    CHECK(draft(1, 800) + draft(-0.8, 300) + draft(3, 150) == near(14.85, 0.002));
    CHECK(draft(5, 20) == 0);  // D5
}

TEST_CASE("burning keeps mass and elements") {
    CHECK(std::abs(sum(gas.volatile_burning())) < 1e-12);
    CHECK(std::abs(sum(gas.co_burning())) < 1e-12);
    for (const Composition& gain : {gas.volatile_burning(), gas.co_burning()})
        for (double element : gas.elements(gain)) CHECK(std::abs(element) < 1e-12);
    for (double share : {0.0, 0.1, 1.0}) {
        const Composition gain = gas.char_burning(share);
        CHECK(sum(gain) == near(1, 1e-12));
        const auto [c, h, o, n] = gas.elements(gain);
        CHECK(c == near(1, 1e-12));
        CHECK(std::abs(h) + std::abs(o) + std::abs(n) < 1e-12);
    }
    CHECK(gas.volatile_burning()[o2] == -gas.oxygen_demand());
    double total = 0;
    for (double element : gas.elements({0.1, 0.2, 0.3, 0.1, 0.1, 0.2})) total += element;
    CHECK(total == near(1, 1e-12));
}

TEST_CASE("burning at the reference temperature releases the heating value") {
    // Heat of carbon monoxide 282.98 kJ/mol: from the heats of formation.
    CHECK(gas.higher_heating_value(only(co)) * molar_mass[co] == near(282.98e3, 1e-4));
    CHECK(gas.higher_heating_value(only(volatiles)) == near(16e6, 1e-12));
    CHECK(gas.higher_heating_value(only(co2)) == 0);
    // By enthalpies, with water as vapour: the heating value less the water's condensation,
    // 2.442 MJ/kg (44.0 kJ/mol from memory).
    double released = 0;
    const Composition gain = gas.volatile_burning();
    for (std::size_t s = 0; s < species_count; ++s)
        released -= gain[s] * gas.species_enthalpy(static_cast<Species>(s), 298.15);
    CHECK(released == near(16e6 - gain[h2o] * 2.442e6, 1e-4));
}

TEST_CASE("heat over the ground state splits into sensible, latent and unburnt") {
    const Composition y{0.68, 0.09, 0.10, 0.09, 0.01, 0.03};
    const ExcessHeat heat = gas.excess_heat(y, 900, 298.15);
    CHECK(heat.unburnt == near(gas.higher_heating_value(y), 1e-9));
    CHECK(heat.latent == near(0.09 * 2.442e6, 1e-3));
    // At 5 degC water takes 2.489 MJ/kg to boil off (steam tables, from memory).
    CHECK(gas.excess_heat(y, 900, 278.15).latent == near(0.09 * 2.489e6, 1e-3));
    const Mixture mixture = gas.mixture(y);
    CHECK(heat.sensible == near(mixture.enthalpy(900) - mixture.enthalpy(298.15), 1e-12));
    CHECK(heat.sensible + heat.latent + heat.unburnt ==
          near(gas.enthalpy_over_ground(y, 900, 298.15), 1e-12));
    // The ground itself has none.
    CHECK(std::abs(gas.enthalpy_over_ground({0.7, 0.2, 0.1, 0, 0, 0}, 280, 280)) < 1e-6);
}

TEST_CASE("burning moves heat from unburnt to the rest and loses none, at any ground temperature") {
    Composition before = dry_air();
    for (double& m : before) m *= 10;
    before[volatiles] = 1;
    before[co] = 0.2;
    Composition after = before;
    const Composition v = gas.volatile_burning(), c = gas.co_burning();
    for (std::size_t s = 0; s < species_count; ++s) after[s] += v[s] + 0.2 * c[s];
    for (double ground : {263.15, 298.15, 308.15}) {
        // The gas keeps its enthalpy as it burns; the ground it is measured from must not move.
        const double total = sum(before);
        const Mixture mixed = gas.mixture(fractions(before)), burnt = gas.mixture(fractions(after));
        const double hot = burnt.temperature(mixed.enthalpy(400), 1500);
        CHECK(hot > 1500);
        CHECK(total * gas.enthalpy_over_ground(fractions(before), 400, ground) ==
              near(total * gas.enthalpy_over_ground(fractions(after), hot, ground), 1e-9));
        CHECK(std::abs(gas.excess_heat(fractions(after), hot, ground).unburnt) < 1e-3);
    }
}

TEST_CASE("wood needs the air and makes the flue gas of the stoichiometric table") {
    // Carbon 50, hydrogen 6, oxygen 44 %, air ratio 2: computed by stoichiometry, 0.5 %.
    const WoodAnalysis wood{.carbon = 0.50, .hydrogen = 0.06, .oxygen = 0.44};
    const WoodGas flue = wood_gas(wood, 0.25, 2);
    CHECK(flue.model.oxygen_demand() / dry_air()[o2] == near(5.91, 0.006));
    double moles[5], dry = 0;
    for (std::size_t s = 0; s < 5; ++s) moles[s] = flue.mass[s] / molar_mass[s];
    for (Species s : {n2, o2, co2, co}) dry += moles[s];
    CHECK(moles[co2] / dry == near(0.1023, 5e-3));
    CHECK(moles[o2] / dry == near(0.1050, 5e-3));
    CHECK(moles[h2o] / (dry + moles[h2o]) == near(0.0968, 5e-3));
}

TEST_CASE("wood's flue gas has the computed heat capacity and flame temperature") {
    // Both tables' air holds 5 g of vapour per kg.
    const double air = 5.82;  // [kg/kg] at air ratio 1
    // Check 16: hardwood at 15 % moisture, air ratio 2: 1047, 1204, 1292 at 20, 600, 1000 degC; 1
    // %.
    const double vapour = 0.005 * air * 2;
    const Mixture mild = gas.mixture(fractions(wood_gas(hardwood, 0.15 / 0.85 + vapour, 2).mass));
    CHECK(mild.heat_capacity(293.15) == near(1047, 0.01));
    CHECK(mild.heat_capacity(873.15) == near(1204, 0.01));
    CHECK(mild.heat_capacity(1273.15) == near(1292, 0.01));
    // Check 17: at 20 % moisture, all heat in the gas: 1444, 1172, 857 degC; 10 K.
    const double expected[][2] = {{1.5, 1444}, {2, 1172}, {3, 857}};
    for (const auto& [ratio, celsius] : expected) {
        const WoodGas flue = wood_gas(hardwood, 0.25 + 0.005 * air * ratio, ratio);

        const Mixture burnt = flue.model.mixture(fractions(flue.mass));
        // The wood's water enters liquid, the air's as vapour: only what is in the flue gas beyond
        // the latter costs its condensation, 2.442 MJ/kg.
        const double boiled = flue.mass[h2o] - 0.005 * air * ratio;
        const double heat = wood_heating_value(hardwood) - boiled * 2.442e6;
        const double t = burnt.temperature(burnt.enthalpy(298.15) + heat / sum(flue.mass), 1000);
        CHECK(t - 273.15 == doctest::Approx(celsius).epsilon(10.0 / celsius));
    }
}

TEST_CASE("volatiles that are no gas are refused") {
    CHECK_THROWS_AS(GasModel({0.5, 0.1, 0.5, 16e6}), InputError);
    CHECK_THROWS_AS(GasModel({1.2, -0.2, 0.0, 16e6}), InputError);
    CHECK_THROWS_AS(GasModel({0.4, 0.1, 0.5, 0}), InputError);
}
