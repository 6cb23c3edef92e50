#include "cli/report/sheet/order_of_work.h"

#include <doctest/doctest.h>

#include "tests/cli/report/sheet/sheet_stoves.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

bool says(const std::vector<std::string>& lines, std::string_view part) {
    for (const std::string& line : lines)
        if (line.find(part) != std::string::npos) return true;
    return false;
}

}  // namespace

TEST_SUITE("cli/report/sheet/order_of_work") {
    TEST_CASE("only parts that are there are worked on") {
        CHECK(says(order_of_work(sample_stove("workshop")), "Hang the barrel"));
        CHECK(says(order_of_work(sample_stove("workshop-kitchen")), "oven tube"));
        const auto bare = order_of_work(sheet_stove(bare_stove));
        CHECK_FALSE(says(bare, "barrel"));
        CHECK_FALSE(says(bare, "feed on the tunnel"));
        CHECK(says(bare, "Stand the riser"));
    }

    TEST_CASE("walls that take the same place are remarked on, with how much is missing") {
        CHECK_FALSE(says(drawing_remarks(sample_stove("workshop")), "same place"));
        // Feed's half 90 + 64 of lining, riser's half 100 + 51: 305 mm at the least.
        CHECK(says(drawing_remarks(sample_stove("workshop", {"tunnel.length=285 mm"})),
                   "20 mm (13/16 in) too short"));
    }

    TEST_CASE("a barrel that reaches below the tunnel's roof must be notched") {
        // Roof at 180 + 64 mm, the barrel's foot at 1150 - 930.
        CHECK(says(drawing_remarks(sample_stove("workshop", {"barrel.height=930 mm"})),
                   "24 mm (15/16 in) lower"));
    }
}
