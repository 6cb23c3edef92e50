#include "models/laws/losses.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

double checked_share(double share, const std::string& what) {
    if (!(share >= 0 && share <= 1)) throw InputError(what + " must lie in 0..1");
    return share;
}

}  // namespace

double entrance_loss() {
    return 0.5;
}

double exit_loss() {
    return 1.0;
}

double mitre_bend_loss(double angle) {
    if (!(angle >= 0 && angle <= constants::pi))
        throw InputError("a bend turns the flow by 0 to 180 degrees");
    const double s = std::sin(0.5 * angle);
    return s * (0.42 + 2.56 * s * s);
}

double tee_side_loss() {
    return 1.2;
}

double slow_bend_factor(double reynolds) {
    return std::pow(2e5 / std::clamp(reynolds, 100.0, 2e5), 0.2);
}

double port_loss(double share_before, double share_after) {
    const double a = checked_share(share_before, "the port's share of the duct before it");
    const double b = checked_share(share_after, "the port's share of the duct after it");
    const double k = 0.707 * std::sqrt(1 - a) + 1 - b;
    return k * k;
}

double sudden_expansion_loss(double area_ratio) {
    const double rest = 1 - checked_share(area_ratio, "the narrow duct's share of the wide one");
    return rest * rest;
}

double sudden_contraction_loss(double area_ratio) {
    return 0.5 * (1 - checked_share(area_ratio, "the narrow duct's share of the wide one"));
}

double turn_under_plate_loss(double gap_over_bore) {
    if (!(gap_over_bore > 0)) throw InputError("the gap under the plate must be above 0");
    return 1 + 0.155 / (gap_over_bore * gap_over_bore);
}

double hole_loss() {
    return 1.707 * 1.707;
}

}  // namespace drawwell
