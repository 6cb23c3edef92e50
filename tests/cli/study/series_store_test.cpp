#include "cli/study/series_store.h"

#include <doctest/doctest.h>

#include "cli/report/pending_file.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

Results some() {
    Results results;
    results.time = {0, 30, 60};
    results.axes = {{"riser_cell", "m", "where it stands", {0.1, 0.2}}};
    results.columns = {{"drive", "Pa", "what drives it", "", 1, {1, 2, 1.0 / 3}},
                       {"riser_gas",
                        "K",
                        "gas, \"hot\"\nand cold",
                        "riser_cell",
                        2,
                        {300, 301, 302, 303, 304, 305}}};
    return results;
}

}  // namespace

TEST_SUITE("cli/study/series_store") {
    TEST_CASE("series come back as they were, to the last bit") {
        const ScratchFolder folder;
        SeriesStore store(folder / "a.rows.series");
        CHECK_FALSE(store.holds("one"));
        store.keep("one", series_bytes(some()));
        REQUIRE(store.holds("one"));
        const Results back = store.read("one");
        CHECK(back.time == some().time);
        REQUIRE(back.axes.size() == 1);
        CHECK(back.axes[0].positions == some().axes[0].positions);
        REQUIRE(back.columns.size() == 2);
        CHECK(back.columns[1].name == "riser_gas");
        CHECK(back.columns[1].meaning == some().columns[1].meaning);
        CHECK(back.columns[1].axis == "riser_cell");
        CHECK(back.columns[1].values == some().columns[1].values);
        CHECK(back.columns[0].values == some().columns[0].values);
        store.remove();
        CHECK_FALSE(store.holds("one"));
        CHECK(files_in(folder / "") == 0);
    }

    TEST_CASE("series cut short, of something else or not there are refused") {
        const ScratchFolder folder;
        const std::string bytes = series_bytes(some());
        CHECK_THROWS_AS(results_of(bytes.substr(0, bytes.size() - 1)), FileError);
        CHECK_THROWS_AS(results_of("something else"), FileError);
        CHECK_THROWS_AS(results_of(""), FileError);
        CHECK_THROWS_AS(SeriesStore(folder / "none").read("one"), FileError);
    }
}
