#pragma once

#include <span>
#include <string>
#include <vector>

#include "models/build_network.h"

namespace drawwell {

/// Puts loads in at their times; what does not fit is tried again each minute.
class Loading {
  public:
    explicit Loading(const BuiltStove& built) : built_(built) {}

    /// Puts in what is due and fits. Time [s] of the next try of a load that waits, or zero.
    double at_stop(double time, std::span<double> state);

    /// What waited, and what never went in, for the report.
    std::vector<std::string> remarks() const;
    /// Heating value [J] and dry wood [kg] put in so far.
    double put_value() const { return put_value_; }
    double put_wood() const { return put_wood_; }

  private:
    const BuiltStove& built_;
    std::size_t next_ = 0;
    std::vector<BuiltStove::LoadTime> waiting_;
    std::vector<std::string> remarks_;
    double put_value_ = 0, put_wood_ = 0;
};

}  // namespace drawwell
