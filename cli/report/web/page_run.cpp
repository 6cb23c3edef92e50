#include "cli/report/web/page_run.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/fittings/fittings.h"
#include "models/stops.h"

namespace drawwell {

PageRun page_run(const BurnResult& burn, const std::string& name) {
    const Library library = read_library();
    PageRun run{name,
                burn,
                read_stove(burn.record.stove_resolved, name, {}, library),
                page_panels(burn.results),
                {}};
    // An older result may tell whole paths.
    RunRecord& record = run.burn.record;
    record.stove_name = told_name(record.stove_name);
    record.started_from = told_name(record.started_from);
    run.burn.summary.fittings = fitting_answers(run.stove, burn.results);
    run.events = stops_of(run.stove);
    return run;
}

double shown_moment(std::span<const PageRun> runs) {
    double begin = 0, end = std::numeric_limits<double>::infinity();
    for (const PageRun& run : runs) {
        const std::vector<double>& time = run.burn.results.time;
        if (time.empty()) continue;
        begin = std::max(begin, time.front());
        end = std::min(end, time.back());
    }
    const Results& first = runs.front().burn.results;
    const Column* gas = first.find("riser_gas_temperature");
    double at = begin, most = 0;
    for (std::size_t row = 0; gas && row < first.time.size(); ++row)
        for (std::size_t cell = 0; cell < gas->width; ++cell) {
            const double here = gas->values[row * gas->width + cell];
            if (first.time[row] < begin || first.time[row] > end || !(here > most)) continue;
            most = here;
            at = first.time[row];
        }
    return at;
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
