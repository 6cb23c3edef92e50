#pragma once

#include <functional>
#include <iosfwd>

#include "cli/commands/progress_line.h"

namespace drawwell {

/// Tells how far a long burn is.
class Progress {
  public:
    /// `duration`: [s] of the burn.
    Progress(std::ostream& out, double duration, bool terminal,
             std::function<double()> clock = steady_seconds);

    /// The burn is computed as far as `time` [s].
    void reached(double time);

  private:
    ProgressLine line_;
    double duration_;
};

}  // namespace drawwell
