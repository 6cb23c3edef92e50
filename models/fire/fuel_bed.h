#pragma once

#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "models/fire/bed_constants.h"
#include "models/fire/solid_fuel.h"
#include "models/fire/wood_fire.h"
#include "models/gas/gas_model.h"

namespace drawwell {

/// Wood put in together: one load, or the kindling.
struct FuelLot {
    std::string name;
    std::size_t site = 0;
    double dry_mass = 0;            // [kg] without ash
    double moisture_dry_basis = 0;  // [-]
    double lit_area = 0;            // [m2] while the fire has enough of the pieces
    double section = 0;             // [m2] taken from the feed likewise
    double foot_share = 1;          // [-] of a whole piece, its foot, that stands in the fire
    bool lit_by_hand = false;       // at the start, for a minute and a half
};

/// A place where wood burns, and what it sees there.
struct FuelSite {
    std::vector<std::pair<std::size_t, double>> walls;  // solid and share of the view
    double beam_length = 0;                             // [m] of the flame
    double width = 0;                                   // [m] of the fire
};

/// The fuel bed of loads: three states each, rate P of dry wood lost [kg/s], dry wood [kg], char
/// [kg]. Water leaves with the wood it wets.
///
///   dP/dt = (P* - P)/tau,  P* = A m0 (q + q_flame)/q0 / (1 + u 2.6/3.5), bounded
///   d(wood)/dt = -P,  d(char)/dt = Y P - R
///   R = A_c rho Y_O2/(f (1/k_c + 1/h_m)), saturating at the oxygen that arrives
///
/// with q the flux from walls, flame and embers on the lit area A, the sides of the pieces' feet,
/// and u the moisture. Pieces sink as they burn. Pyrolysis follows heat alone; heat release follows
/// the air. The rate is a state so that the course of a burn is unique though steady fires need not
/// be.
class FuelBed final : public WoodFire {
  public:
    struct Shape {
        std::vector<FuelLot> lots;
        std::vector<FuelSite> sites;
        BedConstants constants;
        SolidFuel fuel;
        double feed_area = 0;                  // [m2]
        std::optional<std::size_t> free_area;  // setting that the wood in the feed reduces
    };

    FuelBed(Shape shape, std::shared_ptr<const GasModel> model);

    /// Puts a lot in. False, and nothing done, where the feed has no room for it.
    bool put_in(std::size_t lot, std::span<double> fuel) const;
    const std::vector<FuelLot>& lots() const { return shape_.lots; }

    std::size_t state_count() const override { return 3 * shape_.lots.size(); }
    std::span<const double> state_scale() const override { return scale_; }
    std::size_t site_count() const override { return shape_.sites.size(); }
    void set(const View& view, std::span<double> settings) const override;
    Emission emission(std::size_t site, const View& view, const Arriving& air) const override;
    void rates(const View& view, std::span<const Arriving> arrived, std::span<const GasCell> gas,
               std::span<double> rate, std::span<double> solid_heat) const override;
    double enthalpy(std::span<const double> fuel) const override;
    std::array<double, 4> elements(std::span<const double> fuel) const override;
    void rate_slopes(const View& view, std::span<const Arriving> arrived,
                     std::span<double> slope) const override;

    double heating_value(std::span<const double> fuel) const override;
    double dry_wood(std::span<const double> fuel) const override;
    double char_left(std::span<const double> fuel) const override;
    double pyrolysis(double time, std::span<const double> fuel) const override;

  private:
    double pyrolysis_of(std::size_t lot, std::span<const double> fuel) const;
    double share_left(std::size_t lot, std::span<const double> fuel) const;
    /// What is left at the foot [-]: pieces sink as they burn, so it stays whole until the last of
    /// them has come down into the fire.
    double foot_left(std::size_t lot, std::span<const double> fuel) const;
    double lit_area(std::size_t lot, std::span<const double> fuel) const;
    /// How far there is a flame or an ember bed to light new wood [-], 0..1. One fire lights any
    /// other: whoever tends the stove carries it over.
    double flame_share(const View& view) const;
    /// Black flux [W/m2] of the walls seen.
    double wall_flux(const FuelSite& site, std::span<const double> temperature) const;
    /// Flux [W/m2] that the wood at a site takes from walls, flame and embers.
    double seen_flux(std::size_t site, const View& view) const;
    double char_at(std::size_t site, std::span<const double> fuel) const;
    /// How far air feeds the flames at a site [-], 0 smothered to 1; our choice of 1 - exp(-3
    /// lambda).
    double oxygen_share(std::size_t site, const View& view, const Arriving& air) const;
    /// Heat [W] that embers burning at that rate radiate to the walls round them, if all were as
    /// hot as this one [K]; none is heated past the flame's temperature.
    double glow_to_wall(double char_burning, double wall) const;
    double glow_to_walls(std::size_t site, double char_burning, const View& view) const;
    /// Heat [W] that walls hotter than burning wood radiate into what it gives off: no more than
    /// makes that as hot as the hottest of them.
    double heat_from_walls(std::size_t site, const View& view) const;
    /// Rate [kg/s] at which so much char [kg] would burn if oxygen did not run out.
    double char_wanted(double char_mass, const Arriving& air) const;
    double oxygen_per_char() const;  // [-]
    double char_rate(std::size_t site, const View& view, const Arriving& air) const;

    Shape shape_;
    std::shared_ptr<const GasModel> model_;
    std::vector<double> scale_;
};

}  // namespace drawwell
