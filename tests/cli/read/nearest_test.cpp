#include "cli/read/nearest.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace drawwell;

TEST_SUITE("cli/read/nearest") {
    TEST_CASE("a letter added, dropped, changed or swapped is one edit") {
        CHECK(edit_distance("width", "width") == 0);
        CHECK(edit_distance("widths", "width") == 1);
        CHECK(edit_distance("wdth", "width") == 1);
        CHECK(edit_distance("wodth", "width") == 1);
        CHECK(edit_distance("widht", "width") == 1);
        CHECK(edit_distance("kitten", "sitting") == 3);  // Levenshtein's usual example
        CHECK(edit_distance("", "abc") == 3);
    }

    TEST_CASE("the nearest word is found, a far one is not") {
        const std::vector<std::string> known{"bore", "top", "wall"};
        CHECK(nearest("boar", known) == "bore");
        CHECK(nearest("tpo", known) == "top");
        CHECK(nearest("temperature", known).empty());
        CHECK(nearest("xy", known).empty());
        CHECK(did_you_mean("wal", known) == "; did you mean \"wall\"?");
        CHECK(did_you_mean("temperature", known).empty());
    }
}
