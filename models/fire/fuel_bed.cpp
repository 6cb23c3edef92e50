#include "models/fire/fuel_bed.h"

#include <algorithm>
#include <cmath>

#include "models/fire/embers.h"

namespace drawwell {
namespace {

// Blurs, so that what turns on or off does so smoothly; the answers hardly know them.
constexpr double dim = 100, bright = 300;   // [W] of volatiles between which a flame takes hold
constexpr double ignition_blur = 2000;      // [W/m2] either side of the ignition flux
constexpr double least_free_share = 0.1;    // [-] of the feed, however much wood stands in it
constexpr double least_oxygen_need = 1e-5;  // [kg/s] of a flame just taking hold: 0.1 kW
constexpr double warmth_scale = 1e5;        // [J/m2] in which errors of the warmth are counted
constexpr double ash_scale = 0.1;           // [kg] the same of ash

double smooth_step(double x) {
    const double s = std::clamp(x, 0.0, 1.0);
    return s * s * (3 - 2 * s);
}

}  // namespace

FuelBed::FuelBed(Shape shape, std::shared_ptr<const GasModel> model)
    : shape_(std::move(shape)), model_(std::move(model)) {
    for (const FuelLot& lot : shape_.lots) {
        const double rate = lot.lit_area * shape_.constants.surface_rate.value;
        vapours_.push_back(vapours(shape_.fuel, lot.moisture_dry_basis, *model_));
        scale_.insert(scale_.end(),
                      {rate, lot.dry_mass, lot.dry_mass, lot.lit_area * warmth_scale});
    }
    scale_.push_back(ash_scale);
}

double FuelBed::pyrolysis(double, std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) sum += losing(i, fuel);
    return sum;
}

double FuelBed::taken(std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i)
        sum += shape_.lots[i].section_left(wood_of(i, fuel));
    return sum;
}

bool FuelBed::put_in(std::size_t lot, std::span<double> fuel) const {
    const FuelLot& load = shape_.lots[lot];
    const double room = (1 - least_free_share) * shape_.feed_area;
    if (load.section > 0 && taken(fuel) + load.section > room) return false;
    fuel[states_per_lot * lot + 1] += load.dry_mass;
    return true;
}

void FuelBed::set(const View& view, std::span<double> settings) const {
    if (shape_.ash_depth) settings[*shape_.ash_depth] = ash_depth(view.fuel);
    if (!shape_.free_area) return;
    settings[*shape_.free_area] =
        std::max(least_free_share * shape_.feed_area, shape_.feed_area - taken(view.fuel));
}

double FuelBed::ash_depth(std::span<const double> fuel) const {
    if (!(shape_.ash_floor > 0)) return 0;
    return shape_.first_ash_depth +
           ash(fuel) / (shape_.constants.ash_density.value * shape_.ash_floor);
}

double FuelBed::flame_share(const View& view) const {
    const double release = pyrolysis(view.time, view.fuel) * (1 - shape_.fuel.char_yield) *
                           model_->volatile_gas().higher_heating_value;
    const BedConstants& bed = shape_.constants;
    double share = std::max(smooth_step((release - dim) / (bright - dim)),
                            smooth_step(char_left(view.fuel) / bed.lighting_embers.value));
    for (const FuelLot& lot : shape_.lots)
        if (lot.lit_by_hand)
            share = std::max(share, smooth_step(2 * (1 - view.time / bed.hand_lit_for.value)));
    return share;
}

double FuelBed::oxygen_share(std::size_t site, const View& view, const Arriving& air) const {
    double needed = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i)
        if (shape_.lots[i].site == site)
            needed += losing(i, view.fuel) * (1 - shape_.constants.char_yield.value) *
                      model_->oxygen_demand();
    const double ratio = air.species[o2] / std::max(needed, least_oxygen_need);
    return -std::expm1(-3 * std::max(ratio, 0.0));
}

double FuelBed::char_of(std::size_t lot, std::span<const double> fuel) const {
    return std::max(fuel[states_per_lot * lot + 2], 0.0);
}

double FuelBed::char_at(std::size_t site, std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i)
        if (shape_.lots[i].site == site) sum += char_of(i, fuel);
    return sum;
}

double FuelBed::aim(std::size_t lot, const Burning& at, std::span<const double> fuel) const {
    const BedConstants& bed = shape_.constants;
    const double per_area = std::clamp(
        bed.surface_rate.value * (at.flux.all() + bed.flame_feedback.value * at.flame * at.air) /
            bed.flux_scale.value /
            (1 + shape_.lots[lot].moisture_dry_basis * bed.water_to_wood_heat.value),
        0.0, bed.largest_rate.value);
    return at.lit * shape_.lots[lot].lit_area_left(wood_of(lot, fuel)) * per_area;
}

double FuelBed::cold_share(std::size_t lot, const Burning& at, std::span<const double> fuel) const {
    const double aimed = aim(lot, at, fuel);
    return aimed > 0 ? std::clamp(1 - rate_of(lot, fuel) / aimed, 0.0, 1.0) : 0;
}

FuelBed::Burning FuelBed::burning_at(std::size_t site, const View& view,
                                     const Arriving& air) const {
    const BedConstants& bed = shape_.constants;
    const FuelSite& place = shape_.sites[site];
    Burning at;
    at.flame = flame_share(view);
    at.air = oxygen_share(site, view, air);
    at.flux = seen_flux(place, bed, char_at(site, view.fuel), at.flame, view.solid_temperature);
    at.lit = std::max(
        at.flame,
        smooth_step((at.flux.all() - bed.ignition_flux.value) / (2 * ignition_blur) + 0.5));
    at.char_rate = char_rate(char_at(site, view.fuel), air, bed);
    const double embers = at.char_rate * carbon_heating_value();
    at.glow =
        bed.radiant_fraction.value * embers * glow_share(place.view, bed, view.solid_temperature);

    double burning_area = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
        if (shape_.lots[i].site != site) continue;
        const double area = shape_.lots[i].lit_area_left(wood_of(i, view.fuel));
        const double cold = cold_share(i, at, view.fuel);
        if (losing(i, view.fuel) > 0) burning_area += (1 - cold) * area;
        at.warming_area += at.lit * cold * area;
    }
    at.drawn = std::min(heat_from_walls(place, bed, burning_area, at.flame, view.solid_temperature),
                        most_drawn(site, view));
    at.from_walls = at.warming_area * at.flux.walls;
    // Embers give the wood over them no more than what they do not radiate to the walls.
    const double to_spare = embers - at.glow;
    at.from_embers =
        to_spare > 0 ? to_spare * -std::expm1(-at.warming_area * at.flux.fire / to_spare) : 0;
    return at;
}

double FuelBed::most_drawn(std::size_t site, const View& view) const {
    double hottest = 0;
    for (const auto& [solid, share] : shape_.sites[site].view.faces())
        hottest = std::max(hottest, view.solid_temperature[solid]);
    if (hottest <= pyrolysis_temperature) return 0;
    double most = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
        const FuelLot& lot = shape_.lots[i];
        const double rate = losing(i, view.fuel);
        if (lot.site != site || rate <= 0) continue;
        const Vapours& given = vapours_[i];
        most += rate * (model_->mixture(given.species).enthalpy(hottest) - given.enthalpy) -
                lot.losing_share(rate_of(i, view.fuel), wood_of(i, view.fuel)) *
                    warmth_of(i, view.fuel);
    }
    return std::max(most, 0.0);
}

Emission FuelBed::emission(std::size_t site, const View& view, const Arriving& air) const {
    const BedConstants& bed = shape_.constants;
    const Burning at = burning_at(site, view, air);
    Emission out;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
        const FuelLot& lot = shape_.lots[i];
        const double rate = losing(i, view.fuel);
        if (lot.site != site || rate <= 0) continue;
        const Vapours& given = vapours_[i];
        for (std::size_t s = 0; s < species_count; ++s) out.species[s] += rate * given.species[s];
        out.enthalpy_flow +=
            rate * given.enthalpy + lot.losing_share(rate_of(i, view.fuel), wood_of(i, view.fuel)) *
                                        warmth_of(i, view.fuel);
    }
    out.enthalpy_flow += at.drawn - at.glow - at.from_embers;
    const Composition gained = model_->char_burning(bed.char_to_co.value);
    for (std::size_t s = 0; s < species_count; ++s) out.species[s] += at.char_rate * gained[s];
    out.flame = flame_of(air, out.species, shape_.sites[site].width, bed.flame_length_factor.value,
                         at.char_rate * carbon_heating_value(), *model_);
    return out;
}

void FuelBed::rates(const View& view, std::span<const Arriving> arrived,
                    std::span<const GasCell> /*gas*/, std::span<double> rate,
                    std::span<double> solid_heat) const {
    const BedConstants& bed = shape_.constants;
    rate[ash_state()] = 0;
    for (std::size_t s = 0; s < shape_.sites.size(); ++s) {
        const Burning at = burning_at(s, view, arrived[s]);
        const double char_mass = char_at(s, view.fuel);
        for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
            const FuelLot& lot = shape_.lots[i];
            if (lot.site != s) continue;
            const double losing_now = losing(i, view.fuel);
            const double warming =
                at.lit * cold_share(i, at, view.fuel) * lot.lit_area_left(wood_of(i, view.fuel));
            const std::span<double> own = rate.subspan(states_per_lot * i, states_per_lot);
            own[0] = (aim(i, at, view.fuel) - rate_of(i, view.fuel)) / bed.response_time.value;
            own[1] = -losing_now;
            rate[ash_state()] += lot.ash * losing_now;
            own[2] = bed.char_yield.value * losing_now -
                     (char_mass > 0 ? at.char_rate * char_of(i, view.fuel) / char_mass : 0);
            own[3] =
                (warming > 0 ? (at.from_walls + at.from_embers) * warming / at.warming_area : 0) -
                lot.losing_share(rate_of(i, view.fuel), wood_of(i, view.fuel)) *
                    warmth_of(i, view.fuel);
        }
        share_out(shape_.sites[s].view, bed, at.glow, at.drawn + at.from_walls,
                  view.solid_temperature, solid_heat);
    }
}

double FuelBed::enthalpy(std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i)
        sum += wood_of(i, fuel) * vapours_[i].enthalpy + warmth_of(i, fuel);
    return sum;
}

std::array<double, 4> FuelBed::elements(std::span<const double> fuel) const {
    std::array<double, 4> sum{};
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
        const auto wood = elements_of_wood(shape_.fuel, shape_.lots[i].moisture_dry_basis);
        for (std::size_t e = 0; e < sum.size(); ++e) sum[e] += wood_of(i, fuel) * wood[e];
        sum[0] += fuel[states_per_lot * i + 2];
    }
    return sum;
}

void FuelBed::rate_slopes(const View& view, std::span<const Arriving> arrived,
                          std::span<double> slope) const {
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) {
        const FuelLot& lot = shape_.lots[i];
        const double rate = rate_of(i, view.fuel), wood = wood_of(i, view.fuel);
        const std::span<double> own = slope.subspan(states_per_lot * i, states_per_lot);
        own[0] = -1 / shape_.constants.response_time.value;
        own[1] = -lot.losing_slope(rate, wood);
        own[2] =
            -char_rate_slope(char_at(lot.site, view.fuel), arrived[lot.site], shape_.constants);
        own[3] = -lot.losing_share(rate, wood);
    }
    slope[ash_state()] = 0;
}

double FuelBed::heating_value(std::span<const double> fuel) const {
    return dry_wood(fuel) * shape_.fuel.wood.higher_heating_value +
           char_left(fuel) * carbon_heating_value();
}

double FuelBed::dry_wood(std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) sum += wood_of(i, fuel);
    return sum;
}

double FuelBed::char_left(std::span<const double> fuel) const {
    double sum = 0;
    for (std::size_t i = 0; i < shape_.lots.size(); ++i) sum += char_of(i, fuel);
    return sum;
}

}  // namespace drawwell
