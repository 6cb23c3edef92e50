#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/read/units.h"
#include "cli/study/run_rows.h"

namespace drawwell {

/// Something that a log is to tell, known beforehand within a spread: a figure of data/ or the day
/// (`uncertain_inputs`), a key of the stove file, or how the log's clock stands.
struct FitInput {
    enum class Sort { uncertain, key, clock };
    Sort sort = Sort::uncertain;
    std::string name;   // `fuel_bed.surface_rate`, `port.width`, `clock`
    double middle = 0;  // most likely beforehand, SI; of what is uncertain: as filed
    double spread = 0;  // one standard deviation; relative of what is uncertain but outdoors
    Quantity quantity = Quantity::number;  // of keys and the clock

    /// The value so many deviations off: SI, or of what is uncertain a factor (kelvin more, of
    /// `day.outdoor`).
    double value(double deviations) const;
    /// That as a person reads it: `x 0.88`, `+3.1 K`, `68 mm`.
    std::string shown(double deviations) const;
};

/// Reads `fuel_bed.surface_rate`, `port.width=70mm+-5mm` or `port.width=+-5mm` (about what the file
/// says) for a stove. InputError: unknown, no figure, no spread, or a key without one.
FitInput parse_fit_input(const std::string& text, const Stove& stove, const Library& library);

/// Reads what the log's clock showed at lighting: `4min`, `0:04:00`, known exactly, or with its
/// spread, `4min+-1min`. InputError.
FitInput parse_clock_offset(const std::string& text);

/// All that is uncertain of a stove, each as an input.
std::vector<FitInput> uncertain_fit_inputs(const Stove& stove, const Library& library);

/// What a burn is to be with inputs so many deviations off each; the clock is no part of it.
Variant variant_of(const std::vector<FitInput>& inputs, const std::vector<double>& deviations);

}  // namespace drawwell
