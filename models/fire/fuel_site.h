#pragma once

#include <span>
#include <utility>
#include <vector>

#include "models/fire/bed_constants.h"

namespace drawwell {

/// What a fire sees: faces, each with the share of the fire's view that it fills (the view factor
/// from the fire to it). What no face fills is open: into the room or outdoors. Nothing comes back
/// from there, and the embers' share of it is left with the gas.
class FireView {
  public:
    using Face = std::pair<std::size_t, double>;  // solid, view factor [-]

    /// A face takes that share [-] of what is still open; a face added twice fills both shares.
    /// SolverError: the share is negative, or more than is open.
    void add(std::size_t solid, double view_factor);
    const std::vector<Face>& faces() const { return faces_; }
    double open() const { return open_; }  // [-]

  private:
    std::vector<Face> faces_;
    double open_ = 1;
};

/// A place where wood burns, and what it sees there.
struct FuelSite {
    FireView view;
    double beam_length = 0;  // [m] of the flame
    double width = 0;        // [m] of the fire
};

/// Black flux [W/m2] of the faces seen.
double wall_flux(const FireView& view, std::span<const double> temperature);

/// Flux [W/m2] that wood takes, by where it comes from.
struct SeenFlux {
    double walls = 0;  // [W/m2]
    double fire = 0;   // [W/m2] flames and embers
    double all() const { return walls + fire; }
};

/// What wood at a site takes, with so many embers [kg] beside it and so much of a flame [-], 0..1.
SeenFlux seen_flux(const FuelSite& site, const BedConstants& bed, double embers, double flame,
                   std::span<const double> temperature);

/// Heat [W] that burning wood draws from the walls through its flame: what they send over what it
/// sends back at its pyrolysis temperature, on that area [m2]; never negative.
double heat_from_walls(const FuelSite& site, const BedConstants& bed, double area, double flame,
                       std::span<const double> temperature);

/// What the walls take of heat that embers radiate all round [-]: their view, less what they send
/// back; none is heated past the flame's temperature.
double glow_share(const FireView& view, const BedConstants& bed,
                  std::span<const double> temperature);

/// Adds to each wall seen its part [W] of the embers' `glow` that walls take and of what is `drawn`
/// from them, both in W: glow as in `glow_share`, what is drawn by what each wall sends.
void share_out(const FireView& view, const BedConstants& bed, double glow, double drawn,
               std::span<const double> temperature, std::span<double> solid_heat);

}  // namespace drawwell
