#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace drawwell {

/// A direction in which a part is divided: `riser_cell`, `plate_radius`.
struct Axis {
    std::string name;
    std::string unit;               // unit of the positions, SI
    std::string meaning;            // one phrase, for people
    std::vector<double> positions;  // where the cells stand
};

/// One quantity over the burn. Values are SI and time-major: values[step * width + cell].
struct Column {
    std::string name;     // `riser_gas_temperature`
    std::string unit;     // SI: K, Pa, kg/s, W, kg, 1
    std::string meaning;  // one phrase, in the trade's words
    std::string axis;     // name of an Axis, or empty: one value an instant
    std::size_t width = 1;
    std::vector<double> values;
};

/// Named columns sampled at the same instants.
struct Results {
    std::vector<double> time;  // [s] after lighting, increasing
    std::vector<Axis> axes;
    std::vector<Column> columns;

    /// The column of that name, or nullptr.
    const Column* find(std::string_view name) const;
};

}  // namespace drawwell
