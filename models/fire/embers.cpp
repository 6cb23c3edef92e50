#include "models/fire/embers.h"

#include "models/fire/solid_fuel.h"

namespace drawwell {
namespace {

constexpr double oxygen_to_dioxide = 2 * 15.999 / 12.011;  // [-] oxygen per carbon burnt
constexpr double air_density_at_ember = 0.35;              // [kg/m3] near 1000 K

/// Share of char [1/s] that would burn if oxygen did not run out.
double wanted_share(const Arriving& air, const BedConstants& bed) {
    return bed.char_area.value * air_density_at_ember * air.gas.mass_fraction[o2] /
           (oxygen_per_char(bed) *
            (1 / bed.char_kinetic_rate.value + 1 / bed.char_transfer_rate.value));
}

}  // namespace

double oxygen_per_char(const BedConstants& bed) {
    return oxygen_to_dioxide * (1 - bed.char_to_co.value / 2);
}

double char_rate(double char_mass, const Arriving& air, const BedConstants& bed) {
    return limited_by_oxygen(char_mass * wanted_share(air, bed), air.species[o2],
                             oxygen_per_char(bed));
}

double char_rate_slope(double char_mass, const Arriving& air, const BedConstants& bed) {
    const double share = wanted_share(air, bed);
    return share * oxygen_limit_slope(char_mass * share, air.species[o2], oxygen_per_char(bed));
}

}  // namespace drawwell
