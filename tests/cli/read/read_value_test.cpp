#include "cli/read/read_value.h"

#include <doctest/doctest.h>

#include "tests/cli/read/small_stove.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

std::string schedule(std::string_view line) {
    return std::string(small_stove) + "[schedule]\n" + std::string(line) + "\n";
}

/// The only problem of a text; a mismatch shows all of them.
std::string problem_of(std::string_view text) {
    std::string all;
    for (const std::string& line : problems_of(text)) all += (all.empty() ? "" : " | ") + line;
    return all;
}

}  // namespace

TEST_SUITE("cli/read/read_value") {
    TEST_CASE("what is moved by hand is one value, or rows each held until the next") {
        const Steps rows =
            read(schedule("damper = [['0 min', '100 %'], ['50 min', 'half'], ['2 h', 0.1]]"))
                .schedule.damper;
        CHECK(rows(0) == 1);
        CHECK(rows(50 * 60 - 1) == 1);
        CHECK(rows(50 * 60) == 0.5);
        CHECK(rows(7200) == doctest::Approx(0.1));
        CHECK(read(schedule("damper = '50 %'")).schedule.damper(9e9) == 0.5);
        const Stove silent = read(small_stove);
        CHECK(silent.schedule.damper(0) == 1);
        CHECK(silent.schedule.port(0) == 1);
        CHECK(silent.schedule.bypass(0) == 0);
        CHECK(silent.schedule.feed_cover(0) == 0);
        CHECK(silent.schedule.plate_cover(0) == 0);
    }

    TEST_CASE("openings are open, half or shut, covers on, half or off") {
        CHECK(read(schedule("damper = 'shut'")).schedule.damper(0) == 0);
        CHECK(read(schedule("feed_cover = 'on'")).schedule.feed_cover(0) == 1);
        CHECK(read(schedule("plate_cover = [['0 s', 'off'], ['1 h', 'on']]"))
                  .schedule.plate_cover(3600) == 1);
        CHECK(problem_of(schedule("damper = 'hlaf'")) ==
              "s.toml:21:1: schedule.damper = \"hlaf\": unknown word \"hlaf\": here stands a share "
              "such as \"50 %\", or open, half, shut; did you mean \"half\"?");
        CHECK(problem_of(schedule("plate_cover = 'shut'")).find("or on, half, off") !=
              std::string::npos);
    }

    TEST_CASE("a share that is none is refused, and a port is never quite shut") {
        CHECK(problem_of(schedule("damper = '120 %'")).find("0 % to 100 % is allowed") !=
              std::string::npos);
        CHECK(problem_of(schedule("damper = '-1 %'")).find("it can't be negative") !=
              std::string::npos);
        CHECK(problem_of(schedule("damper = '3 mm'")).find("mm is a unit of length") !=
              std::string::npos);
        CHECK(problem_of(schedule("damper = nan")).find("must be finite") != std::string::npos);
        CHECK(problem_of(schedule("port = '4 %'")).find("5 % to 100 % is allowed") !=
              std::string::npos);
        CHECK(read(schedule("port = '5 %'")).schedule.port(0) == doctest::Approx(0.05));
    }

    TEST_CASE("every wrong row is told at its own place") {
        const auto lines = problems_of(
            schedule("damper = [['0 min', '100 %'], ['x', 'half'], ['3 h', 2], 'shut']"));
        REQUIRE(lines.size() == 3);
        CHECK(lines[0].find("s.toml:21:31: schedule.damper = ") == 0);
        CHECK(lines[0].find("[\"x\", \"half\"]: a number is missing") != std::string::npos);
        CHECK(lines[1].find("s.toml:21:46: ") == 0);
        CHECK(lines[2].find("\"shut\": here stands a list of rows such as") != std::string::npos);
        CHECK(problem_of(schedule("damper = [['1 h', 1], ['1 h', 0]]"))
                  .find("the times must increase") != std::string::npos);
        CHECK(problem_of(schedule("damper = []")).find("the list is empty") != std::string::npos);
    }

    TEST_CASE("times of one list a rounding error apart are the same time") {
        const auto refusal = [](const std::string& text) { return problem_of(schedule(text)); };
        CHECK(refusal("damper = [['66 min', 1], ['1.1 h', 0.5]]").find("the times must increase") !=
              std::string::npos);
        CHECK(problem_of(with("[\"8 min\", \"16 min\"]", "[\"66 min\", \"1.1 h\"]"))
                  .find("the times must increase") != std::string::npos);
        CHECK(refusal("load = [['66 min', 'main'], ['1.1 h', 'main']]")
                  .find("\"main\" goes in twice at the same time") != std::string::npos);
        const std::string other = "[load.other]\n";
        const std::string both = with("at = [\"8 min\", \"16 min\"]\n", "") + other;
        for (const char* rows : {"[['66 min', 'other'], ['1.1 h', 'main']]",
                                 "[['1.1 h', 'other'], ['66 min', 'main']]"}) {
            const Stove stove = read(both + "[schedule]\nload = " + rows + "\n");
            CHECK(stove.loads.at(0).times.at(0) == doctest::Approx(66 * 60));
            CHECK(stove.loads.at(1).times.at(0) == doctest::Approx(66 * 60));
        }
    }

    TEST_CASE("times may be written by the clock where lighting is") {
        const std::string lit =
            with("[\"8 min\", \"16 min\"]", "[\"19:38\", \"00:10\"]") +
            "[burn]\nlit_at = '19:30'\n[schedule]\ndamper = [['19:30', 1], ['20:10', 'half']]\n"
            "[site]\noutdoor = [['20:00', '5 °C'], ['06:00', '-5 °C']]\n";
        const Stove stove = read(lit);
        CHECK(*stove.burn.lit_at == 19.5 * 3600);
        CHECK(stove.loads.at(0).times == std::vector<double>{480, 4 * 3600 + 2400});
        CHECK(stove.schedule.damper.time() == std::vector<double>{0, 2400});
        CHECK(stove.site.outdoor.x() == std::vector<double>{1800, 10.5 * 3600});
        CHECK(read(lit, {"burn.lit_at=19:00"}).loads.at(0).times.at(0) == 38 * 60);
        CHECK(read(small_stove, {"burn.lit_at=23:59", "load.main.at=00:00, 00:30"})
                  .loads.at(0)
                  .times == std::vector<double>{60, 1860});
    }

    TEST_CASE("a time by the clock without the time of lighting is refused and says so") {
        CHECK(problem_of(with("[\"8 min\", \"16 min\"]", "\"19:38\"")).find("needs burn.lit_at") !=
              std::string::npos);
        CHECK(problem_of(schedule("damper = [['19:30', 1]]")).find("needs burn.lit_at") !=
              std::string::npos);
        // A wrong time of lighting is one problem, not one of each time by the clock too.
        CHECK(problem_of(schedule("damper = [['19:30', 1]]\n[burn]\nlit_at = '25:00'")) ==
              "s.toml:23:1: burn.lit_at = \"25:00\": a time of day is written from \"00:00\" to "
              "\"23:59\"");
        CHECK(problem_of(std::string(small_stove) + "[burn]\nlit_at = 19:30:00\n")
                  .find("here stands a time of day such as 19:30 in quotes") != std::string::npos);
        CHECK(problem_of(schedule("damper = [['19:70', 1]]\n[burn]\nlit_at = '19:00'"))
                  .find("from \"00:00\" to \"23:59\"") != std::string::npos);
    }
}
