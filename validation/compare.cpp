#include "validation/compare.h"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <fstream>

namespace drawwell {

void compare(const Comparison& comparison) {
    CAPTURE(comparison.name);
    CAPTURE(comparison.metric);
    REQUIRE(std::isfinite(comparison.value));
    const bool holds = comparison.value <= comparison.limit;
    if (const char* table = std::getenv("DRAWWELL_VALIDATION_TABLE"))
        std::ofstream(table, std::ios::app) << fmt::format(
            "| {} | {} | {:.3g} | {:.3g} | {} |\n", comparison.name, comparison.metric,
            comparison.value, comparison.limit, holds ? "holds" : "FAILS");
    CHECK(comparison.value <= comparison.limit);
}

}  // namespace drawwell
