#include <doctest/doctest.h>
#include <fmt/format.h>

#include "models/laws/losses.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/orifices";

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("sharp openings lose what handbooks give") {
        constexpr struct {
            double bores, idelchik, rennels;  // [-] opening over duct; on the opening's velocity
        } table[] = {{0.5, 1.856, 1.918}, {0.7071, 1.000, 1.063}, {0.75, 0.819, 0.863}};
        for (const auto& row : table) {
            const double share = row.bores * row.bores;
            const double loss = port_loss(share, share);
            compare_beside({name, fmt::format("Idelchik, {:.2g} of the bore", row.bores),
                            row.idelchik, loss, 2e-3});
            compare_beside({name, fmt::format("Rennels, {:.2g} of the bore", row.bores),
                            row.rennels, loss, 0.06});
        }
        compare_beside(
            {name, "Rennels, 0.75, edge 0.2 thick", 0.8539, port_loss(0.5625, 0.5625), 0.06});
        compare_beside({name, "Idelchik, hole between two rooms", 2.914, hole_loss(), 1e-3});
        compare_beside({name, "Rennels, hole between two rooms", 2.814, hole_loss(), 0.06});
        compare_beside({name, "the same as an opening in ducts without end", hole_loss(),
                        port_loss(0, 0), 1e-3});
    }
}
