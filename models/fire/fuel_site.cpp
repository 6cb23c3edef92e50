#include "models/fire/fuel_site.h"

#include <algorithm>
#include <cmath>

#include "models/fire/solid_fuel.h"
#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

using constants::stefan_boltzmann;

constexpr double rounding = 1e-9;  // [-] of the view

double fourth(double t) {
    return t * t * t * t;
}

/// What a wall keeps of a flame's or ember's radiation when it is that hot [-].
double below_flame(double wall, const BedConstants& bed) {
    return std::max(1 - fourth(wall / bed.flame_temperature.value), 0.0);
}

double through_flame(const FuelSite& site, const BedConstants& bed) {
    return std::exp(-bed.flame_absorption.value * site.beam_length);
}

}  // namespace

void FireView::add(std::size_t solid, double view_factor) {
    if (view_factor < -rounding || view_factor > open_ + rounding)
        throw SolverError("a fire's view holds more than all of it");
    if (view_factor <= 0) return;
    open_ = std::max(open_ - view_factor, 0.0);
    const auto known = std::find_if(faces_.begin(), faces_.end(),
                                    [&](const Face& face) { return face.first == solid; });
    if (known == faces_.end())
        faces_.emplace_back(solid, view_factor);
    else
        known->second += view_factor;
}

double wall_flux(const FireView& view, std::span<const double> temperature) {
    double sum = 0;
    for (const auto& [solid, share] : view.faces()) sum += share * fourth(temperature[solid]);
    return stefan_boltzmann * sum;
}

SeenFlux seen_flux(const FuelSite& site, const BedConstants& bed, double embers, double flame,
                   std::span<const double> temperature) {
    const double held = std::max(embers, 0.0);
    const double glow = bed.ember_view.value * held / (held + bed.full_ember_bed.value / 2);
    const double hidden = (1 - through_flame(site, bed)) * flame;
    const double takes = bed.wood_absorptivity.value;
    return {.walls = takes * (1 - glow) * (1 - hidden) * wall_flux(site.view, temperature),
            .fire = takes * stefan_boltzmann *
                    (hidden * fourth(bed.flame_temperature.value) +
                     glow * (1 - hidden) * fourth(bed.ember_temperature.value))};
}

double heat_from_walls(const FuelSite& site, const BedConstants& bed, double area, double flame,
                       std::span<const double> temperature) {
    const double net =
        wall_flux(site.view, temperature) - stefan_boltzmann * fourth(pyrolysis_temperature);
    return area * bed.wood_absorptivity.value * through_flame(site, bed) * std::max(net, 0.0) *
           flame;
}

double glow_share(const FireView& view, const BedConstants& bed,
                  std::span<const double> temperature) {
    double sum = 0;
    for (const auto& [solid, share] : view.faces())
        sum += share * below_flame(temperature[solid], bed);
    return sum;
}

void share_out(const FireView& view, const BedConstants& bed, double glow, double drawn,
               std::span<const double> temperature, std::span<double> solid_heat) {
    const double walls = wall_flux(view, temperature), taken = glow_share(view, bed, temperature);
    for (const auto& [solid, share] : view.faces()) {
        if (glow > 0)
            solid_heat[solid] += share * below_flame(temperature[solid], bed) / taken * glow;
        if (drawn > 0)
            solid_heat[solid] -=
                drawn * share * stefan_boltzmann * fourth(temperature[solid]) / walls;
    }
}

}  // namespace drawwell
