#pragma once

#include <string>
#include <vector>

#include "solver/results.h"

namespace CLI {
class App;
}

namespace drawwell {

/// Which series of which result a command is to show, as told on the command line.
struct SeriesRequest {
    std::string file;
    std::vector<std::string> columns;  // empty: all
    std::string every;                 // a time; empty: every instant
};

/// Adds RUN, --columns and --every, which fill `request`.
void add_series_options(CLI::App& command, SeriesRequest& request);

/// What was asked for, and the stove's title.
struct ChosenSeries {
    std::string title;
    Results results;
};

/// FileError, InputError.
ChosenSeries read_series(const SeriesRequest& request);

}  // namespace drawwell
