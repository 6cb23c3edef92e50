#pragma once

#include <span>
#include <string>
#include <vector>

#include "cli/report/burn_log.h"
#include "cli/report/read_result.h"
#include "cli/report/web/page_panels.h"
#include "models/stove.h"

namespace drawwell {

/// A burn made ready for the page.
struct PageRun {
    std::string name;  // that tells it from the others
    BurnResult burn;
    Stove stove;
    std::vector<PagePanel> panels;
    std::vector<double> events;          // [s] at which something was put in, moved or taken off
    std::vector<LoggedColumn> log = {};  // what the builder noted
};

/// Reads its stove anew from the result, and from that the answers on what is fitted.
/// InputError: the stove cannot be read.
PageRun page_run(const BurnResult& burn, const std::string& name);

/// The moment [s] at which a page shows its stoves first, the same for all of them: when the first
/// one's riser gas is hottest, of the time that every run covers.
double shown_moment(std::span<const PageRun> runs);

/// Adds what was noted during that burn; a column that no figure shows gets one of its own.
void add_log(PageRun& run, std::vector<LoggedColumn> log);

/// What was noted of a line of its figures; null: nothing.
const LoggedColumn* logged(const PageRun& run, const ShownSeries& series);

}  // namespace drawwell
