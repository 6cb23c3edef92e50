#include "models/laws/plate_bow.h"

#include <boost/math/quadrature/gauss.hpp>
#include <cmath>

namespace drawwell {
namespace {

constexpr double poisson = 0.3;  // [-] of steel and iron

// Factors of an even squeeze: exact, and as the trial dish has them.
constexpr double free_factor = 4.2, free_dish = 4 * (1 + poisson);
constexpr double clamped_factor = 14.68, clamped_dish = 16;

/// Mean [K] within a radius; known inside each ring from what lies within it.
class MeanWithin {
  public:
    explicit MeanWithin(const PlateWarmth& warmth) : warmth_(warmth) {}
    /// Integral of T r from 0 to the ring's inner edge, then on to r.
    double operator()(std::size_t ring, double before, double r) const {
        const double inner = warmth_.edge[ring];
        return 2 * (before + warmth_.temperature[ring] * (r * r - inner * inner) / 2) / (r * r);
    }

  private:
    const PlateWarmth& warmth_;
};

/// The root of (1 - s) w + c w^3 = start [m] on the side of `start`, start >= 0.
double bow_of(double share, double cubic, double start) {
    // Right of the largest root the left side rises and is convex: Newton comes down onto it.
    double w = std::cbrt(start / cubic) + std::sqrt(std::max(share - 1, 0.0) / cubic) + start;
    for (int i = 0; i < 60 && w > 0; ++i) {
        const double slope = 1 - share + 3 * cubic * w * w;
        const double over = (1 - share) * w + cubic * w * w * w - start;
        if (!(slope > 0) || over <= 1e-15 * w) break;
        w -= over / slope;
    }
    return std::max(w, 0.0);
}

}  // namespace

double buckling_share(const BowingPlate& plate, const PlateWarmth& warmth, bool rigid_rim) {
    const double a = warmth.edge.back();
    double whole = 0;  // integral of T r over the plate
    for (std::size_t i = 0; i < warmth.temperature.size(); ++i)
        whole += warmth.temperature[i] *
                 (warmth.edge[i + 1] * warmth.edge[i + 1] - warmth.edge[i] * warmth.edge[i]) / 2;
    const double mean = 2 * whole / (a * a);
    const double rim = warmth.temperature.back();
    const double added = rigid_rim ? (mean - rim) / (1 - poisson) : 0;

    // Radial squeeze over E alpha [K]: half of (mean within r less mean of all), and the rim's.
    const MeanWithin mean_within(warmth);
    double before = 0, work = 0;
    for (std::size_t i = 0; i < warmth.temperature.size(); ++i) {
        const double inner = warmth.edge[i], outer = warmth.edge[i + 1];
        work += boost::math::quadrature::gauss<double, 7>::integrate(
            [&](double r) {
                const double part = r / a, bent = plate.clamped ? 1 - part * part : 1;
                const double squeeze = (mean_within(i, before, r) - mean) / 2 + added;
                return squeeze * part * part * part * bent * bent / a;
            },
            inner, outer);
        before += warmth.temperature[i] * (outer * outer - inner * inner) / 2;
    }
    const double slim =
        plate.expansion * plate.radius * plate.radius / (plate.thickness * plate.thickness);
    return plate.clamped
               ? 18 * (1 - poisson * poisson) * slim * work * clamped_dish / clamped_factor
               : 12 * (1 - poisson) * slim * work * free_dish / free_factor;
}

BowBand plate_bow(const BowingPlate& plate, const PlateWarmth& warmth) {
    const double t = plate.thickness;
    const double start = plate.clamped ? 0
                                       : plate.expansion * std::abs(warmth.through) * plate.radius *
                                             plate.radius / (2 * t);
    const auto bow = [&](bool rigid_rim, double stiffening) {
        return bow_of(buckling_share(plate, warmth, rigid_rim), stiffening / (t * t), start);
    };
    const double slides = bow(false, plate.clamped ? 0.146 : 0.262);
    const double held = bow(true, plate.clamped ? 0.471 : 1.852);
    // The warmer face is the longer one and bulges.
    const double way = warmth.through > 0 ? -1 : 1;
    return {way * std::min(slides, held), way * std::max(slides, held)};
}

}  // namespace drawwell
