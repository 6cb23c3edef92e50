#pragma once

#include <memory>

#include "models/fire/bed_constants.h"
#include "models/fire/solid_fuel.h"
#include "models/fire/wood_fire.h"
#include "solver/table.h"

namespace drawwell {

/// Wood burned at a prescribed rate: a burn-rate or weight-loss table in place of the bed.
/// States: dry wood burned [kg, negative of a store], char waiting for oxygen [kg].
class BurnRateFire final : public WoodFire {
  public:
    struct Shape {
        Table dry_rate;                 // [kg/s] of dry ash-free wood against time [s]
        double moisture_dry_basis = 0;  // [-]
        SolidFuel fuel;
        BedConstants constants;
        double width = 0;  // [m] of the fire
    };

    BurnRateFire(Shape shape, std::shared_ptr<const GasModel> model);

    std::size_t state_count() const override { return 2; }
    std::span<const double> state_scale() const override { return scale_; }
    std::size_t site_count() const override { return 1; }
    void set(const View&, std::span<double>) const override {}
    Emission emission(std::size_t site, const View& view, const Arriving& air) const override;
    void rates(const View& view, std::span<const Arriving> arrived, std::span<const GasCell> gas,
               std::span<double> rate, std::span<double> solid_heat) const override;
    double enthalpy(std::span<const double> fuel) const override;
    std::array<double, 4> elements(std::span<const double> fuel) const override;
    void rate_slopes(const View& view, std::span<const Arriving> arrived,
                     std::span<double> slope) const override;
    double heating_value(std::span<const double> fuel) const override;
    double dry_wood(std::span<const double> fuel) const override { return -fuel[0]; }
    double char_left(std::span<const double> fuel) const override { return fuel[1]; }
    double pyrolysis(double time, std::span<const double>) const override {
        return shape_.dry_rate(time);
    }

  private:
    double char_rate(const View& view, const Arriving& air) const;

    Shape shape_;
    std::shared_ptr<const GasModel> model_;
    std::array<double, 2> scale_{1, 0.1};
};

/// Plain heat [W] given to the gas. State: heat given so far [J].
class HeatSource final : public WoodFire {
  public:
    explicit HeatSource(Table power);

    std::size_t state_count() const override { return 1; }
    std::span<const double> state_scale() const override { return scale_; }
    std::size_t site_count() const override { return 1; }
    void set(const View&, std::span<double>) const override {}
    Emission emission(std::size_t site, const View& view, const Arriving& air) const override;
    void rates(const View& view, std::span<const Arriving> arrived, std::span<const GasCell> gas,
               std::span<double> rate, std::span<double> solid_heat) const override;
    double enthalpy(std::span<const double> fuel) const override { return -fuel[0]; }
    std::array<double, 4> elements(std::span<const double>) const override { return {}; }
    void rate_slopes(const View&, std::span<const Arriving>,
                     std::span<double> slope) const override {
        slope[0] = 0;
    }
    double heating_value(std::span<const double> fuel) const override { return -fuel[0]; }
    double dry_wood(std::span<const double>) const override { return 0; }
    double char_left(std::span<const double>) const override { return 0; }
    double pyrolysis(double, std::span<const double>) const override { return 0; }
    double plain_heat(double time) const override { return power_(time); }

  private:
    Table power_;
    std::array<double, 1> scale_{1e6};
};

}  // namespace drawwell
