#include "cli/report/series_svg.h"

#include <doctest/doctest.h>

#include <set>

#include "cli/report/shown_unit.h"
#include "solver/errors.h"
#include "tests/cli/report/sample_run.h"
#include "tests/cli/report/svg_reading.h"

using namespace drawwell;

namespace {

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/report/series_svg") {
    TEST_CASE("series are drawn in the units people read, a figure for each unit") {
        const std::string figure = series_svg(sample_results(), "test <stove>");
        CHECK(well_formed(figure));
        CHECK(count_of(figure, "<svg ") == 3);  // one that holds two
        CHECK(contains(figure, ">Pa</text>"));
        CHECK(contains(figure, ">°C</text>"));
        CHECK(contains(figure, "minutes after lighting"));
        CHECK(contains(figure, "test &lt;stove&gt;"));
        CHECK(contains(figure, "plate_temperature[0.15m]"));
        CHECK(contains(figure, ">200</text>"));  // 480 K at most, in steps of 50 or 100 °C
    }

    TEST_CASE("one unit makes one figure, and too many lines are refused") {
        Results results = sample_results();
        results.columns.pop_back();
        CHECK(count_of(series_svg(results, ""), "<svg ") == 1);
        results.columns.insert(results.columns.end(), 9, results.columns.front());
        CHECK_THROWS_WITH_AS(series_svg(results, ""), doctest::Contains("at most"), InputError);
    }

    TEST_CASE("of many cells the first and the last are among the lines, each once") {
        Results results{{0, 1}, {}, {{"riser", "K", "gas", "cell", 23, {}}}};
        for (int i = 0; i < 46; ++i) results.columns[0].values.push_back(300);
        const ShownPanel panel = panel_of(results, results.columns[0]);
        CHECK(panel.series.size() == 6);
        CHECK(panel.series.front().label == "riser[0]");
        CHECK(panel.series.back().label == "riser[22]");
        std::set<std::string> labels;
        for (const ShownSeries& series : panel.series) labels.insert(series.label);
        CHECK(labels.size() == 6);
    }

    TEST_CASE("lines are told apart by colour, further ones by dashes too") {
        std::set<std::pair<std::string_view, bool>> styles;
        for (std::size_t n = 0; n < 12; ++n) styles.insert({line_colour(n), line_dashed(n)});
        CHECK(styles.size() == 12);
    }

    TEST_CASE("units are those of the trade") {
        CHECK(shown_unit("K").from_si(373.15) == doctest::Approx(100));
        CHECK(shown_unit("kg/s").from_si(0.011) == doctest::Approx(11));
        CHECK(shown_unit("kg/s").label == "g/s");
        CHECK(shown_unit("W").from_si(3400) == doctest::Approx(3.4));
        CHECK(shown_unit("m").from_si(0.002) == doctest::Approx(2));
        CHECK(shown_unit("Pa").label == "Pa");
        CHECK(shown_unit("Pa").from_si(6.5) == 6.5);
        CHECK(shown_unit("1").label.empty());
    }

    TEST_CASE("nothing is among the levels of a figure, unless all is far from it") {
        const auto svg = [](double from, double to) {
            const std::vector<FigureLine> lines{{"a", {{5, from}, {15, to}}, {"#000000"}}};
            return series_chart("t", "Pa", lines).svg();
        };
        const std::string nothing = ">0</text>";
        CHECK(svg(2, 10).find(nothing) != std::string::npos);
        CHECK(svg(8, 10).find(nothing) == std::string::npos);
    }
}
