#include "validation/compare.h"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <fstream>

namespace drawwell {
namespace {

Comparison as_share(const Beside& beside) {
    return {beside.name,
            fmt::format("{}: {:.4g}, drawwell {:.4g}, share apart [-]", beside.metric,
                        beside.source, beside.value),
            share_off(beside.value, beside.source), beside.limit};
}

}  // namespace

void show(const Comparison& comparison) {
    const bool holds = comparison.value <= comparison.limit;
    fmt::print("{}  {}  limit {:.3g}  value {:.3g}  {}\n", comparison.name, comparison.metric,
               comparison.limit, comparison.value, holds ? "ok" : "MISS");
    if (const char* table = std::getenv("DRAWWELL_VALIDATION_TABLE"))
        std::ofstream(table, std::ios::app) << fmt::format(
            "| {} | {} | {:.3g} | {:.3g} | {} |\n", comparison.name, comparison.metric,
            comparison.value, comparison.limit, holds ? "holds" : "MISSES");
}

void compare(const Comparison& comparison) {
    CAPTURE(comparison.name);
    CAPTURE(comparison.metric);
    REQUIRE(std::isfinite(comparison.value));
    show(comparison);
    CHECK(comparison.value <= comparison.limit);
}

void compare_beside(const Beside& beside) {
    compare(as_share(beside));
}

void show_beside(const Beside& beside) {
    show(as_share(beside));
}

}  // namespace drawwell
