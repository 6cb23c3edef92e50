#pragma once

#include <vector>

namespace drawwell {

/// A quantity that is set now and then: each value holds from its time until the next; before the
/// first time the first value holds.
class Steps {
  public:
    Steps() = default;
    /// One value always.
    explicit Steps(double constant);
    /// `time` strictly increasing, `value` of the same length, at least one; InputError otherwise.
    Steps(std::vector<double> time, std::vector<double> value);

    double operator()(double time) const;
    const std::vector<double>& time() const { return time_; }
    const std::vector<double>& value() const { return value_; }

  private:
    std::vector<double> time_{0.0};
    std::vector<double> value_{0.0};
};

}  // namespace drawwell
