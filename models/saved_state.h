#pragma once

#include <array>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "models/fire/fuel_bed.h"
#include "solver/network.h"

namespace drawwell {

struct BuiltStove;

/// A lot that still holds wood or embers when a burn ends.
struct LeftLot {
    FuelLot lot;        // its site is told by `place`
    std::string place;  // the junction where it lies: `hearth`, `riser foot`, `flue outlet`
    std::array<double, FuelBed::states_per_lot> state{};  // as in the bed
};

/// The state in which a burn ends, told by the names of the stove's parts, so that another burn of
/// the same stove can begin in it. Temperatures and not enthalpies: a material may change
/// meanwhile.
struct SavedState {
    double time = 0;                                          // [s] that the burn had run
    std::vector<std::pair<std::string, double>> temperature;  // [K] of every solid
    /// [kg/s] by each inlet, positive inward; its direction is history.
    std::vector<std::pair<std::string, double>> inlet_flow;
    /// Embers of a burn-rate table are a lot without wood; plain heat leaves nothing.
    std::vector<LeftLot> left;

    double wood_left() const;    // [kg] dry
    double embers_left() const;  // [kg] of char
    /// Whether enough burns to light what is put in: more than a few grams of embers, or wood in
    /// flames.
    bool still_burns() const;
};

/// The state of a stove after that time [s]; `inlet_flow` in the order of its inlets.
SavedState saved_state(const BuiltStove& built, double time, std::span<const double> state,
                       std::span<const double> inlet_flow);

/// Gives every solid that is not held the temperature it had. InputError: the solids are not those
/// of the saved state, hence it is another stove or another `burn.refine`.
void warm_walls(std::vector<Solid>& solids, const SavedState& from);

/// The flows [kg/s] of a network's inlets, in their order; one that was not there stands still.
std::vector<double> inlet_flows(const Network& network, const SavedState& from);

}  // namespace drawwell
