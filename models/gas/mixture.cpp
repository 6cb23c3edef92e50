#include "models/gas/mixture.h"

#include <algorithm>
#include <cmath>

namespace drawwell {
namespace {

constexpr double coldest = 200;  // [K] ends of the polynomials
constexpr double middle = 1000;
constexpr double hottest = 3500;

double value(const Mixture::Polynomial& c, double t) {
    return c[5] + t * (c[0] + t * (c[1] + t * (c[2] + t * (c[3] + t * c[4]))));
}

double slope(const Mixture::Polynomial& c, double t) {
    return c[0] + t * (2 * c[1] + t * (3 * c[2] + t * (4 * c[3] + t * 5 * c[4])));
}

/// How steeply the heat capacity rises below the coldest temperature [-]. Gas that cold has been
/// asked to boil more water than it can; it would keep it as fog, and so it does not cool much
/// further.
constexpr double fog = 32;

/// Rise of heat capacity with temperature at the hot end [J/(kg K2)], never falling.
double hot_rise(const Mixture::Polynomial& c) {
    const double t = hottest;
    return std::max(0.0, 2 * c[1] + t * (6 * c[2] + t * (12 * c[3] + t * 20 * c[4])));
}

}  // namespace

double Mixture::heat_capacity(double t) const {
    if (t < coldest) return slope(low_, coldest) * std::pow(coldest / t, fog + 1);
    if (t <= middle) return slope(low_, t);
    if (t <= hottest) return slope(high_, t);
    return slope(high_, hottest) + hot_rise(high_) * (t - hottest);
}

double Mixture::enthalpy(double t) const {
    if (t < coldest)
        return value(low_, coldest) -
               slope(low_, coldest) * coldest * (std::pow(coldest / t, fog) - 1) / fog;
    if (t <= middle) return value(low_, t);
    if (t <= hottest) return value(high_, t);
    const double beyond = t - hottest;
    return value(high_, hottest) +
           beyond * (slope(high_, hottest) + 0.5 * hot_rise(high_) * beyond);
}

double Mixture::temperature(double enthalpy, double guess) const {
    double t = std::clamp(guess, coldest, hottest);
    double below = coldest, above = 1e9;  // a bracket for the rare case that Newton strays
    for (int step = 0; step < 100; ++step) {
        const bool beyond = t > hottest;
        const Polynomial& c = t > middle ? high_ : low_;
        const double miss = (beyond ? this->enthalpy(t) : value(c, t)) - enthalpy;
        const double rate = beyond ? heat_capacity(t) : slope(c, t);
        double next = t - miss / rate;
        if (next < coldest) {
            const double fall =
                (enthalpy - value(low_, coldest)) / (slope(low_, coldest) * coldest);
            if (fall < 0) return coldest * std::pow(1 - fog * fall, -1 / fog);
            next = coldest;
        }
        // Convergence is quadratic: after a step of 1e-6 the error is far below 1e-10.
        if (std::abs(next - t) <= 1e-6 * t) return next;
        (miss > 0 ? above : below) = t;
        t = next < below || next > above ? 0.5 * (below + above) : next;
    }
    return t;
}

}  // namespace drawwell
