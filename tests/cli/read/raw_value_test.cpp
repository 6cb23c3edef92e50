#include "cli/read/raw_value.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "solver/errors.h"

using namespace drawwell;

TEST_SUITE("cli/read/raw_value") {
    TEST_CASE("entries and tables come in the order of their lines, not of their names") {
        const RawFile file = parse_raw("b = 1\n[z]\nx = [1, 'two']\n[a]\ny = nan\n", "f.toml");
        REQUIRE(file.entries.size() == 3);
        CHECK(file.entries[0].key == "b");
        CHECK(file.entries[1].key == "z.x");
        CHECK(file.entries[1].place.line == 3);
        CHECK(file.entries[1].value.shown == "[1, \"two\"]");
        CHECK(file.entries[1].value.items.at(1).place.column == 9);
        CHECK(std::isnan(file.entries[2].value.number));
        REQUIRE(file.tables.size() == 2);
        CHECK(file.tables[0].name == "z");
        CHECK(file.tables[1].name == "a");
    }

    TEST_CASE("an error of syntax names file, line and column") {
        try {
            parse_raw("a = 1\nb = ]\n", "f.toml");
            FAIL("it was taken");
        } catch (const InputError& error) {
            CHECK(std::string(error.what()).find("f.toml:2:5: this is not TOML") == 0);
        }
    }

    TEST_CASE("a bracket with no name behind it is refused") {
        for (const char* text :
             {"[\na = 1\n", "[", "[[", "[{flue]", "[[=]]", "[.a]", "[\x1b[a]", "[]"})
            CHECK_THROWS_WITH_AS(parse_raw(text, "f.toml"), doctest::Contains("f.toml:1:"),
                                 InputError);
    }

    TEST_CASE("a value of the command line is a text, a list with commas, or a TOML list") {
        CHECK(parse_raw_override(" 3 m ", false).text == "3 m");
        CHECK(parse_raw_override("a, b", true).items.size() == 2);
        CHECK(parse_raw_override("a, b", false).form == RawValue::Form::text);
        CHECK(parse_raw_override("[1, 2, 3]", false).items.size() == 3);
        CHECK_THROWS_AS(parse_raw_override("[1, 2", false), InputError);
    }

    TEST_CASE("a quoted text is one TOML string") {
        const std::string text = "a \"b\" \\ \n \x01 °";
        CHECK(parse_raw("t = " + quoted(text), "f").entries.at(0).value.text == text);
    }
}
