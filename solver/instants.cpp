#include "solver/instants.h"

#include <algorithm>

namespace drawwell {

std::vector<double> distinct_instants(std::vector<double> instants) {
    std::sort(instants.begin(), instants.end());
    // std::unique compares with the one that it kept last, so a row of close ones is not drawn out.
    const auto one = [](double kept, double next) { return next - kept <= same_instant; };
    instants.erase(std::unique(instants.begin(), instants.end(), one), instants.end());
    return instants;
}

double instant_among(const std::vector<double>& distinct, double time) {
    const auto after = std::upper_bound(distinct.begin(), distinct.end(), time);
    if (after != distinct.begin() && time - *(after - 1) <= same_instant) return *(after - 1);
    if (after != distinct.end() && *after - time <= same_instant) return *after;
    return time;
}

}  // namespace drawwell
