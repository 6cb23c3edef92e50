#include "cli/report/web/report_page.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/report/file_kind.h"
#include "cli/report/page_text.h"
#include "cli/report/svg_text.h"
#include "cli/report/web/answers_html.h"
#include "cli/report/web/heat_picture.h"
#include "cli/report/web/page_data.h"
#include "cli/report/web/plate_picture.h"
#include "cli/report/web/section_picture.h"
#include "cli/report/web/still_figures.h"
#include "cli/report/web/templates.h"

namespace drawwell {
namespace {

std::string name_of(const PageRun& run) {
    const std::string& title = run.burn.record.title;
    return title.empty() ? run.name : title;
}

std::string title_of(std::span<const PageRun> runs) {
    if (runs.size() == 1) return name_of(runs.front()) + ": its burn";
    std::string title;
    for (const PageRun& run : runs) title += (title.empty() ? "" : ", ") + run.name;
    return title + ": burns compared";
}

std::string which(std::span<const PageRun> runs) {
    std::string text;
    for (const PageRun& run : runs) {
        const std::vector<double>& time = run.burn.results.time;
        text += (text.empty() ? "" : "<br>") +
                (runs.size() > 1 ? escaped(run.name) + ": " : std::string()) +
                escaped(name_of(run)) + ", " + show_duration(time.empty() ? 0 : time.back());
        text += run.burn.record.started_from.empty()
                    ? " from lighting"
                    : ", begun where " + escaped(run.burn.record.started_from) + " ended";
        for (const std::string& set : run.burn.record.overrides) text += "; " + escaped(set);
    }
    return text;
}

std::string warning(std::span<const PageRun> runs) {
    std::string text =
        "<p class=\"warning\"><strong>A calculation is no permission.</strong> Carbon monoxide "
        "kills unnoticed: try a new stove outdoors, hang an alarm, follow local codes. <a "
        "href=\"#h-care\">All cautions</a></p>\n";
    for (const PageRun& run : runs)
        if (!run.burn.record.complete)
            text += "<p class=\"warning\"><strong>" + escaped(run.name) +
                    " was stopped before its end:</strong> this holds only as far as it was "
                    "computed.</p>\n";
    return text;
}

/// A picture of each run, several side by side; a run that has none says why.
template <class Picture>
std::string pictures(std::span<const PageRun> runs, std::string_view none, const Picture& picture) {
    std::string html = "<div class=\"runs\">\n";
    for (std::size_t i = 0; i < runs.size(); ++i) {
        html += fmt::format("<figure data-run=\"{}\">", i);
        if (runs.size() > 1) html += "<h3>" + escaped(runs[i].name) + "</h3>\n";
        const std::string svg = picture(runs[i], i);
        html += svg.empty() ? fmt::format("<p>{}</p>", none) : svg;
        html += "</figure>\n";
    }
    return html + "</div>\n";
}

/// In words, at which moment the still pictures show their stoves.
std::string painted_at(std::span<const PageRun> runs) {
    const std::string when = show_duration(shown_moment(runs));
    if (runs.size() == 1)
        return "Painted as it is " + when + " after lighting, when its riser gas is hottest.";
    return "All painted as they are " + when + " after lighting, when the riser gas of " +
           escaped(runs.front().name) + " is hottest, in the time that all of them cover.";
}

std::string section_html(std::span<const PageRun> runs) {
    const double moment = shown_moment(runs);
    return pictures(runs, "Nothing to draw.",
                    [&](const PageRun& run, std::size_t i) {
                        const Results& results = run.burn.results;
                        const auto at = moment_at(results.time, moment);
                        if (!at) return std::string();
                        return section_picture(run.stove, results, *at,
                                               fmt::format("stove-{}", i)) +
                               fmt::format(
                                   "<p class=\"reading live-only\" id=\"reading-{}\"></p>"
                                   "<figcaption>Heights in mm over the tunnel floor. "
                                   "{}.</figcaption>",
                                   i, escaped(section_dimensions(run.stove)));
                    }) +
           "<p class=\"hint still\" id=\"painted\">" + painted_at(runs) + "</p>\n" + heat_key() +
           "<p class=\"hint\">Grey: not painted. Sheet metal is drawn thicker than "
           "it is, so "
           "that it shows. Dashed: what is fitted, side air and a bypass, before or behind the "
           "cut. The flue is turned into the plane of the cut; leaks are not drawn.</p>\n";
}

/// Line by line, so that a reader can copy it as it is.
std::string preformatted(std::string_view text) {
    std::string html = "<pre class=\"stove\" tabindex=\"0\">";
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        html += escaped(text.substr(0, end)) + "\n";
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return html + "</pre>\n";
}

std::string stove_files(std::span<const PageRun> runs) {
    std::string html;
    for (const PageRun& run : runs) {
        const std::string of = runs.size() > 1 ? ", " + escaped(run.name) : "";
        html += "<details><summary>" + escaped(run.burn.record.stove_name) + of + "</summary>\n";
        if (!run.burn.record.overrides.empty()) {
            html += "<p>Changed on the command line:</p>\n<ul>\n";
            for (const std::string& set : run.burn.record.overrides)
                html += "<li><code>--set " + escaped(set) + "</code></li>\n";
            html += "</ul>\n";
        }
        html += "<p><button type=\"button\" class=\"copy live-only\">Copy</button></p>\n" +
                preformatted(run.burn.record.stove_text) + "</details>\n";
        html += "<details class=\"long\"><summary>Every key with the value used" + of +
                "</summary>\n" + preformatted(run.burn.record.stove_resolved) + "</details>\n";
    }
    return html;
}

std::string compare_tools(std::span<const PageRun> runs) {
    if (runs.size() < 2) return "";
    std::string html = "<label><input type=\"checkbox\" id=\"difference\">differences from " +
                       escaped(runs.front().name) + "</label>\n<ul class=\"scale\">";
    for (std::size_t i = 0; i < runs.size(); ++i)
        html += fmt::format(
            "<li><svg width=\"46\" height=\"8\" aria-hidden=\"true\"><line x1=\"0\" x2=\"46\" "
            "y1=\"4\" y2=\"4\" stroke=\"currentColor\" stroke-width=\"2\" "
            "data-dash=\"{}\"/></svg>{}"
            "</li>",
            i, escaped(runs[i].name));
    return html + "</ul>\n";
}

std::string origin(std::span<const PageRun> runs) {
    std::string text = "Written by drawwell " DRAWWELL_VERSION;
    for (const PageRun& run : runs)
        text += "; " + escaped(run.name) + " computed " + escaped(run.burn.record.created);
    return text + ". This page needs nothing from the network. Figures by dygraphs (MIT licence).";
}

/// Without its last line, which names a file that is not there.
std::string without_map(std::string_view script) {
    const std::size_t map = script.rfind("# sourceMappingURL");
    if (map == std::string_view::npos) return std::string(script);
    return std::string(script.substr(0, script.rfind('\n', map)));
}

}  // namespace

std::string report_page(std::span<const PageRun> runs) {
    return filled(web_template("page.html"), [&](std::string_view name) -> std::string {
        if (name == "generator") return fmt::format("{}{}", page_mark, DRAWWELL_VERSION);
        if (name == "title") return escaped(title_of(runs));
        if (name == "which") return which(runs);
        if (name == "verdict") return verdict_html(runs);
        if (name == "warning") return warning(runs);
        if (name == "answers") return answers_html(runs);
        if (name == "heat")
            return pictures(runs, "No heat was given.", [](const PageRun& run, std::size_t) {
                return heat_picture(run.burn.summary);
            });
        if (name == "section") return section_html(runs);
        if (name == "plate")
            return pictures(runs, "The stove has no plate.",
                            [](const PageRun& run, std::size_t) {
                                return plate_picture(run.burn.results);
                            }) +
                   band_key();
        if (name == "compare") return compare_tools(runs);
        if (name == "panels") return figures_html(runs);
        if (name == "care") return care_html(runs);
        if (name == "answers_in_full") return answers_in_full(runs);
        if (name == "stove_file") return stove_files(runs);
        if (name == "origin") return origin(runs);
        if (name == "data") return page_data(runs);
        return without_map(web_template(name));
    });
}

}  // namespace drawwell
