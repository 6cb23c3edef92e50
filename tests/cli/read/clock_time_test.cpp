#include "cli/read/clock_time.h"

#include <doctest/doctest.h>

#include "solver/errors.h"

using namespace drawwell;

TEST_SUITE("cli/read/clock_time") {
    TEST_CASE("a time of day is hours and minutes, and is written as it is read") {
        CHECK(parse_clock("00:00") == 0);
        CHECK(parse_clock("20:10") == 20 * 3600 + 600);
        CHECK(parse_clock("7:05") == 7 * 3600 + 300);
        for (int minute = 0; minute < 24 * 60; ++minute)
            CHECK(parse_clock(clock_text(60.0 * minute)) == 60 * minute);
        CHECK(clock_text(19.5 * 3600) == "19:30");
    }

    TEST_CASE("what is no time of day is refused, and what is written otherwise is none") {
        for (const char* text : {"24:00", "12:60", "12:5", "123:00", "1:2:3", "half", ""})
            CHECK_THROWS_AS(parse_clock(text), InputError);
        CHECK(is_clock_text("25:99"));
        for (const char* text : {"8 min", "", ":", "12:", ":30", "-1:30", "1:30 h"})
            CHECK_FALSE(is_clock_text(text));
    }

    TEST_CASE("a time by the clock is the next one after lighting, past midnight too") {
        const double lit = parse_clock("19:30");
        CHECK(after_lighting(parse_clock("20:10"), lit) == 40 * 60);
        CHECK(after_lighting(parse_clock("00:30"), lit) == 5 * 3600);
        CHECK(after_lighting(lit, lit) == 0);
        CHECK(after_lighting(parse_clock("19:29"), lit) == 24 * 3600 - 60);
    }
}
