#include "cli/report/web/answers_html.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>

#include "cli/read/units.h"
#include "cli/report/cautions.h"
#include "cli/report/page.h"
#include "cli/report/page_text.h"
#include "cli/report/page_writer.h"
#include "cli/report/svg_text.h"

namespace drawwell {
namespace {

using Kind = PageBlock::Kind;

std::vector<PageBlock> blocks_of(const PageRun& run) {
    PageFrame frame;
    frame.title = run.burn.record.title;
    frame.complete = run.burn.record.complete;
    if (!run.burn.results.time.empty()) frame.duration = run.burn.results.time.back();
    if (!run.burn.record.started_from.empty())
        frame.begun_from = "begun where " + run.burn.record.started_from + " ended";
    Page page(false);
    write_answers(page, run.burn.summary, frame);
    return page.blocks();
}

/// What the verdict rests on, in a sentence.
std::string reason(const Summary& summary) {
    std::string text;
    if (summary.smoke_back > 0)
        text += fmt::format("Smoke came back for {} in all. ", show_duration(summary.smoke_back));
    if (summary.reserve_draw_min && summary.reserve_draw_min_time)
        text +=
            fmt::format("At its weakest, {} after lighting, {:.1f} Pa of draw are to spare.",
                        show_duration(*summary.reserve_draw_min_time), *summary.reserve_draw_min);
    return text;
}

/// An answer as a row of a table: how a run gives it, and in what unit it is compared.
struct Answer {
    std::string_view label, unit;
    int decimals = 0;
    std::function<std::optional<double>(const Summary&)> value;
    bool minutes = false;        // a time, said as people say it
    std::string_view name = {};  // as a likely range has it
    double scale = 1;            // from that to the unit shown
};

std::optional<double> in(const std::optional<double>& value, double (*change)(double)) {
    return value ? std::optional(change(*value)) : value;
}

std::optional<double> share_to_room(const Summary& summary) {
    if (!(summary.heat_released > 0)) return {};
    return to_percent(summary.heat_to_room / summary.heat_released);
}

const std::vector<Answer>& first_answers() {
    static const std::vector<Answer> answers = {
        {"spare draw at its weakest", "Pa", 1, [](const Summary& s) { return s.reserve_draw_min; },
         false, "reserve_draw_min_pa"},
        {"smoke back out of the feed", "s", 0,
         [](const Summary& s) { return std::optional(s.smoke_back); }, false, "smoke_back_s"},
        {"air while it burns", "g/s", 1,
         [](const Summary& s) { return std::optional(to_grams(s.air_flow_mean)); }, false,
         "air_flow_mean_kg_s", 1000},
        {"that is, times what the wood needs", "", 1,
         [](const Summary& s) { return s.air_ratio_mean; }, false, "air_ratio_mean"},
        {"plate fries (175 °C) after", "", 0, [](const Summary& s) { return s.plate_time_to_fry; },
         true, "plate_time_to_175c_s"},
        {"plate centre at most", "°C", 0,
         [](const Summary& s) { return in(s.plate_centre_max, to_celsius); }, false,
         "plate_centre_max_c"},
        {"plate rim at most", "°C", 0,
         [](const Summary& s) { return in(s.plate_rim_max, to_celsius); }, false,
         "plate_rim_max_c"},
        {"barrel top at most", "°C", 0,
         [](const Summary& s) { return in(s.barrel_top_max, to_celsius); }, false,
         "barrel_top_max_c"},
        {"riser gas at most", "°C", 0,
         [](const Summary& s) { return std::optional(to_celsius(s.riser_gas_max)); }, false,
         "riser_gas_max_c"},
        {"exit gas on average", "°C", 0,
         [](const Summary& s) { return in(s.exit_gas_mean, to_celsius); }, false,
         "exit_gas_mean_c"},
        {"wood burned, dry", "kg", 2, [](const Summary& s) { return std::optional(s.wood_burned); },
         false, "wood_burned_kg"},
        {"heat to the room", "MJ", 1,
         [](const Summary& s) { return std::optional(to_megajoules(s.heat_to_room)); }, false,
         "heat_to_room_mj"},
        {"that is, of what the wood gave", "%", 0, share_to_room},
    };
    return answers;
}

std::string shown(const Answer& answer, std::optional<double> value) {
    if (!value) return answer.minutes ? "never" : "no answer";
    if (answer.minutes) return show_duration(*value);
    return show_number(*value, answer.decimals) +
           (answer.unit.empty() ? "" : " " + std::string(answer.unit));
}

/// What the answer lies between on nine days of ten, under the answer itself; empty: not computed.
std::string likely(const Answer& answer, const LikelyRanges& ranges) {
    const LikelyFigure* figure = answer.name.empty() ? nullptr : ranges.find(answer.name);
    if (!figure) return "";
    return fmt::format("<span class=\"change\">likely {} to {}</span>",
                       shown(answer, figure->low * answer.scale),
                       shown(answer, figure->high * answer.scale));
}

/// How sure the verdict is, in a sentence or two; empty: no other days were computed.
std::string likely_sentence(const LikelyRanges& ranges) {
    if (ranges.days == 0) return "";
    std::string text =
        fmt::format(" On {} other days and fires it draws on {}; smoke comes back on {}.",
                    ranges.days, ranges.draws_on, ranges.smoke_on);
    if (ranges.unjudged > 0)
        text += fmt::format(" {} of them burned too short to judge.", ranges.unjudged);
    const LikelyFigure* spare = ranges.find("reserve_draw_min_pa");
    const LikelyFigure* plate = ranges.find("plate_centre_max_c");
    if (spare)
        text += fmt::format(" On nine of ten the spare draw lies from {} to {} Pa",
                            show_number(spare->low, 1), show_number(spare->high, 1));
    if (spare && plate)
        text += fmt::format(", the plate's centre at its hottest from {} to {} °C",
                            show_number(plate->low, 0), show_number(plate->high, 0));
    return text + (spare ? "." : "");
}

std::string change(const Answer& answer, std::optional<double> first, std::optional<double> value) {
    if (!first || !value) return "";
    const double difference = *value - *first;
    const std::string amount = shown(answer, std::abs(difference));
    if (amount == shown(answer, 0.0)) return "<span class=\"change\">the same</span>";
    const std::string_view word =
        answer.minutes ? (difference > 0 ? "later" : "sooner") : (difference > 0 ? "more" : "less");
    return fmt::format("<span class=\"change\">{} {}</span>", amount, word);
}

std::string blocks_html(const std::vector<PageBlock>& blocks) {
    std::string html;
    std::string_view open;  // the list that is open
    const auto want = [&](std::string_view list) {
        if (open == list) return;
        if (!open.empty()) html += fmt::format("</{}>\n", open);
        if (!list.empty()) html += list == "dl" ? "<dl class=\"figures\">\n" : "<ul>\n";
        open = list;
    };
    bool skip = true;  // the title and the verdict stand at the head of the page
    for (const PageBlock& block : blocks) {
        if (block.kind == Kind::heading) {
            // These stand open on the page.
            skip = block.text == "Before you light it" || block.text == "To note";
            want("");
            if (!skip) html += "<h3>" + escaped(block.text) + "</h3>\n";
            continue;
        }
        if (skip) continue;
        const bool row = block.kind == Kind::row || block.kind == Kind::aligned;
        want(row ? "dl" : block.kind == Kind::point ? "ul" : "");
        if (row)
            html += fmt::format("<dt>{}</dt><dd{}>{}</dd>\n", escaped(block.label),
                                block.kind == Kind::aligned ? " class=\"aligned\"" : "",
                                escaped(block.text));
        else
            html += open == "ul" ? "<li>" + escaped(block.text) + "</li>\n"
                                 : "<p>" + escaped(block.text) + "</p>\n";
    }
    want("");
    return html;
}

std::string list_html(std::string_view heading, const std::vector<std::string>& points) {
    if (points.empty()) return "";
    std::string html = heading.empty() ? "" : fmt::format("<h3>{}</h3>\n", heading);
    html += "<ul>\n";
    for (const std::string& point : points) html += "<li>" + escaped(point) + "</li>\n";
    return html + "</ul>\n";
}

}  // namespace

std::string verdict_html(std::span<const PageRun> runs) {
    std::string html;
    for (const PageRun& run : runs) {
        std::string text;
        std::string_view kind = "good";
        for (const PageBlock& block : blocks_of(run))
            if (block.kind == Kind::verdict) {
                text += (text.empty() ? "" : " ") + block.text;
                if (!block.good && kind == "good") kind = "open";
                if (block.good == false) kind = "bad";
            }
        const std::string_view level = &run == &runs.front() ? "h1" : "h2";
        html += fmt::format("<div class=\"verdict {0}\"><{1}>{2}{3}</{1}><p>{4}</p></div>\n", kind,
                            level, runs.size() > 1 ? escaped(run.name) + ": " : "", escaped(text),
                            escaped(reason(run.burn.summary) + likely_sentence(run.burn.likely)));
    }
    return html;
}

std::string answers_html(std::span<const PageRun> runs) {
    std::string html = "<table><thead><tr><th scope=\"col\">What</th>";
    for (const PageRun& run : runs)
        html += fmt::format("<th scope=\"col\">{}</th>",
                            runs.size() > 1 ? escaped(run.name) : "this burn");
    html += "</tr></thead>\n<tbody>\n";
    for (const Answer& answer : first_answers()) {
        const bool any = std::any_of(runs.begin(), runs.end(), [&](const PageRun& run) {
            return answer.value(run.burn.summary).has_value();
        });
        // A plate that never fries is an answer; one that is not there is none.
        const bool plate = std::any_of(runs.begin(), runs.end(), [](const PageRun& run) {
            return run.burn.summary.plate_centre_max.has_value();
        });
        if (!any && !(answer.minutes && plate)) continue;
        html += fmt::format("<tr><th scope=\"row\">{}</th>", answer.label);
        for (const PageRun& run : runs) {
            const auto value = answer.value(run.burn.summary);
            html += "<td>" + shown(answer, value) + likely(answer, run.burn.likely);
            if (&run != &runs.front())
                html += change(answer, answer.value(runs.front().burn.summary), value);
            html += "</td>";
        }
        html += "</tr>\n";
    }
    return html + "</tbody></table>\n";
}

std::string answers_in_full(std::span<const PageRun> runs) {
    std::string html;
    for (const PageRun& run : runs)
        html += fmt::format("<details><summary>All answers{}</summary>\n{}</details>\n",
                            runs.size() > 1 ? ", " + escaped(run.name) : "",
                            blocks_html(blocks_of(run)));
    return html;
}

std::string care_html(std::span<const PageRun> runs) {
    std::string html =
        "<section class=\"caution\" aria-labelledby=\"h-care\"><h2 id=\"h-care\">Before you light "
        "it</h2>\n<ul>\n";
    for (const std::string_view caution : standing_cautions())
        html += "<li>" + escaped(caution) + "</li>\n";
    html +=
        "</ul></section>\n<section aria-labelledby=\"h-judge\"><h2 id=\"h-judge\">How far to trust "
        "it</h2>\n<p>A calculation compares designs; a few tens of kelvin or a pascal are the "
        "error of any one figure at best.</p>\n";
    for (const PageRun& run : runs) {
        const std::string of = runs.size() > 1 ? ": " + escaped(run.name) : "";
        html += list_html("To note" + of, run.burn.summary.remarks);
        html += list_html("Judge with care" + of, run.burn.with_care);
        if (run.burn.small_effect.empty()) continue;
        html += fmt::format(
            "<details><summary>Beyond what they are known for, to small effect{}"
            "</summary>{}</details>\n",
            of, list_html("", run.burn.small_effect));
    }
    return html + "</section>\n";
}

}  // namespace drawwell
