#include "cli/report/sheet/ledger.h"

#include <doctest/doctest.h>

using namespace drawwell;

TEST_SUITE("cli/report/sheet/ledger") {
    TEST_CASE("rows with room stay where they wish") {
        CHECK(spread({10, 20, 30}, 0, 100, 4) == std::vector<double>{10, 20, 30});
    }

    TEST_CASE("crowded rows keep their order and a pitch between them, within the column") {
        const std::vector<double> places = spread({50, 50, 50, 51, 99, 99, 120}, 0, 100, 4);
        REQUIRE(places.size() == 7);
        for (std::size_t i = 1; i < places.size(); ++i)
            CHECK(places[i] - places[i - 1] >= 4 - 1e-9);
        CHECK(places.back() <= 100);
        CHECK(places.front() >= 0);
    }

    TEST_CASE("rows that find no room are left out and counted") {
        CHECK(spread(std::vector<double>(30, 5), 0, 40, 4).size() == 11);
        PaperPage page{200, 200, {}, {}};
        const Ledger ledger{{100, 10, 180, 10 + 4 * Ledger::pitch}};
        const std::vector<LedgerRow> rows(8, LedgerRow{{50, 20}, "row", 0.1});
        CHECK(add_ledger(page, ledger, rows) == 3);
    }
}
