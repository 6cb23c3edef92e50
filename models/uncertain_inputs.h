#pragma once

#include <functional>
#include <string>
#include <vector>

#include "models/library.h"
#include "models/stove.h"

namespace drawwell {

/// Something of a burn that is known within a spread only: a figure of data/, or the day.
struct UncertainInput {
    std::string name;   // `aes_board.conductivity`, `fuel_bed.surface_rate`, `day.outdoor`
    double spread = 0;  // one standard deviation: relative, of `day.outdoor` in kelvin
    /// Makes it what it is that many standard deviations off. Figures are multiplied by (1 +
    /// spread)^deviations, so that none turns negative; shares stay at most 1.
    std::function<void(double deviations, Library& library, Stove& stove)> set;
};

/// Those that bear on a stove: the materials it is made of, the fuel bed's constants, the day. Not
/// those of laws, which stand as ranges beside them.
std::vector<UncertainInput> uncertain_inputs(const Library& library, const Stove& stove);

}  // namespace drawwell
