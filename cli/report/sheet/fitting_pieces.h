#pragma once

#include <vector>

#include "cli/report/sheet/cut_list.h"

namespace drawwell {

/// What a fitting is cut from; of a pot nothing.
void add_fitting_pieces(std::vector<Piece>& all, const Fitting& fitting, const Stove& stove,
                        const Library& library);

/// The openings it needs in other parts.
void add_fitting_holes(std::vector<Hole>& all, const Fitting& fitting, const Stove& stove);

}  // namespace drawwell
