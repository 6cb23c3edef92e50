#include "solver/results.h"

#include <doctest/doctest.h>

using namespace drawwell;

TEST_SUITE("solver/results") {
    TEST_CASE("a column is found by its whole name only") {
        Results results;
        results.columns.resize(2);
        results.columns[0].name = "draft";
        results.columns[1].name = "draft_flue";
        REQUIRE(results.find("draft_flue") != nullptr);
        CHECK(results.find("draft_flue") == &results.columns[1]);
        CHECK(results.find("draft") == &results.columns[0]);
        CHECK(results.find("draf") == nullptr);
        CHECK(results.find("") == nullptr);
    }
}
