#pragma once

#include <stdexcept>
#include <string>
#include <vector>

#include "cli/study/fit/fit_input.h"
#include "cli/study/fit/posterior.h"
#include "cli/study/fit/tracks.h"

namespace drawwell {

/// What is to be matched to a log, and how.
struct MatchRequest {
    const Study& study;  // one file
    const Library& library;
    const std::vector<LoggedSensor>& logged;
    std::vector<FitInput> inputs;  // asked for; none: all that the log tells
    FitInput clock;                // fitted if it has a spread
    bool rest_as_filed = false;    // all that is not asked for counts as known
};

/// An input as the log has it.
struct MatchedInput {
    FitInput input;
    double estimate = 0;   // [deviations]
    double deviation = 1;  // [deviations] that are left of one
    bool told = false;     // asked for, or told by the log
};

/// A sensor beside the stove, at its readings.
struct MatchedSensor {
    Sensor sensor;
    std::vector<double> time;                      // [s] after lighting, as estimated
    std::vector<double> measured, filed, matched;  // SI
    double rms = 0;                                // of measured less matched
    double counted = 0;          // noise of each reading that the interval rests on, SI
    double common_estimate = 0;  // [deviations] that all readings seem to be off alike
};

/// A measurement that is not in the log, and the share by which it would narrow what is left: of
/// the variance of all inputs together [-].
struct NextMeasurement {
    Sensor sensor;
    double gain = 0;
    std::size_t most = 0;     // input that it narrows most
    double from = 1, to = 1;  // [deviations] of that one
};

/// What a log says of a stove.
struct Match {
    std::vector<MatchedInput> inputs;  // all that were fitted, those asked for and the clock first
    std::vector<Numbers> correlation;  // of the inputs
    std::vector<MatchedSensor> sensors;
    std::vector<Blurred> blurred;
    std::vector<NextMeasurement> next;  // the most helpful first
    std::vector<std::string> rest;      // of so little effect that it was taken straight
    std::size_t burns = 0;
    bool settled = true;
};

/// [deviations] to either side, between which 95 % of a normal spread lie.
inline constexpr double half_interval = 1.96;

/// The watch said stop.
class MatchStopped : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// Matches a stove to a log: the most likely inputs, given what was known of them beforehand and
/// how well the sensors read. All that is uncertain takes part, so that what is asked for is told
/// no better than the rest allows; what hardly moves the log is taken straight about the file's
/// figures, and so is what all readings of a sensor are off alike. Where the stove and a sensor
/// differ by more than one and a half of its noise, what they differ by counts as its noise, as far
/// as it hangs together from reading to reading. InputError; MatchStopped.
Match match_log(const MatchRequest& request, Journal& journal, const RowsWatch& watch = {});

}  // namespace drawwell
