#include "cli/commands/progress.h"

#include <fmt/format.h>

#include <chrono>
#include <ostream>
#include <utility>

#include "cli/read/units.h"
#include "cli/report/page_text.h"

namespace drawwell {
namespace {

constexpr double silence = 2;            // [s] a burn shorter than this needs no progress
constexpr double terminal_period = 0.2;  // [s] between lines rewritten in place
constexpr double plain_period = 10;      // [s] between lines in a log

}  // namespace

double steady_seconds() {
    using Seconds = std::chrono::duration<double>;
    return Seconds(std::chrono::steady_clock::now().time_since_epoch()).count();
}

Progress::Progress(std::ostream& out, double duration, bool terminal, std::function<double()> clock)
    : out_(out),
      duration_(duration),
      terminal_(terminal),
      clock_(std::move(clock)),
      start_(clock_()),
      next_(start_ + (terminal ? silence : plain_period)) {}

Progress::~Progress() {
    if (line_open_) out_ << "\r\x1b[K" << std::flush;
}

void Progress::reached(double time) {
    const double now = clock_();
    if (now < next_) return;
    next_ = now + (terminal_ ? terminal_period : plain_period);
    const double share = duration_ > 0 ? time / duration_ : 1;
    const std::string text = fmt::format("{} of {} computed, {:.0f} %", show_duration(time),
                                         show_duration(duration_), to_percent(share));
    if (terminal_) {
        out_ << "\r\x1b[K" << text << std::flush;
        line_open_ = true;
    } else {
        out_ << text << "\n" << std::flush;
    }
}

}  // namespace drawwell
