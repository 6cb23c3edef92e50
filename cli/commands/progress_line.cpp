#include "cli/commands/progress_line.h"

#include <chrono>
#include <ostream>
#include <utility>

namespace drawwell {
namespace {

constexpr double silence = 2;            // [s] work shorter than this needs no progress
constexpr double terminal_period = 0.2;  // [s] between lines rewritten in place
constexpr double plain_period = 10;      // [s] between lines in a log

}  // namespace

double steady_seconds() {
    using Seconds = std::chrono::duration<double>;
    return Seconds(std::chrono::steady_clock::now().time_since_epoch()).count();
}

ProgressLine::ProgressLine(std::ostream& out, bool terminal, std::function<double()> clock)
    : out_(out),
      terminal_(terminal),
      clock_(std::move(clock)),
      start_(clock_()),
      now_(start_),
      next_(start_ + (terminal ? silence : plain_period)) {}

ProgressLine::~ProgressLine() {
    if (open_) out_ << "\r\x1b[K" << std::flush;
}

bool ProgressLine::due() {
    now_ = clock_();
    if (now_ < next_) return false;
    next_ = now_ + (terminal_ ? terminal_period : plain_period);
    return true;
}

void ProgressLine::say(std::string_view text) {
    if (terminal_)
        out_ << "\r\x1b[K" << text << std::flush;
    else
        out_ << text << "\n" << std::flush;
    open_ = terminal_;
}

}  // namespace drawwell
