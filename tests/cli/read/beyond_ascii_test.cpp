#include "cli/read/beyond_ascii.h"

#include <doctest/doctest.h>

#include "solver/errors.h"

using namespace drawwell;

TEST_SUITE("cli/read/beyond_ascii") {
    TEST_CASE("letters beyond ASCII are free in quotes and remarks") {
        for (const char* text :
             {"", "a = 1", "title = \"Öfchen\"", "[leak.\"tür\"]", "a = 'ä' # ö", "# °\na = 1",
              "\xEF\xBB\xBFtitle = \"ä\"", "a = \"\"\"\nä\n\"ö\" \\\" ü\"\"\"\nb = 'ß'",
              "a = '''\\ä'''", "a = \"\\\\ä\"", "a = \"\"\"\\\\ä\"\"\"",
              "a = \"\"\"one \\\n  two\"\"\" # ä", "a = \"\"\"one \\\n  \"\"\" # ä"})
            CHECK_MESSAGE(!beyond_ascii_unquoted(text), text);
    }

    TEST_CASE("elsewhere they are found with line and column") {
        const auto found = [](const char* text, std::size_t line, std::size_t column) {
            const auto place = beyond_ascii_unquoted(text);
            REQUIRE_MESSAGE(place, text);
            CHECK_MESSAGE(place->line == line, text);
            CHECK_MESSAGE(place->column == column, text);
        };
        found("länge = 1", 1, 2);
        found("[leak.tür]", 1, 8);
        found("a = \"ü\" # ä\nb = 20 °C", 2, 8);
        found("a = 'ä' ö", 1, 9);
        found("a = \"ä\nö = 1", 2, 1);
        found("a = \"\"\"\\ä\"\"\"", 1, 9);
        found("a = \"\"\"\\\n  ä\"\"\"", 2, 3);
        found("a = \xC2\xA0", 1, 5);
    }

    TEST_CASE("a stove file and a list on the command line are refused for them in words") {
        CHECK_THROWS_WITH_AS(parse_raw("a = 1\n[leak.tür]\n", "stove.toml"),
                             doctest::Contains("stove.toml:2:8: a letter or sign beyond a to z"),
                             InputError);
        CHECK_THROWS_WITH_AS(parse_raw_override("[20 °C]", true),
                             doctest::Contains("a letter or sign beyond a to z"), InputError);
        CHECK(parse_raw("[leak.\"tür\"]\na = 1\n", "stove.toml").tables.back().name == "leak.tür");
    }
}
