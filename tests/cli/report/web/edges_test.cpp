#include "cli/report/web/edges.h"

#include <doctest/doctest.h>

using namespace drawwell;

TEST_SUITE("cli/report/web/edges") {
    TEST_CASE("cells meet halfway, outermost edges are given or as far out as inwards") {
        CHECK(cell_edges({1, 3, 5}, {}, {}) == std::vector<double>{0, 2, 4, 6});
        CHECK(cell_edges({1, 3, 5}, 0.5, 7) == std::vector<double>{0.5, 2, 4, 7});
        CHECK(cell_edges({5, 3, 1}, 6, 0) == std::vector<double>{6, 4, 2, 0});
        CHECK(cell_edges({2}, 1, {}) == std::vector<double>{1, 3});
        CHECK(cell_edges({2}, {}, 3) == std::vector<double>{1, 3});
        CHECK(cell_edges({2}, 0, 5) == std::vector<double>{0, 5});
        CHECK(cell_edges({}, 0, 1).empty());
    }
}
