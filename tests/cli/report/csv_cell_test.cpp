#include "cli/report/csv_cell.h"

#include <doctest/doctest.h>

using namespace drawwell;

TEST_SUITE("cli/report/csv_cell") {
    TEST_CASE("plain text and numbers stand as they are") {
        for (const char* text : {"", "kitchen.toml", "600 mm", "-12.5", "+3", "1e-5", "5-10"})
            CHECK(csv_cell(text) == text);
    }

    TEST_CASE("what ends a cell or a row stands in quotes") {
        CHECK(csv_cell("a,b") == "\"a,b\"");
        CHECK(csv_cell("so \"called\"") == "\"so \"\"called\"\"\"");
        CHECK(csv_cell("two\nlines") == "\"two\nlines\"");
    }

    TEST_CASE("text that a spreadsheet would take for a formula is guarded") {
        CHECK(csv_cell("=1+1") == "'=1+1");
        CHECK(csv_cell("+cmd") == "'+cmd");
        CHECK(csv_cell("-10 °C") == "'-10 °C");
        CHECK(csv_cell("@SUM(A1)") == "'@SUM(A1)");
        CHECK(csv_cell("=A1,\"B\"") == "\"'=A1,\"\"B\"\"\"");
        CHECK(csv_cell("\t=1") == "\"'\t=1\"");
        CHECK(csv_cell("\r=1") == "\"'\r=1\"");
        CHECK(csv_cell("-inf") == "'-inf");
    }
}
