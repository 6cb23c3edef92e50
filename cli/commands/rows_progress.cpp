#include "cli/commands/rows_progress.h"

#include <fmt/format.h>

#include <ostream>
#include <utility>

#include "cli/report/page_text.h"

namespace drawwell {
namespace {

constexpr double silence = 2;            // [s] a study shorter than this needs no progress
constexpr double terminal_period = 0.2;  // [s] between lines rewritten in place
constexpr double plain_period = 10;      // [s] between lines in a log

}  // namespace

RowsProgress::RowsProgress(std::ostream& out, std::size_t rows, bool terminal,
                           std::function<double()> clock)
    : out_(out),
      rows_(rows),
      terminal_(terminal),
      clock_(std::move(clock)),
      start_(clock_()),
      next_(start_ + (terminal ? silence : plain_period)) {}

RowsProgress::~RowsProgress() {
    if (line_open_) out_ << "\r\x1b[K" << std::flush;
}

void RowsProgress::finished(std::size_t done) {
    const std::lock_guard lock(speaking_);
    const double now = clock_();
    if (now < next_) return;
    next_ = now + (terminal_ ? terminal_period : plain_period);
    const double rate = static_cast<double>(done) / (now - start_);
    const std::string text =
        fmt::format("{} of {} stoves computed, {:.3g} a second, {} left", done, rows_, rate,
                    show_duration(static_cast<double>(rows_ - done) / rate));
    if (terminal_) {
        out_ << "\r\x1b[K" << text << std::flush;
        line_open_ = true;
    } else {
        out_ << text << "\n" << std::flush;
    }
}

}  // namespace drawwell
