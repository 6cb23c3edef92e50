#include "validation/measured/cone_slab.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numeric>

#include "models/fire/flame.h"
#include "models/fire/fuel_bed.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double interval = 10, step = 1;   // [s] of the record, of Euler's rule
constexpr double heat_per_oxygen = 13.1e6;  // [J/kg] the apparatus' constant
constexpr double flat_face = 1e-3;          // a slab's face does not shrink as sticks do

}  // namespace

std::vector<double> cone_release(const ConeSlab& slab, double end, const Library& library) {
    FuelBed::Shape shape;
    shape.constants = library.bed;
    shape.constants.flame_absorption.value = 0;  // the heater's flux is what arrives
    shape.constants.ember_view.value = 0;        // its own embers lie under the face
    const Wood& wood = library.woods.at(slab.wood);
    shape.fuel = {.wood = wood, .char_yield = library.bed.char_yield.value};
    shape.feed_area = 1e9;
    FuelLot lot;
    lot.dry_mass = slab.density * slab.thickness * (1 - slab.moisture) * (1 - wood.ash);
    lot.moisture_dry_basis = slab.moisture / (1 - slab.moisture);
    lot.lit_area = 1;
    lot.foot_share = flat_face;
    shape.lots = {lot};
    shape.sites.push_back({.view = {}, .beam_length = 0.1, .width = 0.1});
    shape.sites[0].view.add(0, 1);
    const auto model = std::make_shared<const GasModel>(volatile_gas(shape.fuel));
    const FuelBed bed(std::move(shape), model);
    Arriving air;
    air.mass_flow = 1;  // [kg/s] plenty
    air.species = dry_air();
    air.gas.mass_fraction = dry_air();
    const std::vector<Arriving> arrived{air};
    const std::vector<double> heater{std::pow(slab.flux / constants::stefan_boltzmann, 0.25)};
    std::vector<double> state(bed.state_count()), rate(state.size()), heat(1), series;
    bed.put_in(0, state);
    for (double time = 0; time <= end; time += step) {
        const Fire::View view{.time = time, .fuel = state, .solid_temperature = heater};
        if (std::fmod(time, interval) == 0) {
            const Emission out = bed.emission(0, view, air);
            Composition burning = out.species;
            burning[o2] = 0;
            series.push_back(heat_per_oxygen * (oxygen_demand(burning, *model) - out.species[o2]));
        }
        std::fill(rate.begin(), rate.end(), 0);
        bed.rates(view, arrived, {}, rate, heat);
        for (std::size_t i = 0; i < state.size(); ++i)
            state[i] = std::max(state[i] + step * rate[i], 0.0);
    }
    return series;
}

double mean_between(const std::vector<double>& series, double from, double to) {
    const auto begin = series.begin() + std::lround(from / interval);
    const auto end = series.begin() + std::lround(to / interval) + 1;
    return std::accumulate(begin, end, 0.0) / static_cast<double>(end - begin);
}

std::vector<double> cone_figures(const std::vector<double>& series) {
    const double whole = interval * static_cast<double>(series.size() - 1);
    return {mean_between(series, 0, whole) / 1000, mean_between(series, 300, 600) / 1000,
            *std::max_element(series.begin(), series.begin() + 31) / 1000};
}

}  // namespace drawwell
