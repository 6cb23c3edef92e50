#include "cli/report/draw_svg.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "cli/read/units.h"
#include "cli/report/chart.h"
#include "cli/report/draw_answers.h"
#include "cli/report/page_text.h"
#include "cli/report/reach.h"

namespace drawwell {
namespace {

// Blue and vermilion, which all eyes tell apart, and sand; darkened for text on white.
constexpr std::string_view held_colour = "#0b63a5", following_colour = "#b8480a";
constexpr std::string_view band_colour = "#f1e3b5", ink = "#222222";
constexpr ChartStyle held{held_colour, false}, following{following_colour, true};

/// The pushes to show: all that stands out and some of the slopes beside it, which rise without
/// end.
Reach shown_pushes(const DrawStudy& study) {
    Reach pushes;
    pushes.take(0);
    for (const DrawCurve* curve : {&study.held, &study.following}) {
        if (curve->fold) pushes.take(curve->fold->pressure);
        if (curve->spill) pushes.take(curve->spill->pressure);
        if (const auto pull = directions_of(*curve).pull_back) pushes.take(-*pull);
    }
    Reach traced;
    for (const DrawCurve* curve : {&study.held, &study.following})
        for (const DrawPoint& point : curve->points) traced.take(point.pressure);
    if (!(pushes.least < pushes.most)) {
        traced.take(0);
        return traced;
    }
    pushes.widen(0.5, 0.35);
    return pushes;
}

/// The flows whose push is shown on either curve.
Reach shown_flows(const DrawStudy& study, const Reach& pushes) {
    Reach flows;
    for (const DrawCurve* curve : {&study.held, &study.following}) {
        for (const DrawPoint& point : curve->points)
            if (std::isfinite(point.pressure) && point.pressure >= pushes.least &&
                point.pressure <= pushes.most)
                flows.take(point.flow);
        for (const DrawState& state : curve->states) flows.take(state.flow);
    }
    flows.take(0);
    flows.take(study.flow);
    flows.widen(0.03, 0.03);
    return flows;
}

std::string flow_text(double flow) {
    return fmt::format("{} g/s {}", show_number(to_grams(std::abs(flow)), 1),
                       flow < 0 ? "out" : "in");
}

ChartPoint place(double flow, double push) {
    return {to_grams(flow), push};
}

void draw_curve(Chart& chart, const DrawCurve& curve, ChartStyle style) {
    std::vector<ChartPoint> points;
    for (const DrawPoint& point : curve.points) points.push_back(place(point.flow, point.pressure));
    chart.line(points, style);
    if (curve.spill)
        chart.mark(place(curve.spill->flow, curve.spill->pressure), ChartMark::square,
                   style.colour);
    for (const DrawState& state : curve.states)
        chart.mark(place(state.flow, 0), state.stable ? ChartMark::filled : ChartMark::hollow,
                   style.colour);
    if (curve.fold)
        chart.mark(place(curve.fold->flow, curve.fold->pressure), ChartMark::diamond, style.colour);
}

void label_curve(Chart& chart, const DrawCurve& curve, std::string_view colour, double now) {
    if (curve.fold) chart.label(place(curve.fold->flow, curve.fold->pressure), "tips over", colour);
    for (const DrawState& state : curve.states)
        if (state.stable && std::abs(state.flow - now) > 0.02 * std::abs(now))
            chart.label(place(state.flow, 0), flow_text(state.flow), colour);
}

void draw_height(Chart& chart, const DrawCurve& curve, std::string_view what,
                 std::string_view colour) {
    if (!curve.fold || !(curve.fold->pressure > 0)) return;
    chart.height(place(curve.fold->flow, curve.fold->pressure),
                 {std::string(what), show_number(curve.fold->pressure, 1) + " Pa"}, colour);
}

/// Explains what is there.
void draw_key(Chart& chart, const DrawStudy& study) {
    const auto either = [&](auto has) { return has(study.held) || has(study.following); };
    const auto state = [&](bool stable) {
        return either([stable](const DrawCurve& curve) {
            return std::any_of(curve.states.begin(), curve.states.end(),
                               [stable](const DrawState& s) { return s.stable == stable; });
        });
    };
    if (!study.held.points.empty()) chart.key_line(held, "walls as they are");
    if (!study.following.points.empty()) chart.key_line(following, "walls that follow");
    if (state(true)) chart.key_mark(ChartMark::filled, ink, "stays");
    if (state(false)) chart.key_mark(ChartMark::hollow, ink, "does not stay");
    if (either([](const DrawCurve& curve) { return curve.fold.has_value(); }))
        chart.key_mark(ChartMark::diamond, ink, "tips over");
    if (either([](const DrawCurve& curve) { return curve.spill.has_value(); }))
        chart.key_mark(ChartMark::square, ink, "feed takes in nothing");
    if (study.exchange_early || study.exchange_late)
        chart.key_band(band_colour, "smoke begins to trickle out beside the air");
}

}  // namespace

std::string draw_svg(const DrawStudy& study, std::string_view title) {
    const Reach pushes = shown_pushes(study);
    const Reach flows = shown_flows(study, pushes);
    const std::string heading = fmt::format("{}{}the draw {} after lighting", title,
                                            title.empty() ? "" : ": ", show_duration(study.time));
    Chart chart(heading,
                "The push against the draw that balances the stove, over the flow into the feed",
                {"flow into the feed, g/s", to_grams(flows.least), to_grams(flows.most)},
                {"push against the draw, Pa", pushes.least, pushes.most});

    if (study.exchange_early || study.exchange_late) {
        const double early = study.exchange_early.value_or(study.exchange_late.value_or(0));
        const double late = study.exchange_late.value_or(early);
        chart.band(to_grams(early), to_grams(late), band_colour);
    }
    chart.level_rule(0);
    chart.upright_rule(0);
    chart.sides(0, "← smoke out of the feed", "air into the feed →");
    draw_curve(chart, study.held, held);
    draw_curve(chart, study.following, following);
    chart.mark(place(study.flow, 0), ChartMark::ring, ink);
    label_curve(chart, study.held, held.colour, study.flow);
    label_curve(chart, study.following, following.colour, study.flow);
    chart.label(place(study.flow, 0), "now " + flow_text(study.flow), ink);
    draw_height(chart, study.held, "a short push", held.colour);
    draw_height(chart, study.following, "a push that lasts", following.colour);

    draw_key(chart, study);
    return chart.svg();
}

}  // namespace drawwell
