#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "solver/gas_state.h"

namespace drawwell {

/// Flow [kg/s] at which still gas is taken to creep, so that its state and heat stay defined.
inline constexpr double creeping_flow = 1e-9;

/// What a stretch of gas did between its two ends, as one cell of a passage.
struct GasCell {
    double inlet_temperature = 0;   // [K] where the gas enters the cell
    double mean_temperature = 0;    // [K] that the walls exchange heat with
    double outlet_temperature = 0;  // [K]
    double length = 0;              // [m] along the gas
    double velocity = 0;            // [m/s] at the mean temperature, signed
    double pass_through = 0;        // [-] d outlet / d inlet temperature
    double mean_share = 0;          // [-] d mean / d inlet temperature
    double capacity_flow = 0;       // [W/K] mass flow times heat capacity, positive
    double oxygen = 0;              // [-] mass fraction leaving
    double burnt = 0;               // [W] heat set free in the cell (higher heating value)
};

/// A wall that a gas cell touches: heat to it is conductance * (mean gas - wall) + given [W].
struct Touch {
    std::size_t gas_cell = 0;  // within the passage
    std::size_t solid = 0;     // index of the solid cell
};

/// What a passage is given to work out a crossing.
struct PassageInput {
    double mass_flow = 0;  // [kg/s] positive from its `from` end to its `to` end
    GasState gas;          // at the end where the gas enters
    std::span<const double> solid_temperature;  // [K] of every solid cell
    std::span<const double> settings;           // what is set from outside: free area, damper
};

/// What comes of it.
struct Crossing {
    GasState outlet;      // at the end where the gas leaves
    double buoyancy = 0;  // [Pa] gained from `from` to `to` by being lighter than outdoor air
    double loss = 0;      // [Pa] lost from `from` to `to`: friction, bends, acceleration; signed
};

/// What a crossing leaves behind, cell by cell and touch by touch, for heat and for reports.
struct PassageRecord {
    std::span<GasCell> cells;
    std::span<double> conductance;  // [W/K] of each touch
    std::span<double> given;        // [W] to each touch besides: what a flame radiates
};

/// How gas goes through a passage; the one call that is dispatched at run time.
class PassageLaw {
  public:
    PassageLaw() = default;
    PassageLaw(const PassageLaw&) = delete;
    PassageLaw& operator=(const PassageLaw&) = delete;
    virtual ~PassageLaw() = default;

    virtual std::size_t cell_count() const = 0;
    /// Walls touched, in the order of the record's touches: by gas cell.
    virtual const std::vector<Touch>& touches() const = 0;
    /// Pure: fills the record.
    virtual Crossing cross(const PassageInput& input, PassageRecord record) const = 0;
};

}  // namespace drawwell
