#include "models/heated_room.h"

#include <cmath>

#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double air_molar_mass = 28.96e-3;  // [kg/mol] dry air, from memory
constexpr double air_heat_capacity = 1006;   // [J/(kg K)] at 20 degC, from memory
// Furniture and the first millimetres of walls go along with the air within the hour: the whole is
// five times the air's capacity, x or / 2 (our choice). Masonry further in follows over days.
constexpr double goes_along = 5;

}  // namespace

HeatedRoom::HeatedRoom(const Site& site)
    : outdoor_(site.outdoor), loss_(site.room_loss), temperature_(site.room) {
    const double density = site.pressure * air_molar_mass / (constants::molar_gas * site.room);
    capacity_ = goes_along * air_heat_capacity * density * site.room_volume;
}

double HeatedRoom::at(double time, double heat) {
    const double span = time - time_;
    if (begun_ && capacity_ > 0 && span > 0) {
        const double outdoor = (outdoor_(time_) + outdoor_(time)) / 2;
        const double mean = (heat_ + heat) / 2;
        // Exponentially to where heat and loss are equal; without a loss, straight up.
        const double gone = loss_ * span / capacity_;
        const double share = gone > 1e-9 ? -std::expm1(-gone) / gone : 1;
        temperature_ += share * span / capacity_ * (mean - loss_ * (temperature_ - outdoor));
    }
    begun_ = true;
    time_ = time;
    heat_ = heat;
    return temperature_;
}

}  // namespace drawwell
