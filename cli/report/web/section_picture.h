#pragma once

#include <string>

#include "cli/report/web/moment.h"
#include "models/stove.h"
#include "solver/results.h"

namespace drawwell {

/// The stove cut open along its tunnel, to scale, with a pole of heights beside it and each
/// computed piece in the colour of its temperature at a moment; a second, smaller picture shows
/// the whole flue. Groups carry the column that paints them (`data-c`), pieces their cell
/// (`data-i`). `id` tells pictures of several runs apart.
std::string section_picture(const Stove& stove, const Results& results, const Moment& moment,
                            const std::string& id);

/// The columns that paint it.
std::vector<std::string> section_columns();

/// Main dimensions in words.
std::string section_dimensions(const Stove& stove);

/// What its colours mean, as an HTML list.
std::string heat_key();

}  // namespace drawwell
