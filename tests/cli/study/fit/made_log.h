#pragma once

#include <cmath>
#include <random>
#include <span>
#include <vector>

#include "cli/study/fit/match_log.h"
#include "tests/cli/read/small_stove.h"

namespace drawwell::tests {

// Logs invented by our own model, so that what is to be found is known.

/// A stove that is cheap to burn: the small one in few cells.
inline Study cheap_study() {
    Study study;
    study.files = {{"small.toml", std::string(small_stove), {}}};
    study.sets = overrides({"burn.refine=0.25"});
    study.variants = {Variant{}};
    return study;
}

/// What a thermocouple at the outlet (bare), one on the plate, a draft gauge and a scale read.
inline std::vector<Sensor> usual_sensors() {
    return {usual_sensor("outlet_gas_temperature", ""), usual_sensor("plate_temperature", "[0]"),
            usual_sensor("flue_draft", ""), usual_sensor("fuel_mass", "")};
}

/// Readings of sensors each half minute of a stove so many deviations off, with their noise, all
/// off alike by one draw each; the log's clock showing `lit` [s] at lighting. InputError: there is
/// no such burn.
inline std::vector<LoggedSensor> made_log(const Study& study, const Library& library,
                                          std::span<const Sensor> sensors, const Variant& truth,
                                          double lit, double until, std::mt19937_64& random) {
    std::normal_distribution<double> normal;
    Journal none;
    const Tracks tracks =
        burn_tracks({study, library, sensors, until}, std::vector{truth}, none).front();
    if (!tracks.error.empty()) throw InputError(tracks.error);
    std::vector<LoggedSensor> logged;
    for (std::size_t k = 0; k < sensors.size(); ++k) {
        LoggedSensor one{sensors[k], {}, {}};
        const SensorNoise& noise = sensors[k].noise;
        const double alike = normal(random);
        for (double t = 15; t < until; t += 30) {
            const double value = track_at(tracks, k, t);
            one.time.push_back(t + lit);
            one.value.push_back(value + noise.reading * normal(random) +
                                alike * noise.common_at(value, sensors[k].quantity));
        }
        logged.push_back(std::move(one));
    }
    return logged;
}

/// Inputs drawn as they were known beforehand.
inline Numbers drawn(std::size_t count, std::mt19937_64& random) {
    std::normal_distribution<double> normal;
    Numbers deviations(count);
    for (double& each : deviations) each = normal(random);
    return deviations;
}

}  // namespace drawwell::tests
