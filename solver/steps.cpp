#include "solver/steps.h"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "solver/errors.h"

namespace drawwell {

Steps::Steps(double constant) : value_{constant} {}

Steps::Steps(std::vector<double> time, std::vector<double> value)
    : time_(std::move(time)), value_(std::move(value)) {
    if (time_.empty() || time_.size() != value_.size())
        throw InputError("steps need as many values as times (and at least one)");
    if (std::adjacent_find(time_.begin(), time_.end(),
                           [](double a, double b) { return !(a < b); }) != time_.end())
        throw InputError("the times of steps must increase");
}

double Steps::operator()(double time) const {
    const auto after = std::upper_bound(time_.begin(), time_.end(), time) - time_.begin();
    return value_[static_cast<std::size_t>(std::max<std::ptrdiff_t>(after - 1, 0))];
}

}  // namespace drawwell
