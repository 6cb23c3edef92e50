#include "cli/report/web/page_data.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <limits>
#include <nlohmann/json.hpp>
#include <random>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "cli/read/resolved_text.h"
#include "cli/read/units.h"
#include "models/burn.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

using nlohmann::json;

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

PageRun burned(const std::string& text, const std::string& name) {
    const Library library = read_library();
    // Spare draw has no part in pictures of temperatures, and takes time.
    const Override no_spare = parse_override("burn.reserve_every=0 s");
    const Stove stove = read_stove(text, name, {&no_spare, 1}, library);
    BurnOutcome outcome = run_burn(stove, library);
    BurnResult burn;
    burn.results = std::move(outcome.results);
    burn.summary = std::move(outcome.summary);
    burn.record.stove_resolved = resolved_text(stove);
    return page_run(burn, name);
}

/// All of data/stoves, by name.
std::vector<PageRun> sample_runs() {
    std::vector<PageRun> runs;
    const std::filesystem::path folder = std::string(DRAWWELL_SOURCES) + "/data/stoves";
    for (const auto& file : std::filesystem::directory_iterator(folder))
        runs.push_back(burned(bytes_of(file.path().string()), file.path().stem().string()));
    return runs;
}

/// Straight between moments, as the page's script reads what it holds; `value` of a place among
/// them.
template <class Value>
double between(const json& minutes, double at, const Value& value) {
    const auto after =
        std::upper_bound(minutes.begin(), minutes.end(), at,
                         [](double t, const json& minute) { return t < minute.get<double>(); });
    if (after == minutes.begin()) return nothing;
    const std::size_t i = static_cast<std::size_t>(after - minutes.begin()) - 1;
    const auto number = [&](const json& each) {
        return each.is_null() ? nothing : each.get<double>();
    };
    if (after == minutes.end()) return number(value(i));
    const double from = minutes[i], to = minutes[i + 1];
    const double share = (at - from) / (to - from), here = number(value(i));
    return share > 0 ? here + share * (number(value(i + 1)) - here) : here;
}

/// What was recorded, straight between rows.
double recorded(const std::vector<double>& time, double at, const auto& value) {
    const auto after = std::upper_bound(time.begin(), time.end(), at);
    const std::size_t i = static_cast<std::size_t>(after - time.begin()) - 1;
    if (after == time.end()) return value(i);
    return value(i) + (at - time[i]) / (time[i + 1] - time[i]) * (value(i + 1) - value(i));
}

/// Moments [s] of a burn, half of them within two minutes of a load.
std::vector<double> moments_of(const PageRun& run, std::mt19937& dice, int count) {
    const double end = run.burn.results.time.back();
    std::vector<double> loads{0};
    for (const Load& load : run.stove.loads)
        loads.insert(loads.end(), load.times.begin(), load.times.end());
    std::uniform_real_distribution<double> any(0, end), near(-120, 120);
    std::uniform_int_distribution<std::size_t> which(0, loads.size() - 1);
    std::vector<double> moments;
    for (int i = 0; i < count; ++i)
        moments.push_back(i % 2 == 0 ? any(dice)
                                     : std::clamp(loads[which(dice)] + near(dice), 0.0, end));
    return moments;
}

/// How far the section's picture is off what was recorded, in kelvin, at the worst.
double section_off(const PageRun& run, const json& data, const std::vector<double>& moments) {
    const Results& results = run.burn.results;
    double worst = 0;
    for (const auto& [name, frames] : data["section"]["c"].items()) {
        const Column* column = results.find(name);
        REQUIRE(column);
        for (const double at : moments)
            for (std::size_t cell = 0; cell < column->width; ++cell) {
                const double shown =
                    between(data["section"]["t"], to_minutes(at),
                            [&](std::size_t i) -> const json& { return frames[i][cell]; });
                const double said = to_celsius(recorded(results.time, at, [&](std::size_t row) {
                    return column->values[row * column->width + cell];
                }));
                CHECK(std::isfinite(shown) == std::isfinite(said));
                if (std::isfinite(said)) worst = std::max(worst, std::abs(shown - said));
            }
    }
    return worst;
}

/// How far the figures' lines are off, as a share of their figure's height.
double figures_off(const PageRun& run, const json& data, const std::vector<double>& moments) {
    double worst = 0;
    for (const PagePanel& panel : run.panels) {
        const json& lines = data["panels"][panel.id];
        double least = 1e9, most = -1e9;
        for (const ShownSeries& series : panel.shown.series)
            for (const double value : series.values)
                if (std::isfinite(value))
                    least = std::min(least, value), most = std::max(most, value);
        for (const ShownSeries& series : panel.shown.series)
            for (const double at : moments) {
                const json& values = lines["s"][series.label];
                const double shown =
                    between(lines["t"], to_minutes(at),
                            [&](std::size_t i) -> const json& { return values[i]; });
                const double said = recorded(run.burn.results.time, at,
                                             [&](std::size_t row) { return series.values[row]; });
                if (std::isfinite(said) && std::isfinite(shown))
                    worst = std::max(worst, std::abs(shown - said) / (most - least));
            }
    }
    return worst;
}

}  // namespace

TEST_SUITE("cli/report/web/page_data") {
    TEST_CASE("pictures show at any moment of any sample what was recorded") {
        const std::vector<PageRun> runs = sample_runs();
        REQUIRE(runs.size() >= 10);
        std::mt19937 dice(1);
        for (const PageRun& run : runs) {
            CAPTURE(run.name);
            const std::vector<double> moments = moments_of(run, dice, 200);
            const json page = json::parse(page_data({&run, 1}));
            const json& alone = page["runs"][0];
            // Frames stand so that lines between them are within 1 K of every row; half a degree
            // is lost to whole degrees, the rest to times in thousandths of a minute.
            const double off = section_off(run, alone, moments);
            // Lines within 0.2 % of the figure's height; a tenth of that to four digits.
            const double line = figures_off(run, alone, moments);
            CHECK(off < 1.7);
            CHECK(line < 0.0025);
            MESSAGE(run.name << " alone: section " << off << " K of "
                             << alone["section"]["t"].size() << " frames, figures " << line << ", "
                             << page_data({&run, 1}).size() << " bytes");
        }
        // Four on a page share its room.
        for (std::size_t first = 0; first + 4 <= runs.size(); first += 3) {
            const std::span<const PageRun> four(&runs[first], 4);
            const std::string text = page_data(four);
            const json page = json::parse(text);
            for (std::size_t i = 0; i < 4; ++i) {
                CAPTURE(four[i].name);
                const std::vector<double> moments = moments_of(four[i], dice, 200);
                const double off = section_off(four[i], page["runs"][i], moments);
                const double line = figures_off(four[i], page["runs"][i], moments);
                // Their share of the room is enough for nearly the same.
                CHECK(off < 3);
                CHECK(line < 0.004);
                MESSAGE(four[i].name << " of four: section " << off << " K of "
                                     << page["runs"][i]["section"]["t"].size()
                                     << " frames, figures " << line << ", " << text.size()
                                     << " bytes");
            }
        }
    }
}
