#include "cli/report/sheet/sheet_text.h"

#include <doctest/doctest.h>

using namespace drawwell;

TEST_SUITE("cli/report/sheet/sheet_text") {
    TEST_CASE("lengths are shown to a tenth of a millimetre, whole ones without it") {
        CHECK(mm_text(0.1775) == "177.5 mm");
        CHECK(mm_text(0.42) == "420 mm");
        CHECK(mm_text(-0.00001) == "0 mm");
        CHECK(both_text(0.0254) == "25.4 mm (1 in)");
    }

    TEST_CASE("sizes name their unit once") {
        CHECK(sizes_mm({0.11, 0.34, 0.032}) == "110 x 340 x 32 mm");
        CHECK(sizes_inch({0.0254, 0.0508}) == "1 x 2 in");
    }

    TEST_CASE("three digits count, however large the value") {
        CHECK(three_digits(123.4) == "123");
        CHECK(three_digits(1.234) == "1.23");
        CHECK(three_digits(0.01234) == "0.0123");
        CHECK(three_digits(98765) == "98765");
        CHECK(three_digits(0) == "0");
    }

    TEST_CASE("a material's name is spoken without its underscores") {
        CHECK(spoken("aes_board") == "aes board");
    }
}
