#pragma once

#include <array>

#include "models/fire/wood.h"
#include "models/gas/gas_model.h"
#include "solver/fire.h"

namespace drawwell {

/// Dry, ash-free wood as it is split by heat: char (carbon) and volatiles that close its elements
/// and its heating value.
struct SolidFuel {
    Wood wood;
    double char_yield = 0;        // [-] of dry ash-free mass
    double temperature = 293.15;  // [K] of the wood that is put in
};

/// Heating value of carbon [J/kg]: heat of formation of carbon dioxide over carbon's mass.
double carbon_heating_value();

/// Temperature [K] at which wood gives off its vapours: 350 degC, from memory.
inline constexpr double pyrolysis_temperature = 623.15;

/// The volatiles of that fuel. They leave the wood hot; the heat that takes comes out of what the
/// wood would give, so that the fire books close whether or not they burn later. InputError: the
/// wood has less carbon than the char takes.
VolatileGas volatile_gas(const SolidFuel& fuel);

/// Enthalpy [J/kg] of liquid water in the sense of GasState::enthalpy.
double liquid_water_enthalpy(const GasModel& model, double temperature);

/// Enthalpy [J] and species that a kilogram of dry wood with its water gives off, char kept back:
/// volatiles at the pyrolysis temperature, water that the gas has still to boil off.
struct Vapours {
    Composition species{};  // [kg] per kilogram of dry wood
    double enthalpy = 0;    // [J] per kilogram of dry wood
};
Vapours vapours(const SolidFuel& fuel, double moisture_dry_basis, const GasModel& model);

/// Oxygen and heat decide how fast char burns: what it would take of the arriving oxygen
/// [kg/s], saturating smoothly at all of it. Char rate [kg/s].
double limited_by_oxygen(double wanted, double oxygen, double oxygen_per_char);

/// How much of a change in what is wanted comes through [-]: the slope of limited_by_oxygen.
double oxygen_limit_slope(double wanted, double oxygen, double oxygen_per_char);

/// What a fire leaves in the gas: its species added, and the flame begun anew there.
Flame flame_of(const Arriving& air, const Composition& added, double width, double length_factor,
               double heat_of_char, const GasModel& model);

/// Carbon, hydrogen, oxygen, nitrogen [kg] in dry wood with its water, and in char.
std::array<double, 4> elements_of_wood(const SolidFuel& fuel, double moisture_dry_basis);

}  // namespace drawwell
