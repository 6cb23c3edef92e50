#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/report/series_svg.h"
#include "solver/results.h"

namespace drawwell {

/// A figure of the report page.
struct PagePanel {
    std::string id;    // `pull`
    std::string note;  // how to read it, a sentence or two
    ShownPanel shown;
};

/// The figures that a burn has something for, in the order of the page: draw by part, gas along its
/// way, plate, barrel, flows, air, heat, fuel, what is fitted.
std::vector<PagePanel> page_panels(const Results& results);

}  // namespace drawwell
