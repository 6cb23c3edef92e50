#include "cli/report/web/still_figures.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "cli/report/shown_unit.h"
#include "cli/report/svg_text.h"
#include "cli/report/web/figure_rows.h"
#include "cli/report/web/likely_bar.h"

namespace drawwell {
namespace {

constexpr std::size_t still_rows = 360;  // more than its 556 pixels show; our choice

const PagePanel* panel_of(const PageRun& run, std::string_view id) {
    const auto found = std::find_if(run.panels.begin(), run.panels.end(),
                                    [&](const PagePanel& panel) { return panel.id == id; });
    return found == run.panels.end() ? nullptr : &*found;
}

void add_lines(std::vector<FigureLine>& lines, std::vector<std::string>& labels, const PageRun& run,
               const PagePanel& panel, bool dashed) {
    const std::vector<double>& time = run.burn.results.time;
    const std::vector<std::size_t> rows = figure_rows(run, panel, still_rows);
    for (const ShownSeries& series : panel.shown.series) {
        auto at = std::find(labels.begin(), labels.end(), series.label);
        const bool known = at != labels.end();
        if (!known) at = labels.insert(labels.end(), series.label);
        const auto n = static_cast<std::size_t>(at - labels.begin());
        FigureLine line{known ? "" : series.label, {}, {line_colour(n), dashed || line_dashed(n)}};
        for (const std::size_t row : rows)
            line.points.push_back({to_minutes(time[row]), series.values[row]});
        const ChartStyle style = line.style;
        lines.push_back(std::move(line));
        if (const auto bar = likely_bar(run, series))
            lines.push_back({"", {{bar->minutes, bar->low}, {bar->minutes, bar->high}}, style});
        if (const auto band = likely_band(run, series))
            for (const auto* side : {&band->low, &band->high}) {
                FigureLine edge{"", {}, {style.colour, true}};
                for (const std::size_t row : rows)
                    edge.points.push_back({to_minutes(time[row]), (*side)[row]});
                lines.push_back(std::move(edge));
            }
        const LoggedColumn* log = logged(run, series);
        if (!log) continue;
        const ShownUnit unit = shown_unit(run.burn.results.find(log->column)->unit);
        FigureLine dots{series.label + ", logged", {}, style, true};
        for (std::size_t i = 0; i < log->time.size(); ++i)
            dots.points.push_back({to_minutes(log->time[i]), unit.from_si(log->value[i])});
        lines.push_back(std::move(dots));
    }
}

/// What the bars and bands of a figure mean; nothing where it has none.
std::string likely_note(const PageRun& run, const PagePanel& panel) {
    const std::vector<ShownSeries>& all = panel.shown.series;
    std::string note;
    if (std::any_of(all.begin(), all.end(),
                    [&](const ShownSeries& line) { return likely_bar(run, line).has_value(); }))
        note +=
            " An upright bar: where a line's peak, or the weakest spare draw, lies on nine "
            "days of ten.";
    if (std::any_of(all.begin(), all.end(),
                    [&](const ShownSeries& line) { return likely_band(run, line).has_value(); }))
        note +=
            " A shaded band, on paper its two edges: where the line lies on nine days of ten, "
            "moment by moment.";
    return note;
}

std::string still_svg(std::span<const PageRun> runs, const PagePanel& first) {
    std::vector<FigureLine> lines;
    std::vector<std::string> labels;
    for (const PageRun& run : runs)
        if (const PagePanel* panel = panel_of(run, first.id))
            add_lines(lines, labels, run, *panel, &run != &runs.front());
    std::string svg = series_chart(first.shown.title, first.shown.unit, lines).svg();
    // Each picture cuts its lines off at its own frame, by a name that a page must not hold twice.
    const std::string name = fmt::format("plot-{}", first.id);
    for (const std::string_view use : {"id=\"plot\"", "url(#plot)"}) {
        const std::string now =
            use.starts_with("id") ? "id=\"" + name + "\"" : "url(#" + name + ")";
        for (std::size_t at = svg.find(use); at != std::string::npos;
             at = svg.find(use, at + now.size()))
            svg.replace(at, use.size(), now);
    }
    return svg;
}

}  // namespace

std::string figures_html(std::span<const PageRun> runs) {
    std::string html;
    std::set<std::string_view> done;
    for (const PageRun& run : runs)
        for (const PagePanel& panel : run.panels) {
            if (!done.insert(panel.id).second) continue;
            html += fmt::format(
                "<figure class=\"panel\" aria-labelledby=\"h-{0}\"><h3 id=\"h-{0}\">{1}{2}</h3>"
                "<figcaption>{3}{5}</figcaption>\n<div class=\"chart live-only\" "
                "id=\"chart-{0}\"></div><ul class=\"key live-only\" id=\"key-{0}\"></ul>\n"
                "<div class=\"still\">{4}</div></figure>\n",
                panel.id, escaped(panel.shown.title),
                panel.shown.unit.empty() ? "" : ", " + panel.shown.unit, escaped(panel.note),
                still_svg(runs, panel), likely_note(run, panel));
        }
    return html;
}

}  // namespace drawwell
