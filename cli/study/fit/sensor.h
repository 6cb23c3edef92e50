#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "cli/read/units.h"
#include "cli/study/fit/burn_log.h"
#include "models/bead_reading.h"

namespace drawwell {

/// The whole of what lies on a stove's grate and in its feed, as a scale under the stove shows it
/// once its tare is off: dry wood, water, embers and ash [kg]. A column of logs alone.
inline constexpr std::string_view fuel_mass = "fuel_mass";

/// How far a reading may be off, one standard deviation each, in SI.
struct SensorNoise {
    double reading = 0;          // of each reading by itself
    double common = 0;           // of all alike, as calibration and tare are
    double common_relative = 0;  // [-] the same in proportion to the reading in °C, if that is more
    std::string source;

    /// What all readings are off alike at a value [SI] if they are off by one deviation.
    double common_at(double value, Quantity quantity) const;
};

/// An instrument: what of the model it reads, and how well.
struct Sensor {
    std::string header;  // its name in the log; of one that is not there, the column's
    std::string column;  // of the model
    std::string cell;    // `[0.105m]`, of a divided part; empty: its first
    std::string unit;    // SI
    Quantity quantity = Quantity::number;
    std::optional<Bead> bead;  // it reads gas by way of it
    SensorNoise noise;

    /// `plate_temperature[0.105m]`
    std::string what() const { return column + cell; }
};

/// A sensor with the readings that it has [SI]; without gaps.
struct LoggedSensor {
    Sensor sensor;
    std::vector<double> time;  // [s] by the log's clock
    std::vector<double> value;
};

/// What the command line says of a log's columns.
struct SensorWishes {
    std::vector<std::string> maps = {};    // `TC1=plate_temperature[0.105m]`, ` in °F` behind it
    std::vector<std::string> beads = {};   // `TC2=1.5mm bare`, `TC2=3mm shielded`, `TC2=none`
    std::vector<std::string> noises = {};  // `TC2=2K`, `TC2=2K,5K`: of each reading, of all alike
};

/// In what the places of a column's cells are told, by its axis: loads stand by the time when they
/// are due.
Quantity place_quantity(std::string_view axis);

/// A sensor of a model's column with the usual noise of its kind, and on gas the usual bead.
/// InputError: no such column.
Sensor usual_sensor(std::string_view column, std::string_view cell);

/// The sensors of a log: those mapped, and those whose headers are the model's own names. A
/// thermocouple in gas is a bare bead of 3 mm unless it is said otherwise. InputError names the
/// option, or file, line and column of what is wrong; also when nothing is mapped.
std::vector<LoggedSensor> sensors_of(const BurnLog& log, const SensorWishes& wishes);

/// What would be worth logging besides: the usual places that `logged` leaves out.
std::vector<Sensor> candidate_sensors(std::span<const LoggedSensor> logged);

}  // namespace drawwell
