#pragma once

#include <span>
#include <string>
#include <vector>

#include "models/build_network.h"

namespace drawwell {

/// Puts loads in at their times. What does not fit is tried again each minute, and lets later loads
/// that fit go in before it.
class Loading {
  public:
    /// `built` has loads (a bed) and outlives this.
    explicit Loading(const BuiltStove& built) : built_(built) {}

    /// Puts in what is due at that time [s] and fits. Time of the next try of what waits, or zero.
    double at_stop(double time, std::span<double> fuel);

    /// Loads that went in late, and those that never did, for the report.
    std::vector<std::string> remarks() const;
    double put_value() const { return put_value_; }  // [J] higher heating value, so far
    double put_wood() const { return put_wood_; }    // [kg] dry, so far

  private:
    bool goes_in(const BuiltStove::LoadTime& load, double time, std::span<double> fuel);

    const BuiltStove& built_;
    std::size_t next_ = 0;
    std::vector<BuiltStove::LoadTime> waiting_;  // in order of time
    std::vector<std::string> remarks_;
    double put_value_ = 0, put_wood_ = 0;
};

}  // namespace drawwell
