#pragma once

#include "models/stove.h"

namespace drawwell {

/// The room as one lump that the stove alone heats: C dT/dt = heat - loss (T - outdoors), from
/// site.room on. No other heating, no sun, no people; the air that the stove draws counts as part
/// of site.room_loss. It does not act back on the stove, which goes on in a room at site.room.
class HeatedRoom {
  public:
    /// Stays at site.room for ever where the site gives no volume.
    explicit HeatedRoom(const Site& site);

    /// Room temperature [K] at a time [s] no earlier than the last, when the stove gives `heat`
    /// [W]; exact for the means of heat and outdoor temperature since then, by straight lines.
    double at(double time, double heat);

    /// [J/K] of the air and of what goes along with it; 0: no volume given.
    double heat_capacity() const { return capacity_; }

  private:
    Table outdoor_;
    double loss_, capacity_ = 0;  // [W/K], [J/K]
    double temperature_;          // [K]
    double time_ = 0, heat_ = 0;  // of the last call
    bool begun_ = false;
};

}  // namespace drawwell
