#pragma once

#include <cmath>
#include <string>

namespace drawwell {

/// One number by which a case is judged, against its limit.
struct Comparison {
    std::string name;    // of the case: its folder, `analytic/cooling_lump`
    std::string metric;  // what is compared, in a phrase, with its unit
    double value = 0;
    double limit = 0;  // most that passes; the case's README says why that much
};

/// Fails the running test if the value is beyond its limit, and adds a row to the table that
/// the environment variable DRAWWELL_VALIDATION_TABLE names, if it is set.
void compare(const Comparison& comparison);

/// Adds the row without failing: a miss that is known and that the case's README explains.
void show(const Comparison& comparison);

/// How far a value is from its reference, as a share of that [-].
inline double share_off(double value, double reference) {
    return std::abs(value / reference - 1);
}

}  // namespace drawwell
