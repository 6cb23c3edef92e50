#pragma once

#include <array>

#include "models/gas/mixture.h"
#include "models/gas/transport.h"
#include "models/gas/volatile_gas.h"
#include "solver/gas_state.h"

namespace drawwell {

/// Dry air [-]: 20.95 % oxygen by volume, the rest nitrogen, which stands for nitrogen with the
/// argon that comes with it (28.16 g/mol): so air keeps its density, heat capacity and oxygen by
/// mass.
Composition dry_air();

/// Enthalpy over the ground state, split by what could still be done with it [J/kg].
struct ExcessHeat {
    double sensible = 0;  // cooling to the ground temperature, all water staying vapour
    double latent = 0;    // condensing the water at the ground temperature
    double unburnt = 0;   // burning the rest at the ground temperature, to liquid water
};

/// The flue gas of wood: species properties, reactions, heats.
/// Sources: NASA polynomials of the GRI-Mech 3.0 set (read in agreeing public listings), the
/// later NASA fit for nitrogen. Volatiles carry formaldehyde's heat capacity (our choice: the same
/// three elements in nearly the proportions of wood volatiles) and close their heating value.
class GasModel {
  public:
    /// InputError: fractions outside 0..1 or not summing to one, heating value not positive.
    explicit GasModel(const VolatileGas& volatile_gas);

    const VolatileGas& volatile_gas() const { return volatile_gas_; }

    Mixture mixture(const Composition& mass_fraction) const;
    double species_enthalpy(Species species, double temperature) const;  // [J/kg] as Mixture

    double oxygen_demand() const;  // [kg/kg] oxygen per volatiles
    /// What burning a kilogram of volatiles adds to each species [kg/kg]; sums to zero.
    Composition volatile_burning() const;
    /// What burning a kilogram of carbon monoxide adds to each species [kg/kg]; sums to zero.
    Composition co_burning() const;
    /// What burning a kilogram of carbon at the ember adds to each species [kg/kg], oxygen
    /// negative; sums to one. `share_to_co` [-]: of the carbon, leaving as carbon monoxide, 0..1.
    Composition char_burning(double share_to_co) const;

    /// Mass of carbon, hydrogen, oxygen, nitrogen, in the unit of the argument.
    std::array<double, 4> elements(const Composition& mass) const;
    /// [J] of the unburnt species at 298.15 K to liquid water, for masses in kg; or J/kg for
    /// mass fractions.
    double higher_heating_value(const Composition& mass) const;

    /// Enthalpy [J/kg], or [J] for masses in kg, that the gas would have in the ground state.
    double ground_enthalpy(const Composition& mass, double ground_temperature) const;
    /// Enthalpy [J/kg] over complete products at `ground_temperature` [K]: carbon dioxide, liquid
    /// water, oxygen and nitrogen. Oxygen that burning would take comes from the ground state.
    double enthalpy_over_ground(const Composition& mass_fraction, double temperature,
                                double ground_temperature) const;
    /// The same in parts; they sum to enthalpy_over_ground.
    ExcessHeat excess_heat(const Composition& mass_fraction, double temperature,
                           double ground_temperature) const;

  private:
    /// Enthalpy [J/kg] of what a kilogram of each species becomes in the ground state.
    Composition ground_enthalpies(double ground_temperature) const;

    struct SpeciesData {
        Mixture::Polynomial low, high;  // per kilogram
        double gas_constant;            // [J/(kg K)]
    };
    VolatileGas volatile_gas_;
    double co_heating_value_ = 0;  // [J/kg]
    std::array<SpeciesData, species_count> species_;
};

}  // namespace drawwell
