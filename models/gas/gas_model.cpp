#include "models/gas/gas_model.h"

#include <cmath>
#include <numeric>

#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

// [kg/mol] IUPAC abridged atomic weights, from memory.
constexpr double carbon = 12.011e-3, hydrogen = 1.008e-3, oxygen = 15.999e-3, nitrogen = 14.007e-3;
// Nitrogen of the air counts its argon: 0.934 % of dry air by volume, from memory.
constexpr double argon_share = 0.00934 / (1 - 0.2095);
constexpr double mole_n2 = (1 - argon_share) * 2 * nitrogen + argon_share * 39.95e-3;
constexpr double mole_o2 = 2 * oxygen, mole_co2 = carbon + 2 * oxygen,
                 mole_h2o = 2 * hydrogen + oxygen, mole_co = carbon + oxygen,
                 mole_ch2o = carbon + 2 * hydrogen + oxygen;

// [kg/mol] Volatiles: formaldehyde's, with its heat capacity (our choice).
constexpr Composition molar_mass{mole_n2, mole_o2, mole_co2, mole_h2o, mole_co, mole_ch2o};

constexpr double reference = 298.15;  // [K] of the heats of formation
// Water: heat of condensation at 298.15 K 44.00 kJ/mol and of the liquid 75.3 J/(mol K), from
// memory of JANAF.
constexpr double condensation = 44.00e3 / mole_h2o;  // [J/kg]
constexpr double liquid_capacity = 75.3 / mole_h2o;  // [J/(kg K)]

// a1 to a6 of cp/R = a1 + a2 T + ... and h/(R T) = a1 + a2 T / 2 + ... + a6 / T.
struct Nasa {
    Mixture::Polynomial low, high;
};
// GRI-Mech 3.0 as read in several agreeing public listings. Nitrogen: the later NASA fit
// (low a1 to a5 read, the rest from memory), because the set's own is 0.17 % low at 300 K.
constexpr std::array<Nasa, species_count> nasa{{
    {{3.53100528, -1.23660987e-4, -5.02999433e-7, 2.43530612e-9, -1.40881235e-12, -1046.97628},
     {2.95257637, 1.3969004e-3, -4.92631603e-7, 7.86010195e-11, -4.60755204e-15, -923.948688}},
    {{3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12, -1063.94356},
     {3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14, -1088.45772}},
    {{2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13, -48371.9697},
     {3.85746029, 4.41437026e-3, -2.21481404e-6, 5.23490188e-10, -4.72084164e-14, -48759.166}},
    {{4.19864056, -2.0364341e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12, -30293.7267},
     {3.03399249, 2.17691804e-3, -1.64072518e-7, -9.7041987e-11, 1.68200992e-14, -30004.2971}},
    {{3.57953347, -6.1035368e-4, 1.01681433e-6, 9.07005884e-10, -9.04424499e-13, -14344.086},
     {2.71518561, 2.06252743e-3, -9.98825771e-7, 2.30053008e-10, -2.03647716e-14, -14151.8724}},
    {{4.79372315, -9.90833369e-3, 3.73220008e-5, -3.79285261e-8, 1.31772652e-11, -14308.9567},
     {1.76069008, 9.20000082e-3, -4.42258813e-6, 1.00641212e-9, -8.8385564e-14, -13995.8323}},
}};

/// A monatomic gas: 2.5 everywhere, no heat at 298.15 K.
constexpr Mixture::Polynomial argon{2.5, 0, 0, 0, 0, -2.5 * reference};

Mixture::Polynomial with_argon(const Mixture::Polynomial& pure) {
    Mixture::Polynomial mixed{};
    for (std::size_t k = 0; k < mixed.size(); ++k)
        mixed[k] = (1 - argon_share) * pure[k] + argon_share * argon[k];
    return mixed;
}

Mixture::Polynomial per_kilogram(const Mixture::Polynomial& a, double gas_constant) {
    Mixture::Polynomial c{};
    for (std::size_t k = 0; k < 5; ++k) c[k] = gas_constant * a[k] / static_cast<double>(k + 1);
    c[5] = gas_constant * a[5];
    return c;
}

constexpr double o2_per_carbon = mole_o2 / carbon;                // [kg/kg] to carbon dioxide
constexpr double o2_per_hydrogen = 0.5 * oxygen / hydrogen;       // [kg/kg]
constexpr double water_per_hydrogen = 0.5 * mole_h2o / hydrogen;  // [kg/kg]
constexpr double co2_per_carbon = mole_co2 / carbon;              // [kg/kg]

const VolatileGas& checked(const VolatileGas& gas) {
    const double sum = gas.carbon + gas.hydrogen + gas.oxygen;
    if (!(gas.carbon >= 0 && gas.hydrogen >= 0 && gas.oxygen >= 0 && std::abs(sum - 1) < 1e-6))
        throw InputError(
            "carbon, hydrogen and oxygen of the volatiles must be shares that sum to 1");
    if (!(gas.higher_heating_value > 0))
        throw InputError("the heating value of the volatiles must be above 0");
    return gas;
}

}  // namespace

Composition dry_air() {
    constexpr double moles_o2 = 0.2095;
    constexpr double mass = moles_o2 * mole_o2 + (1 - moles_o2) * mole_n2;
    Composition air{};
    air[o2] = moles_o2 * mole_o2 / mass;
    air[n2] = 1 - air[o2];
    return air;
}

GasModel::GasModel(const VolatileGas& volatile_gas) : volatile_gas_(checked(volatile_gas)) {
    for (std::size_t i = 0; i < species_count; ++i) {
        const double r = constants::molar_gas / molar_mass[i];
        species_[i] = {per_kilogram(nasa[i].low, r), per_kilogram(nasa[i].high, r), r};
    }
    const double r_n2 = species_[n2].gas_constant;
    species_[n2].low = per_kilogram(with_argon(nasa[n2].low), r_n2);
    species_[n2].high = per_kilogram(with_argon(nasa[n2].high), r_n2);
    // The volatiles' heat of formation closes their heating value.
    const Mixture vapour(species_[volatiles].low, species_[volatiles].high, 1);
    const double formation =
        volatile_gas_.higher_heating_value + ground_enthalpies(reference)[volatiles];
    species_[volatiles].low[5] += formation - vapour.enthalpy(reference);
    // The published ranges meet at 1000 K to 1e-6; inverting enthalpy wants them to meet exactly.
    for (auto& s : species_) {
        const Mixture low(s.low, s.low, 1), high(s.high, s.high, 1);
        s.high[5] += low.enthalpy(1000) - high.enthalpy(1000);
    }
    co_heating_value_ = species_enthalpy(co, reference) - ground_enthalpies(reference)[co];
}

Mixture GasModel::mixture(const Composition& mass_fraction) const {
    Mixture::Polynomial low{}, high{};
    double gas_constant = 0;
    for (std::size_t i = 0; i < species_count; ++i) {
        const double y = mass_fraction[i];
        for (std::size_t k = 0; k < 6; ++k) {
            low[k] += y * species_[i].low[k];
            high[k] += y * species_[i].high[k];
        }
        gas_constant += y * species_[i].gas_constant;
    }
    return {low, high, gas_constant};
}

double GasModel::species_enthalpy(Species species, double temperature) const {
    const SpeciesData& s = species_[species];
    return Mixture(s.low, s.high, s.gas_constant).enthalpy(temperature);
}

double GasModel::oxygen_demand() const {
    return volatile_gas_.carbon * o2_per_carbon + volatile_gas_.hydrogen * o2_per_hydrogen -
           volatile_gas_.oxygen;
}

Composition GasModel::volatile_burning() const {
    Composition gain{};
    gain[volatiles] = -1;
    gain[o2] = -oxygen_demand();
    gain[co2] = volatile_gas_.carbon * co2_per_carbon;
    gain[h2o] = volatile_gas_.hydrogen * water_per_hydrogen;
    return gain;
}

Composition GasModel::co_burning() const {
    Composition gain{};
    gain[co] = -1;
    gain[o2] = -oxygen / mole_co;
    gain[co2] = mole_co2 / mole_co;
    return gain;
}

Composition GasModel::char_burning(double share_to_co) const {
    Composition gain{};
    gain[co] = share_to_co * mole_co / carbon;
    gain[co2] = (1 - share_to_co) * co2_per_carbon;
    gain[o2] = -(1 - 0.5 * share_to_co) * o2_per_carbon;
    return gain;
}

std::array<double, 4> GasModel::elements(const Composition& m) const {
    return {
        m[co2] * carbon / mole_co2 + m[co] * carbon / mole_co + m[volatiles] * volatile_gas_.carbon,
        m[h2o] * 2 * hydrogen / mole_h2o + m[volatiles] * volatile_gas_.hydrogen,
        m[o2] + m[co2] * mole_o2 / mole_co2 + m[h2o] * oxygen / mole_h2o +
            m[co] * oxygen / mole_co + m[volatiles] * volatile_gas_.oxygen,
        m[n2]};
}

double GasModel::higher_heating_value(const Composition& mass) const {
    return mass[co] * co_heating_value_ + mass[volatiles] * volatile_gas_.higher_heating_value;
}

Composition GasModel::ground_enthalpies(double t) const {
    Composition h{};
    h[n2] = species_enthalpy(n2, t);
    h[o2] = species_enthalpy(o2, t);
    h[co2] = species_enthalpy(co2, t);
    h[h2o] = species_enthalpy(h2o, reference) - condensation + liquid_capacity * (t - reference);
    h[co] = (mole_co2 * h[co2] - oxygen * h[o2]) / mole_co;
    h[volatiles] = volatile_gas_.carbon * co2_per_carbon * h[co2] +
                   volatile_gas_.hydrogen * water_per_hydrogen * h[h2o] - oxygen_demand() * h[o2];
    return h;
}

double GasModel::enthalpy_over_ground(const Composition& mass_fraction, double temperature,
                                      double ground_temperature) const {
    const ExcessHeat heat = excess_heat(mass_fraction, temperature, ground_temperature);
    return heat.sensible + heat.latent + heat.unburnt;
}

double GasModel::ground_enthalpy(const Composition& mass, double ground_temperature) const {
    const Composition ground = ground_enthalpies(ground_temperature);
    return std::inner_product(mass.begin(), mass.end(), ground.begin(), 0.0);
}

ExcessHeat GasModel::excess_heat(const Composition& y, double temperature,
                                 double ground_temperature) const {
    const Composition ground = ground_enthalpies(ground_temperature);
    const Mixture gas = mixture(y);
    const auto over_ground = [&](Species s) {
        return y[s] * (species_enthalpy(s, ground_temperature) - ground[s]);
    };
    return {.sensible = gas.enthalpy(temperature) - gas.enthalpy(ground_temperature),
            .latent = over_ground(h2o),
            .unburnt = over_ground(co) + over_ground(volatiles)};
}

}  // namespace drawwell
