#include "cli/commands/progress.h"

#include <fmt/format.h>

#include <utility>

#include "cli/read/units.h"
#include "cli/report/page_text.h"

namespace drawwell {

Progress::Progress(std::ostream& out, double duration, bool terminal, std::function<double()> clock)
    : line_(out, terminal, std::move(clock)), duration_(duration) {}

void Progress::reached(double time) {
    if (!line_.due()) return;
    const double share = duration_ > 0 ? time / duration_ : 1;
    line_.say(fmt::format("{} of {} computed, {:.0f} %", show_duration(time),
                          show_duration(duration_), to_percent(share)));
}

}  // namespace drawwell
