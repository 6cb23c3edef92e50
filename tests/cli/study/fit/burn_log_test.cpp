#include "cli/study/fit/burn_log.h"

#include <doctest/doctest.h>

#include <cmath>

#include "cli/read/several_problems.h"
#include "solver/constants.h"
#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

std::string refusal(const std::string& text) {
    try {
        read_log(text, "burn.csv");
    } catch (const InputError& error) {
        return error.what();
    }
    return "";
}

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/study/fit/burn_log") {
    TEST_CASE("a log's times are read in seconds, minutes, hours and as h:mm:ss") {
        CHECK(read_log("time_s,a\n0,1\n90,2\n", "b").time == std::vector{0.0, 90.0});
        CHECK(read_log("time_min,a\n0,1\n1.5,2\n", "b").time == std::vector{0.0, 90.0});
        CHECK(read_log("Time [h],a\n0,1\n0.5,2\n", "b").time == std::vector{0.0, 1800.0});
        CHECK(read_log("a,elapsed\n1,0:00:10\n2,1:02:03\n", "b").time == std::vector{10.0, 3723.0});
        CHECK(read_log("clock,a\n18:05,1\n18:06,2\n", "b").time == std::vector{65100.0, 65160.0});
    }

    TEST_CASE("a clock goes on after midnight, and a date before it is passed over") {
        CHECK(read_log("time,a\n23:59:30,1\n0:00:30,2\n0:01:00,3\n", "b").time ==
              std::vector{86370.0, 86430.0, 86460.0});
        CHECK(read_log("timestamp;a\n2026-11-26 18:05:00;1\n2026-11-26T18:05:10;2\n", "b").time ==
              std::vector{65100.0, 65110.0});
    }

    TEST_CASE("headers say name, place and unit in brackets or by their ending") {
        const auto is = [](const char* text, const char* name, const char* cell, const char* unit) {
            const LogHeader header = parse_header(text);
            CHECK(header.name == name);
            CHECK(header.cell == cell);
            CHECK(header.unit == unit);
        };
        is("TC1 [°F]", "TC1", "", "°F");
        is("TC1 (C)", "TC1", "", "C");
        is("draft_inH2O", "draft", "", "inH2O");
        is("balance (kg)", "balance", "", "kg");
        is("plate_temperature_c[0.105m]", "plate_temperature", "[0.105m]", "°C");
        is("flue_gas_flow_kg_s", "flue_gas_flow", "", "kg/s");
        is("remarks", "remarks", "", "");
        is("TC1 (top)", "TC1 (top)", "", "");
    }

    TEST_CASE("values come in SI from degrees of either kind, water columns and grams") {
        const BurnLog log = read_log("time_s\ta\tb\tc\n0\t212\t0.1\t500\n1\t32\t-0.1\t5e2\n", "b");
        CHECK(log_values(log, 1, "°F", Quantity::temperature)[0] ==
              near(constants::ice_point + 100, 1e-12));
        CHECK(log_values(log, 2, "inH2O", Quantity::pressure)[1] == near(-24.9089, 1e-12));
        CHECK(log_values(log, 2, "mmH2O", Quantity::pressure)[0] == near(0.980665, 1e-12));
        CHECK(log_values(log, 3, "g", Quantity::mass)[1] == near(0.5, 1e-12));
    }

    TEST_CASE("empty cells and the words of loggers are gaps") {
        const BurnLog log = read_log("time_s,a\n0,\n1,NaN\n2,OL\n3,n/a\n4,--\n5,20\n", "b");
        const auto values = log_values(log, 1, "°C", Quantity::temperature);
        REQUIRE(values.size() == 6);
        for (std::size_t i = 0; i < 5; ++i) CHECK(std::isnan(values[i]));
        CHECK(values[5] == near(293.15, 1e-12));
    }

    TEST_CASE("decimal commas are read between semicolons, and separators within quotes") {
        const BurnLog log =
            read_log("\xEF\xBB\xBFtime_s;a;\"what; then\"\r\n0;20,5;x\r\n1;21;y\r\n", "b");
        CHECK(log_values(log, 1, "°C", Quantity::temperature)[0] == near(293.65, 1e-12));
        CHECK(log.headers[2].whole == "what; then");
    }

    TEST_CASE("what is wrong in a log is told by file, line and column") {
        CHECK(contains(refusal("time_s,a\n0,1\n1\n"), "burn.csv:3: 1 values stand here"));
        CHECK(contains(refusal("time_s,a\n0,1\nsoon,1\n"),
                       "burn.csv:3: column \"time_s\": \"soon\""));
        CHECK(contains(refusal("time_s,a\n5,1\n4,1\n"), "burn.csv:3"));
        CHECK(contains(refusal("time,a\n5,1\n6,1\n"), "in which unit"));
        CHECK(contains(refusal("hour,a\n5,1\n6,1\n"), "no column is the time"));
        CHECK(contains(refusal("time_s,a,a\n5,1,1\n6,1,1\n"), "twice"));
        CHECK(contains(refusal(""), "nothing in it"));
        CHECK(contains(refusal("time_s,a\n"), "fewer than two rows"));
        const BurnLog log = read_log("time_s,a\n0,1\n1,hot\n", "burn.csv");
        CHECK_THROWS_WITH(log_values(log, 1, "°C", Quantity::temperature),
                          doctest::Contains("burn.csv:3: column \"a\": \"hot\""));
    }

    TEST_CASE("of many wrong rows the first ten are told") {
        std::string text = "time_s,a\n";
        for (int i = 0; i < 15; ++i) text += "x,1\n";
        CHECK(contains(refusal(text), "5 more like these"));
    }

    TEST_CASE("a typeset minus in a log is one") {
        const BurnLog log = read_log("time_s,a\n0,\u22122.5\n1,3\n", "b");
        CHECK(log_values(log, 1, "Pa", Quantity::pressure)[0] == -2.5);
    }

    TEST_CASE("what a log holds is told without what a terminal would obey") {
        CHECK(contains(error_text(SeveralProblems(std::vector<std::string>{"a\nb", "c"})),
                       "a\\x0ab\nc"));
        try {
            read_log("time_s,a\n0,1\n\x1b[2J,1\n", "b\n.csv");
            CHECK(false);
        } catch (const InputError& error) {
            CHECK(contains(error_text(error), "b\\x0a.csv:3: column \"time_s\": \"\\x1b[2J\""));
        }
    }
}
