#include "validation/compare.h"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <fstream>

namespace drawwell {
namespace {

Comparison as_share(const Beside& beside) {
    return {beside.name, fmt::format("{}: {:.4g}, share apart [-]", beside.metric, beside.source),
            share_off(beside.value, beside.source), beside.limit,
            beside.spread > 0 ? fmt::format("{:.4g} +- {:.2g}", beside.value, beside.spread)
                              : fmt::format("{:.4g}", beside.value)};
}

void add_row(const Comparison& comparison, std::string_view why) {
    const bool holds = comparison.value <= comparison.limit;
    const std::string own = comparison.own.empty() ? "" : ", drawwell " + comparison.own;
    fmt::print("{}  {}{}  limit {:.3g}  value {:.3g}  {}\n", comparison.name, comparison.metric,
               own, comparison.limit, comparison.value, holds ? "ok" : "MISS");
    const char* rows = std::getenv("DRAWWELL_VALIDATION_ROWS");
    if (!rows) return;
    std::ofstream(rows, std::ios::app) << fmt::format(
        "{}\t{}\t{}\t{:.3g}\t{:.3g}\t{}\n", comparison.name, comparison.metric, comparison.own,
        comparison.value, comparison.limit, holds ? "holds" : fmt::format("MISSES: {}", why));
}

}  // namespace

void show(const Comparison& comparison, std::string_view why) {
    CAPTURE(comparison.name);
    CAPTURE(comparison.metric);
    REQUIRE(std::isfinite(comparison.value));
    REQUIRE(!why.empty());
    add_row(comparison, why);
}

void compare(const Comparison& comparison) {
    CAPTURE(comparison.name);
    CAPTURE(comparison.metric);
    REQUIRE(std::isfinite(comparison.value));
    add_row(comparison, "beyond its limit");
    CHECK(comparison.value <= comparison.limit);
}

void compare_beside(const Beside& beside) {
    compare(as_share(beside));
}

void show_beside(const Beside& beside, std::string_view why) {
    show(as_share(beside), why);
}

}  // namespace drawwell
