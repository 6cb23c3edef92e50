#include "cli/read/over_time.h"

#include <doctest/doctest.h>

#include "cli/read/resolved_text.h"
#include "tests/cli/read/small_stove.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

constexpr std::string_view night = "time_min,outdoor_c,gust_m_s\n0,5,0\n60,-5,12\n";

std::string night_file(const std::string& name) {
    if (name == "night.csv") return std::string(night);
    if (name == "bad.csv") return "time_min,outdoor_c\n0,x\n1,y\n";
    throw InputError("cannot read " + name);
}

Stove read_with_files(std::string_view text, std::initializer_list<std::string_view> sets = {}) {
    return read_stove(text, "s.toml", overrides(sets), read_library(), night_file);
}

std::string all_of(const std::vector<std::string>& lines) {
    std::string all;
    for (const std::string& line : lines) all += (all.empty() ? "" : " | ") + line;
    return all;
}

/// The problems of a text that may name files, between strokes.
std::string problems_with_files(std::string_view text,
                                std::initializer_list<std::string_view> sets = {}) {
    try {
        read_with_files(text, sets);
    } catch (const InputError& error) {
        return error.what();
    }
    return "";
}

const std::string weather = std::string(small_stove) + "[site]\nweather = \"night.csv\"\n";

std::string two_loads(std::string_view schedule) {
    return with("at = [\"8 min\", \"16 min\"]\n", "[load.first]\npieces = 2\n") + "[schedule]\n" +
           std::string(schedule) + "\n";
}

}  // namespace

TEST_SUITE("cli/read/over_time") {
    TEST_CASE("a file of weather fills the site's tables, and the resolved text holds them") {
        const Stove stove = read_with_files(weather);
        CHECK(stove.site.outdoor(1800) == doctest::Approx(273.15).epsilon(1e-12));
        CHECK(stove.site.gust(3600) == 12);
        CHECK(stove.site.wind(0) == 0);
        CHECK(stove.site.gust_factor == 0.3);
        const std::string resolved = resolved_text(stove);
        CHECK(resolved.find("night.csv") == std::string::npos);
        const Stove again = read(resolved);
        CHECK(again.site.outdoor.y() == stove.site.outdoor.y());
        CHECK(again.site.gust.x() == stove.site.gust.x());
    }

    TEST_CASE("every problem of a file of weather is told with the key that names it") {
        CHECK(problems_with_files(with("[plate]", "[plate]\nthicknes = '5 mm'") +
                                  "[site]\nweather = \"bad.csv\"\n") ==
              "s.toml:13:1: plate.thicknes = \"5 mm\": unknown key; did you mean "
              "\"plate.thickness\"?\n"
              "s.toml:22:1: site.weather = \"bad.csv\": bad.csv:2: outdoor_c = x: a number is "
              "missing\n"
              "s.toml:22:1: site.weather = \"bad.csv\": bad.csv:3: outdoor_c = y: a number is "
              "missing");
        CHECK(problems_with_files(weather, {"site.weather=day.csv"}) ==
              "--set site.weather=day.csv: cannot read day.csv");
        CHECK(all_of(problems_of(weather)).find("no other file can be read from here") !=
              std::string::npos);
    }

    TEST_CASE("a key beside its column of weather is a contradiction, unless one is an override") {
        const std::string both = weather + "outdoor = '5 °C'\n";
        CHECK(problems_with_files(both) ==
              "s.toml:22:1: site.outdoor = \"5 °C\": site.weather says it too: leave one of them "
              "out");
        CHECK(read_with_files(weather, {"site.outdoor=9 °C"}).site.outdoor(3600) ==
              doctest::Approx(282.15));
        CHECK(read_with_files(weather, {"site.outdoor=9 °C"}).site.gust(3600) == 12);
        CHECK(read_with_files(std::string(small_stove) + "[site]\noutdoor = '9 °C'\n",
                              {"site.weather=night.csv"})
                  .site.outdoor(3600) == doctest::Approx(268.15));
    }

    TEST_CASE("loads go in by name at their times") {
        const Stove stove = read(two_loads(
            "load = [['8 min', 'first'], ['16 min', 'main'], ['16 min', 'first'], ['1 h', "
            "'main']]"));
        REQUIRE(stove.loads.size() == 2);
        CHECK(stove.loads[0].name == "main");
        CHECK(stove.loads[0].times == std::vector<double>{960, 3600});
        CHECK(stove.loads[1].times == std::vector<double>{480, 960});
        CHECK(resolved_text(stove).find("at = [\"8 min\", \"16 min\"]") != std::string::npos);
        CHECK(read(two_loads("load = [['20:00', 'first'], ['20:10', 'main']]\n[burn]\nlit_at = "
                             "'19:30'"))
                  .loads[1]
                  .times == std::vector<double>{1800});
    }

    TEST_CASE("a load that is none, goes in never, or is told twice, is refused") {
        CHECK(all_of(problems_of(two_loads("load = [['8 min', 'firts'], ['9 min', 'main'], ['10 "
                                           "min', 'first'], ['11 min', 'firts']]"))) ==
              "s.toml:22:9: schedule.load = [[\"8 min\", \"firts\"], [\"9 min\", \"main\"], "
              "[\"10 min\", \"first\"], [\"11 min\", \"firts\"]]: there is no [load.firts]; did "
              "you mean \"first\"?");
        CHECK(all_of(problems_of(two_loads("load = [['8 min', 'main']]"))) ==
              "s.toml:19:7: load.first.at is missing: say when the load goes in, or name it in "
              "schedule.load");
        CHECK(
            all_of(problems_of(std::string(small_stove) +
                               "[schedule]\nload = [['8 min', 'main']]\n")) ==
            "s.toml:19:1: load.main.at = [\"8 min\", \"16 min\"]: schedule.load says it too: leave "
            "one of them out");
        CHECK(all_of(problems_of(two_loads("load = [['9 min', 'main'], ['8 min', 'first']]")))
                  .find("the times must increase") != std::string::npos);
        CHECK(all_of(problems_of(two_loads("load = [['9 min', 'main'], ['9 min', 'main']]")))
                  .find("\"main\" goes in twice at the same time") != std::string::npos);
        CHECK(problems_of(two_loads("load = [['-9 min', 'main'], ['9 min', 3]]")).size() == 2);
        CHECK(all_of(problems_of("[riser]\nbore='60 mm'\ntop='2 m'\n[heat]\npower='1 kW'\n"
                                 "[schedule]\nload=[['1 s','a']]\n"))
                  .find("heat.power stands instead of loads") != std::string::npos);
    }

    TEST_CASE("what is moved must be there") {
        const std::string duct = "[riser]\nbore='60 mm'\ntop='2 m'\n[heat]\npower='1 kW'\n";
        const auto lines =
            problems_of(duct +
                        "[schedule]\ndamper='half'\nbypass='half'\nport='half'\nside_air='half'\n"
                        "feed_cover='half'\nplate_cover='half'\n");
        REQUIRE(lines.size() == 6);
        CHECK(lines[0].find("s.toml:7:1: schedule.damper = \"half\": a damper needs a flue") == 0);
        CHECK(lines[1].find("s.toml:8:1: schedule.bypass = \"half\": there is no bypass") == 0);
        CHECK(lines[2].find("s.toml:9:1: schedule.port = \"half\": there is no port") == 0);
        CHECK(lines[3].find("s.toml:10:1: schedule.side_air = \"half\": there is no side air") ==
              0);
        CHECK(lines[4].find("s.toml:11:1: schedule.feed_cover = \"half\": there is no feed") == 0);
        CHECK(lines[5].find("s.toml:12:1: schedule.plate_cover = \"half\": there is no plate") ==
              0);
        // None of it is said, so none of it is asked for.
        CHECK(read(duct).schedule.damper(0) == 1);
        CHECK(resolved_text(read(duct)).find("[schedule]") == std::string::npos);
        CHECK(read(small_stove, {"bypass.bore=100 mm",
                                 "schedule.bypass=[[\"0 s\", \"open\"], "
                                 "[\"5 min\", \"shut\"]]"})
                  .schedule.bypass(299) == 1);
    }

    TEST_CASE("the damper sits in a section of the flue") {
        CHECK(read(small_stove).flue.damper == "");
        CHECK(read(small_stove, {"flue.damper=stack"}).flue.damper == "stack");
        CHECK(all_of(problems_of(small_stove, {"flue.damper=stak"})) ==
              "--set flue.damper=stak: there is no section [flue.stak]; did you mean \"stack\"?");
    }
}
