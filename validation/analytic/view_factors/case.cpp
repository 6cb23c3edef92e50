#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>
#include <random>

#include "models/laws/enclosure.h"
#include "solver/constants.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

using constants::pi;
using Gauss = boost::math::quadrature::gauss<double, 40>;

/// The double integral over both discs, angle by angle.
double discs_by_quadrature(double r1, double r2, double distance) {
    const double d2 = distance * distance;
    return Gauss::integrate(
               [&](double a) {
                   return a * Gauss::integrate(
                                  [&](double b) {
                                      return b * Gauss::integrate(
                                                     [&](double angle) {
                                                         const double s2 =
                                                             d2 + a * a + b * b -
                                                             2 * a * b * std::cos(angle);
                                                         return d2 / (pi * s2 * s2);
                                                     },
                                                     0, pi);
                                  },
                                  0, r2);
               },
               0, r1) *
           4 / (r1 * r1);
}

constexpr int rays = 1'000'000;

/// Share of diffuse rays from a rectangle `width` x `height` on the floor that `hits` counts, which
/// is given a ray's start and direction.
template <class Hits>
double by_rays(double width, double height, Hits hits) {
    std::mt19937_64 dice(1);
    std::uniform_real_distribution<double> even(0, 1);
    int count = 0;
    for (int i = 0; i < rays; ++i) {
        const double x = width * even(dice), y = height * even(dice);
        const double sine = std::sqrt(even(dice)), angle = 2 * pi * even(dice);
        if (hits(x, y, sine * std::cos(angle), sine * std::sin(angle), std::sqrt(1 - sine * sine)))
            ++count;
    }
    return static_cast<double>(count) / rays;
}

double opposite_by_rays(double width, double height, double distance) {
    return by_rays(width, height, [&](double x, double y, double u, double v, double w) {
        const double hit_x = x + u / w * distance, hit_y = y + v / w * distance;
        return hit_x >= 0 && hit_x <= width && hit_y >= 0 && hit_y <= height;
    });
}

/// The other rectangle stands on the edge y = 0.
double upright_by_rays(double width, double height, double depth) {
    return by_rays(width, height, [&](double x, double y, double u, double v, double w) {
        if (v >= 0) return false;
        const double hit_x = x - u / v * y, hit_z = -w / v * y;
        return hit_x >= 0 && hit_x <= width && hit_z <= depth;
    });
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("view factors of discs and rectangles are what integration and rays give") {
        double discs = 0, opposite = 0, upright = 0;
        for (const auto& [r1, r2, d] :
             {std::array{0.1, 0.28, 0.06}, {0.15, 0.15, 0.2}, {0.0625, 0.2, 0.045}, {1, 0.3, 2}})
            discs = std::max(discs,
                             share_off(coaxial_discs(r1, r2, d), discs_by_quadrature(r1, r2, d)));
        for (const auto& [a, b, c] :
             {std::array{0.11, 0.34, 0.11}, {0.11, 0.11, 0.24}, {1, 1, 1}}) {
            opposite = std::max(opposite,
                                std::abs(parallel_rectangles(a, b, c) - opposite_by_rays(a, b, c)));
            upright = std::max(
                upright, std::abs(perpendicular_rectangles(a, b, c) - upright_by_rays(a, b, c)));
        }
        compare({"analytic/view_factors", "discs against quadrature, worst share off [-]", discs,
                 1e-6});
        // Four standard deviations of a million rays at a view factor of a half.
        compare({"analytic/view_factors", "opposite rectangles against rays, worst [-]", opposite,
                 2e-3});
        compare({"analytic/view_factors", "rectangles on an edge against rays, worst [-]", upright,
                 2e-3});
    }
}
