#include "cli/read/weather_file.h"

#include <doctest/doctest.h>

using namespace drawwell;

namespace {

/// The only problem of a text; a mismatch shows all of them.
std::string problem_of(std::string_view text) {
    std::string all;
    const Weather weather = read_weather(text, "night.csv");
    for (const std::string& line : weather.problems) all += (all.empty() ? "" : " | ") + line;
    CHECK(weather.tables.empty());
    return all;
}

}  // namespace

TEST_SUITE("cli/read/weather_file") {
    TEST_CASE("columns become tables in SI over time after lighting") {
        const Weather weather = read_weather(
            "# a cold night\n"
            "time_min, outdoor_c, wind_m_s, gust_m_s, room_suction_pa\n"
            "0, 5, 2, 6, 0\n"
            "\n"
            "60, -5.5, 4, 12.5, -3 # the fan is on\n",
            "night.csv");
        REQUIRE(weather.problems.empty());
        REQUIRE(weather.tables.size() == 4);
        // Sums of a few doubles: a handful of roundings.
        CHECK(weather.tables.at("site.outdoor")(0) == doctest::Approx(278.15).epsilon(1e-12));
        CHECK(weather.tables.at("site.outdoor")(3600) == doctest::Approx(267.65).epsilon(1e-12));
        CHECK(weather.tables.at("site.wind")(1800) == doctest::Approx(3).epsilon(1e-12));
        CHECK(weather.tables.at("site.gust")(3600) == 12.5);
        CHECK(weather.tables.at("site.room_suction")(7200) == -3);
    }

    TEST_CASE("semicolons, tabs, quotes, a byte order mark and lines of Windows are read alike") {
        for (const char* text :
             {"time_s;wind_m_s\n0;1\n3600;2\n", "\"time_h\"\t\"wind_m_s\"\n0\t1\n1\t2\n",
              "\xEF\xBB\xBFwind_m_s,time_min\r\n1,0\r\n2,60\r\n", "wind_m_s,time_min\n1,0\n2,60"}) {
            const Weather weather = read_weather(text, "night.csv");
            INFO(text);
            REQUIRE(weather.problems.empty());
            CHECK(weather.tables.at("site.wind")(1800) == doctest::Approx(1.5).epsilon(1e-12));
        }
    }

    TEST_CASE("a wrong head is refused with the nearest column") {
        CHECK(problem_of("time_min,outdor_c\n0,5\n") ==
              "night.csv:1: unknown column \"outdor_c\"; did you mean \"outdoor_c\"?");
        CHECK(problem_of("time_min,hum\n0,5\n").find("there are time_s, time_min") !=
              std::string::npos);
        CHECK(problem_of("#\nwind_m_s\n5\n").find("night.csv:2: one column must be the time") == 0);
        CHECK(problem_of("time_s,time_min,wind_m_s\n0,0,1\n").find("one column must be the time") !=
              std::string::npos);
        CHECK(problem_of("time_s\n0\n") == "night.csv:1: there is no column besides the time");
        CHECK(problem_of("time_s,wind_m_s,wind_m_s\n0,1,1\n") ==
              "night.csv:1: the column wind_m_s stands here twice");
        CHECK(problem_of("") == "night.csv: there is nothing in it");
        CHECK(problem_of("time_s,wind_m_s\n") ==
              "night.csv: there is no row under the names of the columns");
    }

    TEST_CASE("every wrong value is told with its line and column") {
        CHECK(problem_of("time_min,outdoor_c,wind_m_s\n0,x,-1\n10,nan,3 m/s\n5,1,\n") ==
              "night.csv:2: outdoor_c = x: a number is missing | "
              "night.csv:2: wind_m_s = -1: 0 m/s to 60 m/s is allowed | "
              "night.csv:3: outdoor_c = nan: the number must be finite | "
              "night.csv:3: wind_m_s = 3 m/s: here stands a number alone | "
              "night.csv:4: time_min = 5: times must increase | "
              "night.csv:4: wind_m_s = : a number is missing");
        CHECK(problem_of("time_min,outdoor_c\n0,1,2\n") ==
              "night.csv:2: 3 values stand here, and the first line names 2 columns");
        CHECK(problem_of("time_min;outdoor_c\n0;1,5\n").find("a comma in a number") !=
              std::string::npos);
        std::string many = "time_min,wind_m_s\n";
        for (int i = 0; i < 30; ++i) many += "x,1\n";
        CHECK(read_weather(many, "night.csv").problems.size() == 11);
        CHECK(read_weather(many, "night.csv").problems.back() == "night.csv: 20 more like these");
    }
}
