#pragma once

#include <vector>

namespace drawwell {

/// A quantity tabulated against another, linear between points and level beyond them.
class Table {
  public:
    Table() = default;
    /// One value everywhere.
    explicit Table(double constant);
    /// `x` strictly increasing, `y` of the same length, at least one point; InputError otherwise.
    Table(std::vector<double> x, std::vector<double> y);

    double operator()(double x) const;
    double first() const { return x_.front(); }
    double last() const { return x_.back(); }
    const std::vector<double>& x() const { return x_; }
    const std::vector<double>& y() const { return y_; }

  private:
    std::vector<double> x_{0.0};
    std::vector<double> y_{0.0};
};

}  // namespace drawwell
