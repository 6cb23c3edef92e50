#include "cli/report/web/page_run.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/fittings/fittings.h"

namespace drawwell {
namespace {

std::size_t hottest_instant(const Results& results) {
    const Column* gas = results.find("riser_gas_temperature");
    std::size_t at = 0;
    double most = 0;
    if (gas)
        for (std::size_t i = 0; i < gas->values.size(); ++i)
            if (gas->values[i] > most) {
                most = gas->values[i];
                at = i / gas->width;
            }
    return at;
}

}  // namespace

PageRun page_run(const BurnResult& burn, const std::string& name) {
    PageRun run{name, burn, {}, page_panels(burn.results), hottest_instant(burn.results)};
    run.stove = read_stove(burn.record.stove_resolved, name, {}, read_library());
    run.burn.summary.fittings = fitting_answers(run.stove, burn.results);
    return run;
}

const LoggedColumn* logged(const PageRun& run, const ShownSeries& series) {
    const auto found = std::find_if(run.log.begin(), run.log.end(), [&](const LoggedColumn& each) {
        return each.column == series.column && each.cell == series.cell;
    });
    return found == run.log.end() ? nullptr : &*found;
}

void add_log(PageRun& run, std::vector<LoggedColumn> log) {
    run.log = std::move(log);
    for (const LoggedColumn& each : run.log) {
        const auto shows = [&](const ShownSeries& series) {
            return series.column == each.column && series.cell == each.cell;
        };
        const bool shown =
            std::any_of(run.panels.begin(), run.panels.end(), [&](const PagePanel& panel) {
                return std::any_of(panel.shown.series.begin(), panel.shown.series.end(), shows);
            });
        const Column* column = run.burn.results.find(each.column);
        if (shown || !column) continue;
        run.panels.push_back({fmt::format("logged-{}-{}", each.column, each.cell),
                              "What the log has that no other figure shows.",
                              panel_of(run.burn.results, *column, {each.cell})});
    }
}

}  // namespace drawwell
