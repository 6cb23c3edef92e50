#include "cli/report/nice_steps.h"

#include <algorithm>
#include <cmath>

namespace drawwell {

NiceSteps nice_steps(double least, double most, int wanted) {
    const double span = most - least;
    if (!(span > 0) || !std::isfinite(span) || wanted < 1) return {};
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
