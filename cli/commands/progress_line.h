#pragma once

#include <functional>
#include <iosfwd>
#include <string_view>

namespace drawwell {

/// Seconds from some fixed moment, never going back.
double steady_seconds();

/// What is said of long work while it goes on: nothing for the first two seconds; then, on a
/// terminal, one line rewritten in place and wiped at the end, elsewhere a line every ten seconds.
class ProgressLine {
  public:
    /// `clock` [s] is replaced in tests.
    ProgressLine(std::ostream& out, bool terminal, std::function<double()> clock);
    ~ProgressLine();
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    /// Whether it is time to say something; then it is not for a while.
    bool due();
    void say(std::string_view text);
    /// [s] since it began, at the last time that it was asked whether it is due.
    double elapsed() const { return now_ - start_; }

  private:
    std::ostream& out_;
    bool terminal_;
    std::function<double()> clock_;
    double start_, now_, next_;  // [s] by the clock; when to speak next
    bool open_ = false;
};

}  // namespace drawwell
