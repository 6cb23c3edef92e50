#pragma once

#include <string>
#include <vector>

namespace drawwell {

/// What another program computed, as its case keeps it: a line about the program, one of places or
/// times, and a row of values for each quantity.
struct Reference {
    std::string program;     // its name, version and settings, from its own output
    std::vector<double> at;  // [s] times, or [m] places
    std::vector<std::string> names;
    std::vector<std::vector<double>> values;  // [quantity][at], SI

    /// InputError: there is no such quantity.
    const std::vector<double>& of(const std::string& name) const;
    /// Where the quantities are one along places, `radius.0.625` and so on in millimetres, in
    /// order: its value in between, at a place [m] and the time of that index.
    double between(double place, std::size_t time) const;
};

/// reference.csv of a case: `simulators/scipy`. InputError: it can't be read.
Reference read_reference(const std::string& name);

}  // namespace drawwell
