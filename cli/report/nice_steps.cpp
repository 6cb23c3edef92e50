#include "cli/report/nice_steps.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace drawwell {

NiceSteps nice_steps(double least, double most, int wanted) {
    if (!std::isfinite(least) || !std::isfinite(most) || least >= most || wanted < 1) return {};
    // The span of two huge numbers need not be a number.
    if (most / 2 - least / 2 > std::numeric_limits<double>::max() / 4) return {};
    const double span = most - least;
    const double rough = span / wanted;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    const double ratio = rough / power;
    NiceSteps steps;
    steps.step = power * (ratio > 5 ? 10 : ratio > 2 ? 5 : ratio > 1 ? 2 : 1);
    if (!(steps.step > 0) || least + steps.step == least) return {};  // below what a double tells
    const double first = std::ceil(least / steps.step - 1e-9);
    const double last = std::floor(most / steps.step + 1e-9);
    steps.first = first * steps.step;
    steps.count = static_cast<int>(last - first) + 1;
    steps.decimals = std::clamp(-static_cast<int>(std::floor(std::log10(steps.step) + 1e-9)), 0, 9);
    return steps;
}

}  // namespace drawwell
