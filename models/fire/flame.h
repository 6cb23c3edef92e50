#pragma once

#include "models/gas/gas_model.h"
#include "models/laws/range.h"
#include "solver/gas_state.h"

namespace drawwell {

/// Length [m] of a flame of `heat_release` [W] over a fire `diameter` [m] wide: Heskestad,
/// 0.235 Q^0.4 - 1.02 D with Q in kW; no shorter than 50 mm (our choice).
double flame_length(double heat_release, double diameter);
/// Over Q^0.4 / D in kW and m: 7 to 700 in Heskestad's own comparison, from memory. Outside, by the
/// factor of 1.7 that a duct makes anyway.
inline constexpr Range flame_length_range{
    "flame length", "heat^0.4 over width", "kW^0.4/m", 7, 700, 0.7};

/// Oxygen [kg/kg] that burning the gas's volatiles and carbon monoxide would take.
double oxygen_demand(const Composition& mass_fraction, const GasModel& model);

/// Where a flame goes out: past its tip, in gas that has mixed down below this.
struct FlameLimits {
    double freezing_temperature = 873.15;  // [K]
};

/// Burns on while the gas goes `length` [m] further at `temperature` [K]; changes composition and
/// flame, not enthalpy. Returns the heat [J/kg of gas] set free (higher heating value).
///
/// Mixing decides: the unburnt share phi falls as dphi/ds = -phi (phi + lambda - 1)/(lambda l) with
/// l a third of the flame's length and lambda the air ratio where it began; the closed form is
/// used. With lambda below one the oxygen runs out and the rest stays fuel.
double burn_on(GasState& gas, double length, double temperature, const GasModel& model,
               const FlameLimits& limits);

}  // namespace drawwell
