#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "models/components/stove_builder.h"
#include "models/fittings/kind.h"

namespace drawwell {

/// Share [-] of the ring between two radii [m] that lies under a disc off the centre.
double share_under(double inner, double outer, double disc_radius, double off_centre);

/// What passes between plate and a bottom [W/(m2 K)] that is flat, ordinary or dented: the gap of
/// air as thick as the surfaces are rough. A tenth of a millimetre and twice that give 420 and 220
/// at 230 degC, half a millimetre and more under 100. Our choice of three, a factor of 1.5 either
/// way.
double gap_conductance(std::string_view bottom);

/// A round body, or a ring of one, that lies on the plate.
struct Lying {
    std::string name;
    SolidId body{};
    double inner = 0, outer = 0;  // [m] radii round its own middle
    double off_centre = 0;        // [m] of that from the plate's
    double conductance = 0;       // [W/(m2 K)] from plate to body
    Steps there{1.0};             // [-] 0 while it is off the plate
};

/// Joins a body to each of the plate's rings under it. What it covers loses nothing to the room
/// while it is there. Rings in a hole whose place a pot's bottom takes are left out.
std::vector<PlateContact> lay_on_plate(StoveBuilder& builder, const Lying& lying);

/// Heat [W] that bodies take from the plate just now.
double heat_by_contact(std::span<const PlateContact> contacts, std::span<const SolidId> rings,
                       const HeatBalance& balance);

/// Discs about a common centre that may be turned about it.
struct Disc {
    double radius = 0, off_centre = 0;  // [m]
};
/// Whether they fit beside each other.
bool fit_side_by_side(const std::vector<Disc>& discs);

/// What cannot be about a disc that lies on the plate as the fitting of that table (`pot.kettle`):
/// no plate, over its edge, no room beside what the file names before it and is there at the same
/// time. Only distances from the plate's centre are known, so things are turned about it until they
/// fit.
std::vector<FittingProblem> lying_problems(const Stove& stove, const std::string& table,
                                           const Disc& disc, const Steps& there);

/// There (1) or off (0) over time, by the times [s] at which it is put on and taken off, in turns;
/// it stands there from lighting on if it is not put on first.
Steps on_and_off(const std::vector<double>& put_on, const std::vector<double>& taken_off);
/// Whether they take turns.
bool take_turns(const std::vector<double>& put_on, const std::vector<double>& taken_off);

}  // namespace drawwell
