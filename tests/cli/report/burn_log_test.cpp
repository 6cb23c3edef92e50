#include "cli/report/burn_log.h"

#include <doctest/doctest.h>

#include "solver/errors.h"
#include "tests/cli/report/sample_run.h"

using namespace drawwell;

TEST_SUITE("cli/report/burn_log") {
    TEST_CASE("a log is read by its headings, in minutes and degrees, gaps left out") {
        const auto log = read_burn_log(
            "\xEF\xBB\xBFtime_min,plate_temperature_c,spare_draw\r\n0,20,4.5\r\n\r\n5,,6\r\n"
            "10,120.5,\r\n",
            sample_results());
        REQUIRE(log.size() == 2);
        CHECK(log[0].column == "plate_temperature");
        CHECK(log[0].cell == 0);
        CHECK(log[0].time == std::vector<double>{0, 600});
        CHECK(log[0].value[1] == doctest::Approx(393.65));
        CHECK(log[1].time == std::vector<double>{0, 300});
        CHECK(log[1].value == std::vector<double>{4.5, 6});
    }

    TEST_CASE("a place in brackets names the cell") {
        const auto log =
            read_burn_log("time_s,plate_temperature_c[0.15m]\n60,200\n", sample_results());
        REQUIRE(log.size() == 1);
        CHECK(log[0].cell == 1);
        CHECK(log[0].time == std::vector<double>{60});
    }

    TEST_CASE("what can't be read is told with its line") {
        const auto reason = [](const char* text) -> std::string {
            try {
                read_burn_log(text, sample_results());
            } catch (const InputError& error) {
                return error.what();
            }
            return {};
        };
        CHECK(reason("minutes,spare_draw\n") ==
              "line 1: the first column is time_s or time_min, not \"minutes\"");
        CHECK(reason("time_s,spare_drew_pa\n").find("did you mean \"spare_draw_pa\"?") !=
              std::string::npos);
        CHECK(reason("time_s,spare_draw\n0,4\n1,hot\n") == "line 3: \"hot\" is no number");
        CHECK(reason("time_s,spare_draw\n0,4\n,5\n") == "line 3: the time is no number");
        CHECK(reason("time_s,spare_draw\n0,4,5\n") == "line 2: more cells than headings");
        CHECK(reason("time_s,plate_temperature[9m]\n").find("no such place") != std::string::npos);
        CHECK(reason("time_s,spare_draw\n") == "it holds no figures");
        CHECK(reason("") == "it holds no figures");
    }

    TEST_CASE("a typeset minus is one") {
        const auto log = read_burn_log("time_min,spare_draw\n0,\u22122.5\n", sample_results());
        CHECK(log[0].value == std::vector<double>{-2.5});
    }
}
