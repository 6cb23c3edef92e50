#pragma once

#include <cmath>
#include <memory>
#include <vector>

#include "models/fire/fuel_bed.h"
#include "tests/models/plain_stove.h"

namespace drawwell::tests {

/// Temperature [K] of walls that fill the view and from which plain wood takes that flux [W/m2].
inline double walls_giving(double flux) {
    return std::pow(flux / (plain_bed().wood_absorptivity.value * constants::stefan_boltzmann),
                    0.25);
}

inline Arriving air(double flow) {
    Arriving out;
    out.mass_flow = flow;
    for (std::size_t i = 0; i < species_count; ++i) out.species[i] = flow * dry_air()[i];
    out.gas.mass_fraction = dry_air();
    return out;
}

inline FuelLot sticks() {
    return {.name = "sticks",
            .dry_mass = 0.6,
            .moisture_dry_basis = 0.2,
            .lit_area = 0.05,
            .section = 0.004,
            .foot_share = 0.25};
}

/// A bed with no flame between wood and walls, so that the flux it takes is known.
inline FuelBed::Shape shape_of(std::vector<FuelLot> lots) {
    FuelBed::Shape shape;
    shape.lots = std::move(lots);
    shape.sites.push_back({.view = {}, .beam_length = 0.1, .width = 0.12});
    shape.sites[0].view.add(0, 1);
    shape.constants = plain_bed();
    shape.constants.flame_absorption.value = 0;
    shape.fuel = plain_fuel();
    shape.feed_area = 0.0125;
    shape.free_area = 0;
    return shape;
}

struct Bed {
    explicit Bed(FuelBed::Shape shape)
        : model(std::make_shared<const GasModel>(volatile_gas(shape.fuel))),
          fire(std::move(shape), model) {}

    Fire::View view() {
        fuel.resize(fire.state_count());  // tests speak of lots and leave out the ash, the last
        return {.time = time, .fuel = fuel, .solid_temperature = walls};
    }
    /// Rates of change of the states; the heat walls take is left in `wall_heat`.
    std::vector<double> rates() {
        std::vector<double> rate(fire.state_count());
        wall_heat.assign(walls.size(), 0);
        const std::vector<Arriving> arrived(fire.site_count(), arriving);
        fire.rates(view(), arrived, {}, rate, wall_heat);
        return rate;
    }
    /// Rate [kg/s] that the first lot is on its way to.
    double aim() { return fuel[0] + 45 * rates()[0]; }  // tau 45 s

    std::shared_ptr<const GasModel> model;
    FuelBed fire;
    double time = 1000;
    std::vector<double> fuel{0.0003, 0.6, 0, 0};
    std::vector<double> walls{walls_giving(20e3)}, wall_heat;
    Arriving arriving = air(0.05);  // plenty
};

}  // namespace drawwell::tests
