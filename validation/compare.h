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

/// A number of a source beside the program's own, judged by the share that they are apart [-].
struct Beside {
    std::string name;    // of the case
    std::string metric;  // what it is, whose it is, and its unit: `Rennels, right angle`
    double source = 0;
    double value = 0;
    double limit = 0;  // [-] most that passes
};

/// The row shows both numbers; fails the running test beyond the limit.
void compare_beside(const Beside& beside);

/// The same without failing, where sources disagree or a miss is known.
void show_beside(const Beside& beside);

/// How far a value is from its reference, as a share of that [-].
inline double share_off(double value, double reference) {
    return std::abs(value / reference - 1);
}

}  // namespace drawwell
