#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "models/fire/bed_constants.h"
#include "models/fire/fuel_lot.h"
#include "models/fire/fuel_site.h"
#include "models/fire/solid_fuel.h"
#include "models/fire/wood_fire.h"
#include "models/gas/gas_model.h"

namespace drawwell {

/// The fuel bed of loads: four states each, rate P of dry wood lost [kg/s], dry wood M [kg], char
/// [kg], warmth W [J]; and one more, the ash of all of them [kg]. Water leaves with the wood it
/// wets.
///
///   dP/dt = (P* - P)/tau,  P* = A m0 (q + q_flame)/q0 / (1 + u w), bounded
///   dM/dt = -P,  d(char)/dt = Y P - R
///   R = A_c rho Y_O2/(f (1/k_c + 1/h_m)), saturating at the oxygen that arrives
///   dW/dt = A (1 - P/P*) (q_walls + q_fire) - W P/M
///
/// with q the flux from walls, flame and embers on the lit area A, the sides of the pieces' feet,
/// u the moisture and w the heat it takes beside wood's. Pyrolysis follows heat alone; heat release
/// follows the air. The rate is a state so that the course of a burn is unique though steady fires
/// need not be. A load that has just gone in keeps what it takes, until it burns as fast as that
/// heat lets it; the warmth leaves with its vapours. Walls pay for what they send; flames and
/// embers out of what the embers set free there, since flames give their heat further on.
class FuelBed final : public WoodFire {
  public:
    struct Shape {
        std::vector<FuelLot> lots;
        std::vector<FuelSite> sites;
        BedConstants constants;
        SolidFuel fuel;
        double feed_area = 0;                  // [m2]
        std::optional<std::size_t> free_area;  // setting that the wood in the feed reduces
        std::optional<std::size_t> ash_depth;  // setting [m] that the ash raises
        double first_ash_depth = 0;            // [m]
        double ash_floor = 0;                  // [m2] on which it comes to lie
    };
    static constexpr std::size_t states_per_lot = 4;

    FuelBed(Shape shape, std::shared_ptr<const GasModel> model);

    /// Puts a lot in. False, and nothing done, where the feed has no room for it.
    bool put_in(std::size_t lot, std::span<double> fuel) const;
    const std::vector<FuelLot>& lots() const { return shape_.lots; }
    /// What is left of a lot [kg]: dry wood, and the embers it left.
    double wood_of(std::size_t lot, std::span<const double> fuel) const {
        return fuel[states_per_lot * lot + 1];
    }
    double char_of(std::size_t lot, std::span<const double> fuel) const;
    /// Ash [kg] of the wood lost so far, that in embers included.
    double ash(std::span<const double> fuel) const { return fuel[ash_state()]; }
    /// How deep the ash lies under the fire [m].
    double ash_depth(std::span<const double> fuel) const;

    std::size_t state_count() const override { return ash_state() + 1; }
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
    std::size_t ash_state() const { return states_per_lot * shape_.lots.size(); }
    double rate_of(std::size_t lot, std::span<const double> fuel) const {
        return fuel[states_per_lot * lot];
    }
    double warmth_of(std::size_t lot, std::span<const double> fuel) const {
        return fuel[states_per_lot * lot + 3];
    }
    double losing(std::size_t lot, std::span<const double> fuel) const {
        return shape_.lots[lot].losing(rate_of(lot, fuel), wood_of(lot, fuel));
    }
    double taken(std::span<const double> fuel) const;  // [m2] of the feed, by all lots
    /// How far there is a flame or an ember bed to light new wood [-], 0..1. One fire lights any
    /// other: whoever tends the stove carries it over.
    double flame_share(const View& view) const;
    double char_at(std::size_t site, std::span<const double> fuel) const;
    /// How far air feeds the flames at a site [-], 0 smothered to 1; our choice of 1 - exp(-3
    /// lambda).
    double oxygen_share(std::size_t site, const View& view, const Arriving& air) const;

    /// A site at one instant.
    struct Burning {
        SeenFlux flux;
        double flame = 0, air = 0, lit = 0;      // [-] shares
        double char_rate = 0;                    // [kg/s]
        double glow = 0;                         // [W] from embers to the walls round them
        double drawn = 0;                        // [W] from the walls, straight to the vapours
        double from_walls = 0, from_embers = 0;  // [W] that wood warming up keeps
        double warming_area = 0;                 // [m2] that is still cold
    };
    /// Heat [W] that walls can give the vapours: no more than makes them as hot as the hottest
    /// wall.
    double most_drawn(std::size_t site, const View& view) const;
    Burning burning_at(std::size_t site, const View& view, const Arriving& air) const;
    /// Rate [kg/s] that a lot is on its way to.
    double aim(std::size_t lot, const Burning& at, std::span<const double> fuel) const;
    /// How far a lot still takes up heat rather than burns by it [-].
    double cold_share(std::size_t lot, const Burning& at, std::span<const double> fuel) const;

    Shape shape_;
    std::shared_ptr<const GasModel> model_;
    std::vector<Vapours> vapours_;  // of each lot
    std::vector<double> scale_;
};

}  // namespace drawwell
