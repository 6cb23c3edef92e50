#include "cli/study/series_bytes.h"

#include <doctest/doctest.h>

#include "cli/report/pending_file.h"
#include "tests/cli/study/some_series.h"

using namespace drawwell;

TEST_SUITE("cli/study/series_bytes") {
    TEST_CASE("series come back as they were, to the last bit") {
        const Results some = some_series(), back = results_of(series_bytes(some));
        CHECK(back.time == some.time);
        REQUIRE(back.axes.size() == 1);
        CHECK(back.axes[0].positions == some.axes[0].positions);
        REQUIRE(back.columns.size() == 2);
        CHECK(back.columns[1].name == "riser_gas");
        CHECK(back.columns[1].meaning == some.columns[1].meaning);
        CHECK(back.columns[1].axis == "riser_cell");
        CHECK(back.columns[1].values == some.columns[1].values);
        CHECK(back.columns[0].values == some.columns[0].values);
    }

    TEST_CASE("series without an instant come back empty") {
        const Results back = results_of(R"({"instants":0,"axes":[],"columns":[["a","K","","",2]]})"
                                        "\n");
        CHECK(back.time.empty());
        REQUIRE(back.columns.size() == 1);
        CHECK(back.columns[0].values.empty());
    }

    TEST_CASE("series cut short or of something else are refused") {
        const std::string bytes = series_bytes(some_series());
        CHECK_THROWS_AS(results_of(bytes.substr(0, bytes.size() - 1)), FileError);
        CHECK_THROWS_AS(results_of("something else"), FileError);
        CHECK_THROWS_AS(results_of(""), FileError);
        // More than memory holds, also where its size in bytes passes the largest number.
        CHECK_THROWS_AS(results_of(R"({"instants":2305843009213693953,"axes":[],"columns":[]})"
                                   "\n12345678"),
                        FileError);
        CHECK_THROWS_AS(
            results_of(R"({"instants":1,"axes":[],"columns":[["a","","","",4611686018427387905]]})"
                       "\n1234567812345678"),
            FileError);
    }
}
