#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>
#include <memory>

#include "cli/read/read_library.h"
#include "models/fire/fuel_bed.h"
#include "solver/constants.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/burning_rate";

/// Dry wood [g/s] lost by each square metre that burns freely in a flux [kW/m2] from outside.
double per_area(double flux, double moisture_dry_basis) {
    const Library library = read_library();
    FuelBed::Shape shape;
    shape.constants = library.bed;
    shape.constants.flame_absorption.value = 0;  // the flux given is what the wood takes
    shape.fuel = {.wood = library.woods.at("ash"), .char_yield = library.bed.char_yield.value};
    shape.feed_area = 1e9;
    FuelLot lot;
    lot.dry_mass = 10;
    lot.moisture_dry_basis = moisture_dry_basis;
    lot.lit_area = 1;
    shape.lots = {lot};
    shape.sites.push_back({.view = {}, .beam_length = 0.1, .width = 0.12});
    shape.sites[0].view.add(0, 1);
    const double wood_takes = library.bed.wood_absorptivity.value * constants::stefan_boltzmann;
    const double delay = library.bed.response_time.value;
    const auto model = std::make_shared<const GasModel>(volatile_gas(shape.fuel));
    const FuelBed bed(std::move(shape), model);
    Arriving air;
    air.mass_flow = 1;  // plenty
    air.species = dry_air();
    air.gas.mass_fraction = dry_air();
    const std::vector<Arriving> arrived{air};
    const std::vector<double> walls{std::pow(1000 * flux / wood_takes, 0.25)};
    std::vector<double> state{5e-3, 10, 0, 0, 0}, rate(state.size()), heat(1);
    bed.rates({.time = 1000, .fuel = state, .solid_temperature = walls}, arrived, {}, rate, heat);
    return 1000 * (state[0] + delay * rate[0]);  // the rate that it is on its way to
}

/// [g/(m2 s)] of a charring rate [mm/min] in wood of that density [kg/m3].
double charring(double millimetres, double density) {
    return millimetres / 60 * density;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("wood burns as fast as charring rates, cribs and cone calorimeters say") {
        const double at_20 = per_area(20, 0), damp = per_area(20, 0.136);  // 12 % of the whole
        compare_beside({name, "Harmathy, surface of fuel [g/m2s]", 6.2, at_20, 0.25});
        compare_beside({name, "EN 1995-1-2, softwood, one face, 450 kg/m3 [g/m2s]",
                        charring(0.65, 450), damp, 0.25});
        compare_beside(
            {name, "EN 1995-1-2, softwood, notional [g/m2s]", charring(0.80, 450), damp, 0.25});
        compare_beside({name, "EN 1995-1-2, hardwood, one face, 690 kg/m3 [g/m2s]",
                        charring(0.50, 690), damp, 0.25});
        // A crib's sticks regress by 2.2e-6 D^-0.6 m/s from every side.
        compare_beside({name, "crib of 50 mm sticks, 450 kg/m3 [g/m2s]",
                        2.2e-3 * std::pow(0.05, -0.6) * 450, at_20, 0.25});
        show_beside({name, "crib of 20 mm sticks, 450 kg/m3 [g/m2s]",
                     2.2e-3 * std::pow(0.02, -0.6) * 450, at_20, 0.25},
                    "thin sticks heat through and burn faster, which the bed does not know");
        compare_beside({name, "cone calorimeter, pine, 50 over 25 kW/m2", 1.43,
                        per_area(50, 0) / per_area(25, 0), 0.1});
        show_beside({name, "Butler, charring over flux, 450 kg/m3 [g/s per kW]",
                     charring(0.022, 450), (per_area(40, 0) - per_area(20, 0)) / 20, 0.25},
                    "sources differ: Butler is steeper than the cone calorimeter that the bed was "
                    "fitted to");
        compare_beside({name, "six sticks of 40 mm, 150 mm lit, at 6 g/m2s [kg/h]", 3.11,
                        3.6 * perimeter_apart(6, 0.04) * 0.15 * at_20, 0.01});
    }
}
