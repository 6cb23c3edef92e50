#include "cli/report/web/report_page.h"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "cli/report/read_result.h"
#include "cli/report/web/heat_colour.h"
#include "cli/report/web/section_picture.h"
#include "tests/cli/report/svg_reading.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

/// A short burn of the sample, and one with half its flue; computed once.
const std::vector<PageRun>& two_runs() {
    static const std::vector<PageRun> runs = [] {
        const ScratchFolder folder;
        const std::string sample =
            " burn $sources/data/stoves/allotment-kitchen.toml --for 12min --quiet ";
        run_program(folder, sample + "-o a.h5");
        run_program(folder, sample + "-o b.h5 --set flue.stack.length=1.1m");
        return std::vector<PageRun>{page_run(read_result(folder / "a.h5"), "as <filed>"),
                                    page_run(read_result(folder / "b.h5"), "low")};
    }();
    return runs;
}

const std::string& one_page() {
    static const std::string page = report_page(std::span(two_runs()).first(1));
    return page;
}

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

/// The pictures of a page whose opening holds `mark`.
std::vector<std::string> pictures(const std::string& page, std::string_view mark) {
    std::vector<std::string> found;
    for (std::size_t at = page.find("<svg "); at != std::string::npos;
         at = page.find("<svg ", at + 1)) {
        if (page.substr(at, page.find('>', at) - at).find(mark) == std::string::npos) continue;
        found.push_back(page.substr(at, page.find("</svg>", at) + 6 - at));
    }
    return found;
}

nlohmann::json data_of(const std::string& page) {
    const std::string_view opening = "id=\"data\">";
    const std::size_t from = page.find(opening) + opening.size();
    return nlohmann::json::parse(page.substr(from, page.find("</script>", from) - from));
}

}  // namespace

TEST_SUITE("cli/report/web/report_page") {
    TEST_CASE("a page needs nothing from outside and stays small") {
        const std::string& page = one_page();
        CHECK(page.size() < 2'000'000);
        for (const std::string_view place : {"{{title}}", "{{verdict}}", "{{heat}}", "{{section}}"})
            CHECK_FALSE(contains(page, place));
        for (const std::string_view outside :
             {"src=\"http", "@import", "url(http", "href=\"http", "sourceMappingURL"})
            CHECK_FALSE(contains(page, outside));
    }

    TEST_CASE("the verdict stands before every figure, cautions and the stove file after") {
        const std::string& page = one_page();
        const std::size_t verdict = page.find("<h1>");
        REQUIRE(verdict != std::string::npos);
        CHECK(contains(page.substr(verdict, 200), "draw"));
        CHECK(verdict < page.find("<table>"));
        CHECK(verdict < page.find("<svg "));
        CHECK(contains(page, "Carbon monoxide kills unnoticed"));
        CHECK(contains(page, "licensed practitioner"));
        CHECK(contains(page, "bore = &quot;125 mm&quot;"));
        CHECK(contains(page, "known from 200000 up"));
    }

    TEST_CASE("pictures are sound, still figures carry names of their own") {
        const std::string& page = one_page();
        REQUIRE(pictures(page, "picture section").size() == 1);
        for (const std::string& picture : pictures(page, "role=\"img\""))
            CHECK(well_formed(picture));
        CHECK(count_of(page, "id=\"plot\"") == 0);
        CHECK(count_of(page, "id=\"plot-path\"") == 1);
        CHECK(pictures(page, "picture plate").size() == 1);
        CHECK(pictures(page, "picture heat").size() == 1);
        CHECK(pictures(page, "width=\"800\"").size() >= 7);
    }

    TEST_CASE("the section is painted by every column that can, in colours that differ") {
        const std::string section = pictures(one_page(), "picture section").at(0);
        for (const std::string& column : section_columns())
            CHECK(contains(section, "data-c=\"" + column + "\""));
        CHECK(contains(section, "725 riser top"));
        CHECK(contains(section, "770 under plate"));
        CHECK(contains(section, "240 feed mouth"));
    }

    TEST_CASE("the section is to scale") {
        // The barrel's gas face on the right lies a radius, 200 mm, less its sheet of 1.2 mm from
        // the riser's axis, which stands 340 mm from the feed's; the plate's middle over that.
        const std::string section = pictures(one_page(), "picture section").at(0);
        const std::string barrel = section.substr(section.rfind("data-c=\"barrel_temperature\""));
        CHECK(contains(barrel.substr(0, 300), "x=\"538.8\""));
        CHECK(contains(section,
                       "data-c=\"plate_temperature\" data-n=\"plate\">\n<rect class=\"cell\" "
                       "data-i=\"0\" x=\"340.0\" y=\"-778.0\""));
    }

    TEST_CASE("the script's data are whole and cannot end the script") {
        const auto data = data_of(one_page());
        CHECK(data["runs"].size() == 1);
        CHECK(data["runs"][0]["name"] == "as <filed>");
        CHECK_FALSE(contains(one_page().substr(one_page().find("id=\"data\">"), 2000), "<filed>"));
        const auto& run = data["runs"][0];
        for (const auto& panel : data["panels"]) {
            const auto& lines = run["panels"][panel["id"].get<std::string>()];
            CHECK(lines["s"].size() == panel["labels"].size());
            for (const auto& line : lines["s"]) CHECK(line.size() == lines["t"].size());
        }
        CHECK(run["section"]["c"].size() == section_columns().size());
        for (const auto& moments : run["section"]["c"])
            CHECK(moments.size() == run["section"]["t"].size());
        const double last = run["panels"]["path"]["t"].back();
        CHECK(last == doctest::Approx(12));
        const double moment = data["moment"];
        CHECK(moment > 0);
        CHECK(moment <= 12);
    }

    TEST_CASE("several burns stand beside each other, with what changed") {
        const std::string page = report_page(two_runs());
        CHECK(contains(page, "as &lt;filed&gt;"));
        CHECK(count_of(page, "class=\"verdict") == 2);
        CHECK(pictures(page, "picture section").size() == 2);
        CHECK(contains(page, "class=\"change\">"));
        CHECK(contains(page, " Pa less</span>"));  // half the flue draws less
        CHECK(contains(page, "id=\"difference\""));
        CHECK_FALSE(contains(one_page(), "id=\"difference\""));
        CHECK(contains(page, "--set flue.stack.length=1.1m"));
        CHECK(data_of(page)["runs"].size() == 2);
    }

    TEST_CASE("stoves on a page are all painted at one moment, one that every burn covers") {
        std::vector<PageRun> runs = two_runs();
        // The first burn's riser gas is hottest in its last minute, after the other was stopped.
        std::vector<double>& time = runs[0].burn.results.time;
        for (double& t : time) t *= 3;
        const double most = shown_moment(runs);
        CHECK(most > 0);
        CHECK(most <= runs[1].burn.results.time.back());
        CHECK(most == shown_moment({runs.data(), 2}));
        const std::string page = report_page(runs);
        CHECK(pictures(page, "picture section").size() == 2);
        CHECK(contains(page, "All painted as they are "));
        CHECK(data_of(page)["moment"].get<double>() == doctest::Approx(most / 60));
        // As hot as recorded at that moment, each by its own rows.
        const auto top_of = [&](std::size_t i) {
            const Results& results = runs[i].burn.results;
            const Column& gas = *results.find("riser_gas_temperature");
            return heat_colour(value_at(gas, gas.width - 1, *moment_at(results.time, most)) -
                               273.15);
        };
        const auto sections = pictures(page, "picture section");
        for (std::size_t i = 0; i < 2; ++i) {
            CAPTURE(i);
            const std::string& svg = sections[i];
            const std::size_t group = svg.find("data-c=\"riser_gas_temperature\"");
            const std::size_t end = svg.find("</g>", group);
            CHECK(svg.substr(group, end - group).find(top_of(i)) != std::string::npos);
        }
    }

    TEST_CASE("a template's parts are put in once, and are not templates themselves") {
        const auto part = [](std::string_view name) { return "[" + std::string(name) + "{{x}}]"; };
        CHECK(filled("a {{b}} c {{d}}", part) == "a [b{{x}}] c [d{{x}}]");
        CHECK(filled("a {{b", part) == "a {{b");
        CHECK(filled("", part).empty());
    }

    TEST_CASE("how sure the verdict is stands under it when other days were computed") {
        PageRun run = two_runs().front();
        run.burn.likely = {100,
                           83,
                           50,
                           {{"reserve_draw_min_pa", 0.04, 5.8, 6.9},
                            {"plate_centre_max_c", 244, 306, 358},
                            {"air_flow_mean_kg_s", 0.009, 0.011, 0.013}}};
        run.burn.likely.low.time = run.burn.likely.high.time = run.burn.results.time;
        const std::vector<double> cold(run.burn.results.time.size(), 283.15),
            hot(cold.size(), 473.15);
        run.burn.likely.low.columns = {{"plate_temperature", "K", "plate", "", 1, cold}};
        run.burn.likely.high.columns = {{"plate_temperature", "K", "plate", "", 1, hot}};
        const std::string page = report_page({&run, 1});
        const std::size_t verdict = page.find("class=\"verdict");
        const std::string head = page.substr(verdict, page.find("<table>") - verdict);
        CHECK(
            contains(head, "On 100 other days and fires it draws on 83; smoke comes back on 50."));
        CHECK(contains(head, "from 0.0 to 6.9 Pa"));
        CHECK(contains(head, "from 244 to 358 °C"));
        CHECK(contains(page, "likely 9.0 g/s to 13.0 g/s"));
        CHECK(contains(page, "An upright bar: where a line's peak"));
        const auto bars = data_of(page)["runs"][0]["panels"]["plate"]["likely"];
        REQUIRE(bars.size() == 1);
        CHECK(bars.begin().value()[1] == 244);
        CHECK(bars.begin().value()[2] == 358);
        const auto bands = data_of(page)["runs"][0]["panels"]["plate"]["band"];
        REQUIRE(bands.size() == 1);
        CHECK(bands.begin().value()["low"].front() == 10);
        CHECK(bands.begin().value()["high"].back() == 200);
        CHECK(bands.begin().value()["low"].size() ==
              data_of(page)["runs"][0]["panels"]["plate"]["t"].size());
        CHECK(contains(page, "A shaded band"));
        for (const std::string_view words :
             {"other days and fires", "likely 9", "upright bar", "shaded band"})
            CHECK_FALSE(contains(one_page(), words));
    }

    TEST_CASE("what the builder noted lies as dots over the figures that show it") {
        PageRun run = two_runs().front();
        const std::size_t figures = run.panels.size();
        add_log(run, read_burn_log("time_min,outlet_gas_temperature_c,wood_left,flue_gas_flow\n"
                                   "2,80,1.5,\n6,,,0.01\n",
                                   run.burn.results));
        CHECK(run.panels.size() == figures);
        add_log(run, read_burn_log("time_min,outlet_gas_temperature_c,ash_depth\n2,80,1.2\n",
                                   run.burn.results));
        CHECK(run.panels.size() == figures + 1);  // one that no figure showed
        const std::string page = report_page({&run, 1});
        CHECK(contains(page, "flue outlet, logged"));
        const auto path = data_of(page)["runs"][0]["panels"]["path"];
        CHECK(path["log"]["flue outlet"]["t"][0] == 2);
        CHECK(path["log"]["flue outlet"]["v"][0] == 80);
        CHECK(path["log"].size() == 1);
        CHECK_FALSE(contains(one_page(), "flue outlet, logged"));
    }

    TEST_CASE("what is fitted, a bell and a bypass are drawn to scale") {
        const ScratchFolder folder;
        const auto section_of = [&](const std::string& stove, const std::string& more = "") {
            run_program(folder, " burn $sources/data/stoves/" + stove +
                                    ".toml --for 2min --quiet -o a.h5 " + more);
            const PageRun run = page_run(read_result(folder / "a.h5"), "a");
            const auto at = moment_at(run.burn.results.time, shown_moment({&run, 1}));
            REQUIRE(at);
            return section_picture(run.stove, run.burn.results, *at, "stove");
        };
        const std::string bell = section_of("workshop-bell");
        CHECK(contains(bell, "<title>bell, "));
        CHECK(contains(section_of("workshop-level-run", "--set schedule.bypass=open"),
                       "<title>bypass</title>"));
        const std::string kitchen = section_of("workshop-kitchen");
        CHECK(contains(kitchen, "<title>pot, kettle</title>"));
        CHECK(contains(kitchen, "<title>oven tube, bread</title>"));
        CHECK(well_formed(bell.substr(0, bell.find("</svg>") + 6)));
    }

    TEST_CASE("a burn too short to judge has a head that is neither good nor bad") {
        PageRun run = two_runs().front();
        run.burn.summary.draws.reset();
        run.burn.summary.reserve_draw_min.reset();
        const std::string page = report_page({&run, 1});
        CHECK(contains(page, "<div class=\"verdict open\"><h1>TOO SHORT TO JUDGE"));
        CHECK_FALSE(contains(page, "DOES NOT DRAW"));
    }
}
