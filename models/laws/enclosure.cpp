#include "models/laws/enclosure.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>

#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

using Matrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

constexpr double tolerance = 1e-6;
constexpr double touching =
    1e-9;  // [-] of a side: nearer counts as none, to keep logarithms finite

void require(bool holds, const std::string& what) {
    if (!holds) throw InputError("radiation enclosure: " + what);
}

void check(const Enclosure& e) {
    const std::size_t n = e.area.size();
    require(n > 0 && e.emissivity.size() == n && e.view_factor.size() == n * n,
            "sizes of areas, emissivities and view factors differ");
    bool emits = false;
    for (std::size_t i = 0; i < n; ++i) {
        require(e.area[i] > 0, "areas must be above 0");
        require(e.emissivity[i] >= 0 && e.emissivity[i] <= 1, "emissivities must lie in 0..1");
        emits = emits || e.emissivity[i] > 0;
        double row = 0;
        for (std::size_t j = 0; j < n; ++j) {
            const double there = e.area[i] * e.view_factor[i * n + j];
            const double back = e.area[j] * e.view_factor[j * n + i];
            require(there >= 0, "view factors must not be negative");
            require(std::abs(there - back) <= tolerance * std::max(e.area[i], e.area[j]),
                    "surfaces " + std::to_string(i) + " and " + std::to_string(j) +
                        " do not see each other alike (A_i F_ij = A_j F_ji)");
            row += e.view_factor[i * n + j];
        }
        require(std::abs(row - 1) <= tolerance,
                "view factors of surface " + std::to_string(i) + " must sum to 1");
    }
    require(emits, "at least one surface must emit");
}

}  // namespace

std::vector<double> exchange_areas(const Enclosure& e) {
    check(e);
    const auto n = static_cast<Eigen::Index>(e.area.size());
    const Eigen::Map<const Eigen::VectorXd> area(e.area.data(), n);
    const Eigen::Map<const Eigen::VectorXd> emissivity(e.emissivity.data(), n);
    const Eigen::Map<const Matrix> view(e.view_factor.data(), n, n);

    // Radiosities J = e E + (1 - e) F J; net heat of i = A_i e_i (E_i - sum_j F_ij J_j).
    const Eigen::VectorXd reflected = 1 - emissivity.array();
    const Matrix system = Matrix::Identity(n, n) - reflected.asDiagonal() * view;
    const Matrix emitted = emissivity.asDiagonal();
    const Matrix radiosity = system.partialPivLu().solve(emitted);
    const Eigen::VectorXd absorbing = area.array() * emissivity.array();
    const Matrix exchange = absorbing.asDiagonal() * (view * radiosity);

    std::vector<double> out(e.view_factor.size());
    Eigen::Map<Matrix>(out.data(), n, n) = 0.5 * (exchange + exchange.transpose());
    return out;
}

double coaxial_discs(double radius_1, double radius_2, double distance) {
    require(radius_1 > 0 && radius_2 > 0 && distance >= 0,
            "discs need radii above 0 and a distance of 0 or more");
    const double ratio = radius_2 / radius_1;
    const double s = 1 + (distance * distance + radius_2 * radius_2) / (radius_1 * radius_1);
    // Howell's formula, multiplied out so that far discs keep their digits.
    return 2 * ratio * ratio / (s + std::sqrt(std::max(s * s - 4 * ratio * ratio, 0.0)));
}

double parallel_rectangles(double width, double height, double distance) {
    require(width > 0 && height > 0 && distance >= 0,
            "rectangles need sides above 0 and a distance of 0 or more");
    if (distance < touching * std::min(width, height)) return 1;
    const double x = width / distance, y = height / distance;
    const double xx = std::sqrt(1 + x * x), yy = std::sqrt(1 + y * y);
    // The logarithm as log1p, so that far rectangles keep their digits.
    const double sum = 0.5 * std::log1p(x * x * y * y / (1 + x * x + y * y)) +
                       x * yy * std::atan(x / yy) + y * xx * std::atan(y / xx) - x * std::atan(x) -
                       y * std::atan(y);
    return 2 * sum / (constants::pi * x * y);
}

double perpendicular_rectangles(double width, double height, double depth) {
    require(width > 0 && height > 0 && depth >= 0,
            "rectangles need sides above 0 and a depth of 0 or more");
    if (depth < touching * std::min(width, height)) return 0;
    const double h = depth / width, w = height / width;
    const double hh = h * h, ww = w * w, both = hh + ww;
    const double logs = std::log((1 + ww) * (1 + hh) / (1 + both)) +
                        ww * std::log(ww * (1 + both) / ((1 + ww) * both)) +
                        hh * std::log(hh * (1 + both) / ((1 + hh) * both));
    return (w * std::atan(1 / w) + h * std::atan(1 / h) -
            std::sqrt(both) * std::atan(1 / std::sqrt(both)) + logs / 4) /
           (constants::pi * w);
}

double concentric_exchange(double area_inner, double area_outer, double emissivity_inner,
                           double emissivity_outer) {
    require(area_inner > 0 && area_outer > 0, "areas must be above 0");
    require(emissivity_inner > 0 && emissivity_inner <= 1 && emissivity_outer > 0 &&
                emissivity_outer <= 1,
            "emissivities must lie above 0 and up to 1");
    return area_inner /
           (1 / emissivity_inner + (1 / emissivity_outer - 1) * area_inner / area_outer);
}

double parallel_plates_exchange(double area, double emissivity_1, double emissivity_2) {
    return concentric_exchange(area, area, emissivity_1, emissivity_2);
}

}  // namespace drawwell
