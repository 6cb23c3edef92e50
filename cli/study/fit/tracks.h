#pragma once

#include <span>
#include <string>
#include <vector>

#include "cli/study/fit/sensor.h"
#include "cli/study/run_rows.h"

namespace drawwell {

/// What sensors would read over one burn.
struct Tracks {
    std::vector<double> time;                // [s] after lighting
    std::vector<std::vector<double>> value;  // [sensor][instant] SI; empty: not in this stove
    std::string error;                       // why there are none
    bool done = false;                       // false: stopped before
};

/// Value of a track at a time [s] after lighting, linear between; level before and behind.
double track_at(const Tracks& tracks, std::size_t sensor, double time);

/// The burns to be computed: `study` has one file; what differs is a variant each.
struct TrackPlan {
    const Study& study;
    const Library& library;
    std::span<const Sensor> sensors;
    double duration = 0;  // [s] of each burn, whatever the file says
};

/// Computes what the sensors read in each variant, on several threads; those that the journal holds
/// are taken from it. A variant that can't be says why. FileError: the journal can't be written.
std::vector<Tracks> burn_tracks(const TrackPlan& plan, std::span<const Variant> variants,
                                Journal& journal, const RowsWatch& watch = {});

/// InputError: a sensor reads a column that the stove does not have, or a place beyond its ends,
/// with the nearest. Before anything is burned.
void check_places(std::span<const LoggedSensor> logged, const Stove& stove, const Library& library);

/// Cell of a sensor in a column: that nearest to where it says it is; column.width: there is none.
std::size_t cell_of(const Results& results, const Column& column, const std::string& cell);

}  // namespace drawwell
