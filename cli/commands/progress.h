#pragma once

#include <functional>
#include <iosfwd>

namespace drawwell {

/// Seconds from some fixed moment, never going back.
double steady_seconds();

/// Tells how far a long burn is: nothing for the first two seconds; then, on a terminal, one line
/// rewritten in place and wiped at the end, elsewhere a line every ten seconds.
class Progress {
  public:
    /// `duration`: [s] of the burn. `clock` is replaced in tests.
    Progress(std::ostream& out, double duration, bool terminal,
             std::function<double()> clock = steady_seconds);
    ~Progress();
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    /// The burn is computed as far as `time` [s].
    void reached(double time);

  private:
    std::ostream& out_;
    double duration_;
    bool terminal_;
    std::function<double()> clock_;
    double start_;
    double next_;  // when to speak next, by the clock
    bool line_open_ = false;
};

}  // namespace drawwell
