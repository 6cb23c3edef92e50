#pragma once

#include <cmath>
#include <string>
#include <string_view>

namespace drawwell {

/// One number by which a case is judged, against its limit.
struct Comparison {
    std::string name;    // of the case: its folder, `analytic/cooling_lump`
    std::string metric;  // what is compared, in a phrase, with its unit
    double value = 0;
    double limit = 0;      // most that passes; the case's README says why that much
    std::string own = {};  // what drawwell has, where `value` is how far that is off something
};

/// Fails the running test if the value is beyond its limit, and adds a row to the file that
/// the environment variable DRAWWELL_VALIDATION_ROWS names, if it is set: case, metric, own, value,
/// limit, verdict, with tabs between. No figure of a run may stand in `name` or `metric`: by these
/// two a row is found again in the table of the last run.
void compare(const Comparison& comparison);

/// Adds the row without failing: a miss that is known. `why` it misses, in a few words for the
/// table; the case's README explains.
void show(const Comparison& comparison, std::string_view why);

/// A number of a source beside the program's own, judged by the share that they are apart [-].
struct Beside {
    std::string name;    // of the case
    std::string metric;  // what it is, whose it is, and its unit: `Rennels, right angle`
    double source = 0;
    double value = 0;
    double limit = 0;   // [-] most that passes
    double spread = 0;  // of the program's own, where it is known
};

/// The row shows both numbers; fails the running test beyond the limit.
void compare_beside(const Beside& beside);

/// The same without failing, where sources disagree or a miss is known, and why.
void show_beside(const Beside& beside, std::string_view why);

/// How far a value is from its reference, as a share of that [-].
inline double share_off(double value, double reference) {
    return std::abs(value / reference - 1);
}

}  // namespace drawwell
