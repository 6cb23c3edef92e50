#include "solver/table.h"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "solver/errors.h"

namespace drawwell {

Table::Table(double constant) : y_{constant} {}

Table::Table(std::vector<double> x, std::vector<double> y) : x_(std::move(x)), y_(std::move(y)) {
    if (x_.empty() || x_.size() != y_.size())
        throw InputError("a table needs as many values as points (and at least one)");
    if (std::adjacent_find(x_.begin(), x_.end(), [](double a, double b) { return !(a < b); }) !=
        x_.end())
        throw InputError("a table's points must increase");
}

double Table::operator()(double x) const {
    if (!(x > x_.front())) return y_.front();
    if (x >= x_.back()) return y_.back();
    std::size_t i = 1;
    if (x_.size() > 12)
        i = static_cast<std::size_t>(std::upper_bound(x_.begin(), x_.end(), x) - x_.begin());
    else
        while (x_[i] <= x) ++i;
    const double share = (x - x_[i - 1]) / (x_[i] - x_[i - 1]);
    return y_[i - 1] + share * (y_[i] - y_[i - 1]);
}

}  // namespace drawwell
