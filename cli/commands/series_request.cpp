#include "cli/commands/series_request.h"

#include <CLI/CLI.hpp>

#include "cli/read/units.h"
#include "cli/report/choose_columns.h"
#include "cli/report/read_result.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

double interval_of(const std::string& every) {
    if (every.empty()) return 0;
    double interval = 0;
    try {
        interval = parse_quantity(every, Quantity::time);
    } catch (const InputError& error) {
        throw InputError("--every " + every + ": " + error.what());
    }
    if (!(interval > 0)) throw InputError("--every " + every + ": must be more than nothing");
    return interval;
}

}  // namespace

void add_series_options(CLI::App& command, SeriesRequest& request) {
    command.add_option("RUN", request.file, "result of drawwell burn (HDF5)")->required();
    command
        .add_option("--columns", request.columns,
                    "which series, parted by commas; `drawwell list columns` names all")
        ->delimiter(',')
        ->allow_extra_args(false)
        ->type_name("A,B");
    command
        .add_option("--every", request.every, "one row each such time, e.g. 60s; default: all rows")
        ->type_name("TIME");
}

ChosenSeries read_series(const SeriesRequest& request) {
    const double every = interval_of(request.every);
    const BurnResult result = read_result(request.file);
    return {result.record.title, choose_columns(result.results, request.columns, every)};
}

}  // namespace drawwell
