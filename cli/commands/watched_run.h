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

/// Whether a stream (1, 2) is a terminal that takes more than plain lines; TERM=dumb does not.
bool is_terminal(int stream);

/// Whether standard output may be coloured: such a terminal, unless NO_COLOR is set to anything.
bool terminal_with_colour();

}  // namespace drawwell
