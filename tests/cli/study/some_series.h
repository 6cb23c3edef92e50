#pragma once

#include "solver/results.h"

namespace drawwell {

/// Made-up columns of three instants, with and without an axis.
inline Results some_series() {
    Results results;
    results.time = {0, 30, 60};
    results.axes = {{"riser_cell", "m", "where it stands", {0.1, 0.2}}};
    results.columns = {{"drive", "Pa", "what drives it", "", 1, {1, 2, 1.0 / 3}},
                       {"riser_gas",
                        "K",
                        "gas, \"hot\"\nand cold",
                        "riser_cell",
                        2,
                        {300, 301, 302, 303, 304, 305}}};
    return results;
}

}  // namespace drawwell
