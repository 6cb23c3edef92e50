#include "models/fire/fuel_bed.h"

#include <algorithm>
#include <cmath>

#include "models/laws/gas_radiation.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::stefan_boltzmann;

constexpr double oxygen_to_dioxide = 2 * 15.999 / 12.011;  // [-] oxygen per carbon burnt
constexpr double absorptivity = 0.9;              // [-] of charring wood: fire tests, from memory
constexpr double water_to_wood_heat = 2.6 / 3.5;  // [-] heat to boil off water over heat to
                                                  // pyrolyse as much wood: our choice
constexpr double hand_lit_for = 90;               // [s]
constexpr double dim = 100, bright = 300;      // [W] of volatiles between which a flame takes hold
constexpr double lighting_embers = 0.02;       // [kg] of char that light new wood surely
constexpr double ignition_blur = 2000;         // [W/m2] either side of the ignition flux
constexpr double last_splinter = 0.01;         // [-] of a lot, below which its rate dies away
constexpr double least_free_share = 0.1;       // [-] of the feed, however much wood stands in it
constexpr double least_oxygen_need = 1e-5;     // [kg/s] of a flame just taking hold: 0.1 kW
constexpr double full_ember_bed = 0.05;        // [kg] of char, half of it fills half the view
constexpr double air_density_at_ember = 0.35;  // [kg/m3] near 1000 K

double smooth_step(double x) {
    const double s = std::clamp(x, 0.0, 1.0);
    return s * s * (3 - 2 * s);
}

double fourth(double t) {
    return t * t * t * t;
}

}  // namespace

FuelBed::FuelBed(Shape shape, std::shared_ptr<const GasModel> model)
    : shape_(std::move(shape)), model_(std::move(model)) {
    for (const FuelLot& lot : shape_.lots) {
        const double rate = lot.lit_area * shape_.constants.surface_rate.value;
        scale_.insert(scale_.end(), {rate, lot.dry_mass, lot.dry_mass});
    }
}

double FuelBed::share_left(std::size_t lot, std::span<const double> fuel) const {
    return std::clamp(fuel[3 * lot + 1] / shape_.lots[lot].dry_mass, 0.0, 1.0);
}

double FuelBed::pyrolysis_of(std::size_t lot, std::span<const double> fuel) const {
    const double left = share_left(lot, fuel);
    return std::max(fuel[3 * lot], 0.0) * left / (left + last_splinter) * (1 + last_splinter);
}

double FuelBed::foot_left(std::size_t lot, std::span<const double> fuel) const {
    return std::min(1.0, share_left(lot, fuel) / shape_.lots[lot].foot_share);
}

double FuelBed::lit_area(std::size_t lot, std::span<const double> fuel) const {
    return shape_.lots[lot].lit_area * std::sqrt(foot_left(lot, fuel));
}

double FuelBed::pyrolysis(double, std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) sum += pyrolysis_of(i, fuel);
    return sum;
}

bool FuelBed::put_in(std::size_t lot, std::span<double> fuel) const {
    const FuelLot& load = shape_.lots[lot];
    double taken = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i)
        taken += shape_.lots[i].section * foot_left(i, fuel);
    if (load.section > 0 && taken + load.section > (1 - least_free_share) * shape_.feed_area)
        return false;
    fuel[3 * lot + 1] += load.dry_mass;
    return true;
}

void FuelBed::set(const View& view, std::span<double> settings) const {
    if (!shape_.free_area) return;
    double taken = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i)
        taken += shape_.lots[i].section * foot_left(i, view.fuel);
    settings[*shape_.free_area] =
        std::max(least_free_share * shape_.feed_area, shape_.feed_area - taken);
}

double FuelBed::flame_share(const View& view) const {
    const double release = pyrolysis(view.time, view.fuel) * (1 - shape_.fuel.char_yield) *
                           model_->volatile_gas().higher_heating_value;
    double share = std::max(smooth_step((release - dim) / (bright - dim)),
                            smooth_step(char_left(view.fuel) / lighting_embers));
    for (const FuelLot& lot : shape_.lots)
        if (lot.lit_by_hand)
            share = std::max(share, smooth_step(2 * (1 - view.time / hand_lit_for)));
    return share;
}

double FuelBed::wall_flux(const FuelSite& site, std::span<const double> temperature) const {
    double sum = 0;
    for (const auto& [solid, share] : site.walls) sum += share * fourth(temperature[solid]);
    return stefan_boltzmann * sum;
}

double FuelBed::heat_from_walls(std::size_t site, const View& view) const {
    const FuelSite& place = shape_.sites[site];
    double hottest = 0;
    for (const auto& [solid, share] : place.walls)
        hottest = std::max(hottest, view.solid_temperature[solid]);
    if (hottest <= pyrolysis_temperature) return 0;
    double area = 0, most = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
        const double rate = pyrolysis_of(i, view.fuel);
        if (shape_.lots[i].site != site || rate <= 0) continue;
        const Vapours given = vapours(shape_.fuel, shape_.lots[i].moisture_dry_basis, *model_);
        area += lit_area(i, view.fuel);
        most += rate * (model_->mixture(given.species).enthalpy(hottest) - given.enthalpy);
    }
    const double through = std::exp(-shape_.constants.flame_absorption.value * place.beam_length);
    const double net =
        wall_flux(place, view.solid_temperature) - stefan_boltzmann * fourth(pyrolysis_temperature);
    return std::min(area * absorptivity * through * std::max(net, 0.0), most) * flame_share(view);
}

double FuelBed::seen_flux(std::size_t site, const View& view) const {
    const BedConstants& bed = shape_.constants;
    const FuelSite& place = shape_.sites[site];
    const double embers = std::max(char_at(site, view.fuel), 0.0);
    const double glow = bed.ember_view.value * embers / (embers + full_ember_bed / 2);
    const double through = std::exp(-bed.flame_absorption.value * place.beam_length);
    const double flame = (1 - through) * flame_share(view);
    return absorptivity *
           ((1 - glow) * (1 - flame) * wall_flux(place, view.solid_temperature) +
            stefan_boltzmann * (flame * fourth(bed.flame_temperature.value) +
                                glow * (1 - flame) * fourth(bed.ember_temperature.value)));
}

double FuelBed::oxygen_share(std::size_t site, const View& view, const Arriving& air) const {
    double needed = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i)
        if (shape_.lots[i].site == site)
            needed += pyrolysis_of(i, view.fuel) * (1 - shape_.constants.char_yield.value) *
                      model_->oxygen_demand();
    const double ratio = air.species[o2] / std::max(needed, least_oxygen_need);
    return -std::expm1(-3 * std::max(ratio, 0.0));
}

double FuelBed::glow_to_wall(double char_burning, double wall) const {
    return shape_.constants.radiant_fraction.value * char_burning * carbon_heating_value() *
           std::max(1 - fourth(wall / shape_.constants.flame_temperature.value), 0.0);
}

double FuelBed::glow_to_walls(std::size_t site, double char_burning, const View& view) const {
    double sum = 0;
    for (const auto& [solid, share] : shape_.sites[site].walls)
        sum += share * glow_to_wall(char_burning, view.solid_temperature[solid]);
    return sum;
}

double FuelBed::char_at(std::size_t site, std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i)
        if (shape_.lots[i].site == site) sum += std::max(fuel[3 * i + 2], 0.0);
    return sum;
}

double FuelBed::char_wanted(double char_mass, const Arriving& air) const {
    const BedConstants& bed = shape_.constants;
    return bed.char_area.value * char_mass * air_density_at_ember * air.gas.mass_fraction[o2] /
           (oxygen_per_char() *
            (1 / bed.char_kinetic_rate.value + 1 / bed.char_transfer_rate.value));
}

double FuelBed::oxygen_per_char() const {
    return oxygen_to_dioxide * (1 - shape_.constants.char_to_co.value / 2);
}

double FuelBed::char_rate(std::size_t site, const View& view, const Arriving& air) const {
    return limited_by_oxygen(char_wanted(char_at(site, view.fuel), air), air.species[o2],
                             oxygen_per_char());
}

Emission FuelBed::emission(std::size_t site, const View& view, const Arriving& air) const {
    const BedConstants& bed = shape_.constants;
    Emission out;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
        if (shape_.lots[i].site != site) continue;
        const double rate = pyrolysis_of(i, view.fuel);
        if (rate <= 0) continue;
        const Vapours given = vapours(shape_.fuel, shape_.lots[i].moisture_dry_basis, *model_);
        for (std::size_t s = 0; s < species_count; ++s) out.species[s] += rate * given.species[s];
        out.enthalpy_flow += rate * given.enthalpy;
    }
    const double burning = char_rate(site, view, air);
    out.enthalpy_flow += heat_from_walls(site, view) - glow_to_walls(site, burning, view);
    const Composition gained = model_->char_burning(bed.char_to_co.value);
    for (std::size_t s = 0; s < species_count; ++s) out.species[s] += burning * gained[s];
    out.flame = flame_of(air, out.species, shape_.sites[site].width, bed.flame_length_factor.value,
                         burning * carbon_heating_value(), *model_);
    return out;
}

void FuelBed::rates(const View& view, std::span<const Arriving> arrived,
                    std::span<const GasCell> /*gas*/, std::span<double> rate,
                    std::span<double> solid_heat) const {
    const BedConstants& bed = shape_.constants;
    const double flame = flame_share(view);
    for (std::size_t s = 0; s < shape_.sites.size(); ++s) {
        const FuelSite& site = shape_.sites[s];
        const double walls = wall_flux(site, view.solid_temperature);
        const double air = oxygen_share(s, view, arrived[s]);
        const double flux = seen_flux(s, view);
        const double lit = std::max(
            flame, smooth_step((flux - bed.ignition_flux.value) / (2 * ignition_blur) + 0.5));

        const double char_mass = char_at(s, view.fuel);
        const double char_burning = char_rate(s, view, arrived[s]);
        for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
            if (shape_.lots[i].site != s) continue;
            const double moisture = shape_.lots[i].moisture_dry_basis;
            const double per_area = std::clamp(
                bed.surface_rate.value * (flux + bed.flame_feedback.value * flame * air) /
                    bed.flux_scale.value / (1 + moisture * water_to_wood_heat),
                0.0, bed.largest_rate.value);
            const double aim = lit * lit_area(i, view.fuel) * per_area;
            const double losing = pyrolysis_of(i, view.fuel);
            const double own_char = std::max(view.fuel[3 * i + 2], 0.0);
            rate[3 * i] = (aim - view.fuel[3 * i]) / bed.response_time.value;
            rate[3 * i + 1] = -losing;
            rate[3 * i + 2] = bed.char_yield.value * losing -
                              (char_mass > 0 ? char_burning * own_char / char_mass : 0);
        }
        const double drawn = heat_from_walls(s, view);
        for (const auto& [solid, share] : site.walls) {
            const double wall = view.solid_temperature[solid];
            solid_heat[solid] += share * (glow_to_wall(char_burning, wall) -
                                          drawn * stefan_boltzmann * fourth(wall) / walls);
        }
    }
}

double FuelBed::enthalpy(std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i)
        sum += fuel[3 * i + 1] *
               vapours(shape_.fuel, shape_.lots[i].moisture_dry_basis, *model_).enthalpy;
    return sum;
}

std::array<double, 4> FuelBed::elements(std::span<const double> fuel) const {
    std::array<double, 4> sum{};
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
        const auto wood = elements_of_wood(shape_.fuel, shape_.lots[i].moisture_dry_basis);
        for (std::size_t e = 0; e < sum.size(); ++e) sum[e] += fuel[3 * i + 1] * wood[e];
        sum[0] += fuel[3 * i + 2];
    }
    return sum;
}

void FuelBed::rate_slopes(const View& view, std::span<const Arriving> arrived,
                          std::span<double> slope) const {
    const BedConstants& bed = shape_.constants;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
        const std::size_t site = shape_.lots[i].site;
        const double left = share_left(i, view.fuel);
        const double blend = left + last_splinter;
        slope[3 * i] = -1 / bed.response_time.value;
        slope[3 * i + 1] = -std::max(view.fuel[3 * i], 0.0) * last_splinter / (blend * blend) /
                           shape_.lots[i].dry_mass;
        const Arriving& air = arrived[site];
        slope[3 * i + 2] =
            -char_wanted(1, air) * oxygen_limit_slope(char_wanted(char_at(site, view.fuel), air),
                                                      air.species[o2], oxygen_per_char());
    }
}

double FuelBed::heating_value(std::span<const double> fuel) const {
    return dry_wood(fuel) * shape_.fuel.wood.higher_heating_value +
           char_left(fuel) * carbon_heating_value();
}

double FuelBed::dry_wood(std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) sum += fuel[3 * i + 1];
    return sum;
}

double FuelBed::char_left(std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) sum += std::max(fuel[3 * i + 2], 0.0);
    return sum;
}

}  // namespace drawwell
