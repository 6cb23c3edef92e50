#include "cli/report/web/page_data.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "cli/report/shown_unit.h"
#include "cli/report/web/figure_rows.h"
#include "cli/report/web/heat_colour.h"
#include "cli/report/web/kept_rows.h"
#include "cli/report/web/likely_bar.h"
#include "cli/report/web/section_picture.h"

namespace drawwell {
namespace {

using Json = nlohmann::ordered_json;

// What all runs of a page share; our choice, so that it stays well below two megabytes.
constexpr std::size_t panel_rows = 1600, section_numbers = 200'000;
// How far straight lines between the section's frames may be off what was recorded, where there is
// room for as many frames as that takes: less than any eye tells by colour; our choice.
constexpr double section_near = 1;  // [K]

/// To four digits, but no more than three decimals.
Json number(double value) {
    if (!std::isfinite(value)) return nullptr;
    const double size = std::abs(value);
    const double step =
        size > 0 ? std::clamp(std::pow(10.0, std::floor(std::log10(size)) - 3), 1e-3, 1.0) : 1;
    // Divided by a whole number: 0.29 and not 0.29000000000000004.
    const double rounded = step < 1 ? std::round(value / step) / std::round(1 / step)
                                    : std::round(value / step) * step;
    if (rounded == std::floor(rounded) && size < 1e9)
        return std::lround(rounded);  // 640, not 640.0
    return rounded;
}

Json minutes(const std::vector<double>& time, const std::vector<std::size_t>& rows) {
    Json list = Json::array();
    for (const std::size_t row : rows)
        list.push_back(std::round(to_minutes(time[row]) * 1000) / 1000);
    return list;
}

/// What was noted of a line, as minutes and shown values.
Json log_data(const LoggedColumn& log, const ShownUnit& unit) {
    Json data{{"t", Json::array()}, {"v", Json::array()}};
    for (std::size_t i = 0; i < log.time.size(); ++i) {
        data["t"].push_back(std::round(to_minutes(log.time[i]) * 100) / 100);
        data["v"].push_back(number(unit.from_si(log.value[i])));
    }
    return data;
}

Json panel_data(const PageRun& run, const PagePanel& panel, std::size_t most) {
    const std::vector<double>& time = run.burn.results.time;
    const std::vector<std::size_t> rows = figure_rows(run, panel, most);
    Json data;
    data["t"] = minutes(time, rows);
    data["s"] = Json::object();
    for (const ShownSeries& series : panel.shown.series) {
        Json& values = data["s"][series.label] = Json::array();
        for (const std::size_t row : rows) values.push_back(number(series.values[row]));
        if (const auto bar = likely_bar(run, series))
            data["likely"][series.label] = {number(bar->minutes), number(bar->low),
                                            number(bar->high)};
        if (const auto band = likely_band(run, series)) {
            Json low = Json::array(), high = Json::array();
            for (const std::size_t row : rows) {
                low.push_back(number(band->low[row]));
                high.push_back(number(band->high[row]));
            }
            data["band"][series.label] = {{"low", low}, {"high", high}};
        }
        if (const LoggedColumn* log = logged(run, series))
            data["log"][series.label] =
                log_data(*log, shown_unit(run.burn.results.find(log->column)->unit));
    }
    return data;
}

/// Temperatures of all painted pieces, in whole degrees, moment by moment.
Json section_data(const PageRun& run, std::size_t most_numbers) {
    const Results& results = run.burn.results;
    std::vector<const Column*> painted;
    std::vector<Track> tracks;
    std::size_t cells = 0;
    for (const std::string& name : section_columns())
        if (const Column* column = results.find(name); column && column->width > 0) {
            painted.push_back(column);
            tracks.push_back({column->values, column->width, section_near});
            cells += column->width;
        }
    const std::vector<std::size_t> rows = frame_rows(
        tracks, results.time, run.events, most_numbers / std::max<std::size_t>(cells, 1));
    Json data;
    data["t"] = minutes(results.time, rows);
    data["c"] = Json::object();
    for (const Column* column : painted) {
        Json& moments = data["c"][column->name] = Json::array();
        for (const std::size_t row : rows) {
            Json values = Json::array();
            for (std::size_t cell = 0; cell < column->width; ++cell) {
                const double kelvin = column->values[row * column->width + cell];
                values.push_back(std::isfinite(kelvin) ? Json(std::lround(to_celsius(kelvin)))
                                                       : Json(nullptr));
            }
            moments.push_back(std::move(values));
        }
    }
    return data;
}

/// The figures of all runs, each once, with the lines any run has.
Json panel_list(std::span<const PageRun> runs) {
    Json list = Json::array();
    for (const PageRun& run : runs)
        for (const PagePanel& panel : run.panels) {
            const auto same = std::find_if(
                list.begin(), list.end(), [&](const Json& each) { return each["id"] == panel.id; });
            const bool known = same != list.end();
            if (!known)
                list.push_back({{"id", panel.id},
                                {"title", panel.shown.title},
                                {"unit", panel.shown.unit},
                                {"labels", Json::array()}});
            Json& labels = (known ? *same : list.back())["labels"];
            for (const ShownSeries& series : panel.shown.series)
                if (std::find(labels.begin(), labels.end(), series.label) == labels.end())
                    labels.push_back(series.label);
        }
    return list;
}

}  // namespace

std::string page_data(std::span<const PageRun> runs) {
    Json json;
    json["scale"] = Json::array();
    for (const HeatAnchor& anchor : heat_scale)
        json["scale"].push_back({anchor.celsius, anchor.rgb[0], anchor.rgb[1], anchor.rgb[2]});
    json["moment"] = to_minutes(shown_moment(runs));
    json["panels"] = panel_list(runs);
    json["runs"] = Json::array();
    for (const PageRun& run : runs) {
        Json data;
        data["name"] = run.name;
        data["panels"] = Json::object();
        for (const PagePanel& panel : run.panels)
            data["panels"][panel.id] = panel_data(run, panel, panel_rows / runs.size());
        data["section"] = section_data(run, section_numbers / runs.size());
        json["runs"].push_back(std::move(data));
    }
    std::string text = json.dump(-1, ' ', false, Json::error_handler_t::replace);
    // "</script>" in a name must not end the script that holds this.
    std::string safe;
    for (const char c : text) safe += c == '<' ? std::string("\\u003c") : std::string(1, c);
    return safe;
}

}  // namespace drawwell
