#pragma once

#include "cli/commands/interrupt_watch.h"
#include "cli/commands/progress.h"
#include "models/burn.h"

namespace drawwell {

/// Progress on standard error and Ctrl-C while it lives.
class WatchedRun {
  public:
    /// `duration`: [s] of the burn to compute. `quiet`: no progress.
    WatchedRun(double duration, bool quiet);
    WatchedRun(const WatchedRun&) = delete;
    WatchedRun& operator=(const WatchedRun&) = delete;

    const BurnWatch& watch() const { return watch_; }
    bool interrupted() const { return interrupt_.raised(); }

  private:
    InterruptWatch interrupt_;
    Progress progress_;
    BurnWatch watch_;
};

/// Whether standard output may be coloured.
bool terminal_with_colour();

}  // namespace drawwell
