#include "cli/commands/rows_progress.h"

#include <fmt/format.h>

#include <utility>

#include "cli/report/page_text.h"

namespace drawwell {

RowsProgress::RowsProgress(std::ostream& out, std::size_t rows, bool terminal,
                           std::function<double()> clock)
    : line_(out, terminal, std::move(clock)), rows_(rows) {}

void RowsProgress::finished(std::size_t done) {
    const std::lock_guard lock(speaking_);
    if (!line_.due()) return;
    const double rate = static_cast<double>(done) / line_.elapsed();
    line_.say(fmt::format("{} of {} stoves computed, {:.3g} a second, {} left", done, rows_, rate,
                          show_duration(static_cast<double>(rows_ - done) / rate)));
}

}  // namespace drawwell
