#include "cli/report/web/page_run.h"

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

}  // namespace drawwell
