#include "cli/study/fit/match_page.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

#include "cli/report/page_writer.h"

namespace drawwell {
namespace {

constexpr double linked = 0.5;  // correlation that is told
constexpr double worth = 0.03;  // [-] gain of a measurement that is told
constexpr std::size_t told_next = 4;
constexpr std::size_t told_blurred = 4;
constexpr std::size_t sparks = 24;

/// What is left of each stretch of the log over three noises: low to high.
std::string spark_line(const MatchedSensor& sensor) {
    static constexpr std::array<const char*, 7> levels{"▁", "▂", "▃", "▄", "▅", "▆", "▇"};
    const double first = sensor.time.front(), last = sensor.time.back();
    std::string line;
    for (std::size_t s = 0; s < sparks; ++s) {
        const auto edge = [&](std::size_t k) {
            return first + (last - first) * static_cast<double>(k) / sparks;
        };
        double sum = 0;
        std::size_t count = 0;
        for (std::size_t i = 0; i < sensor.time.size(); ++i) {
            const bool end = s + 1 == sparks && i + 1 == sensor.time.size();
            if (sensor.time[i] < edge(s) || (sensor.time[i] >= edge(s + 1) && !end)) continue;
            sum += sensor.measured[i] - sensor.matched[i];
            ++count;
        }
        if (count == 0) {
            line += " ";
            continue;
        }
        const double noises = sum / static_cast<double>(count) / sensor.sensor.noise.reading;
        line += levels[static_cast<std::size_t>(std::lround(std::clamp(noises, -3.0, 3.0)) + 3)];
    }
    return line;
}

void tell_inputs(const Match& match, Page& page) {
    page.heading("What the log says");
    page.line(fmt::format("  {:<32} {:>9} {:>9}   {:<20} {:>5}", "", "before", "now", "95 % within",
                          "left"));
    std::vector<MatchedInput> told;
    std::copy_if(match.inputs.begin(), match.inputs.end(), std::back_inserter(told),
                 [](const MatchedInput& each) { return each.told; });
    std::stable_sort(told.begin(), told.end(), [](const MatchedInput& a, const MatchedInput& b) {
        return a.deviation < b.deviation;
    });
    for (const MatchedInput& each : told) {
        const auto at = [&](double by) { return each.input.shown(by); };
        page.line(fmt::format("  {:<32} {:>9} {:>9}   {:<20} {:>4.0f} %", each.input.name, at(0),
                              at(each.estimate),
                              at(each.estimate - half_interval * each.deviation) + " to " +
                                  at(each.estimate + half_interval * each.deviation),
                              100 * each.deviation));
    }
    page.paragraph(
        "Beside each figure stands what is left of its spread before. `x 0.88` is 0.88 times what "
        "the file and data/ say.");
    const bool far =
        std::any_of(match.inputs.begin(), match.inputs.end(),
                    [](const MatchedInput& each) { return std::abs(each.estimate) > 3; });
    if (far)
        page.paragraph(
            "Some of it lies more than three deviations from what was known before: rather "
            "something else is otherwise, in the stove file or on an instrument.");
    if (!match.settled)
        page.paragraph("The search was still moving when it was stopped: take it as a beginning.");
}

void tell_sensors(const Match& match, Page& page) {
    page.heading("How well stove and log agree");
    page.line(fmt::format("  {:<38} {:>7} {:>8}  {}", "", "noise", "rms", "early to late"));
    for (const MatchedSensor& each : match.sensors) {
        std::string name = each.sensor.header;
        if (name != each.sensor.what()) name += " " + each.sensor.what();
        page.line(fmt::format("  {:<38} {:>7} {:>8}  {}", name,
                              shown_difference(each.sensor.noise.reading, each.sensor),
                              shown_difference(each.rms, each.sensor), spark_line(each)));
    }
    page.paragraph("Measured less matched: ▁ three noises low, ▄ none, ▇ three high.");
    for (const MatchedSensor& each : match.sensors) {
        if (each.counted > 1.01 * each.sensor.noise.reading)
            page.point(fmt::format(
                "{} differs by more than its noise. What differs counts as noise of {} a reading, "
                "since it hangs together; something there is not as the model has it.",
                each.sensor.header, shown_difference(each.counted, each.sensor)));
        if (std::abs(each.common_estimate) > 2)
            page.point(fmt::format("{} seems to read {} by {:.1f} of its calibration's deviations.",
                                   each.sensor.header, each.common_estimate > 0 ? "high" : "low",
                                   std::abs(each.common_estimate)));
    }
}

void tell_links(const Match& match, Page& page) {
    std::vector<std::string> lines;
    for (std::size_t i = 0; i < match.inputs.size(); ++i)
        for (std::size_t k = i + 1; k < match.inputs.size(); ++k)
            if (const double r = match.correlation[i][k];
                std::abs(r) > linked && match.inputs[i].told && match.inputs[k].told)
                lines.push_back(fmt::format("{} and {}: {:.2f}, {}", match.inputs[i].input.name,
                                            match.inputs[k].input.name, r,
                                            r > 0 ? "more of one with more of the other"
                                                  : "more of one with less of the other"));
    if (!lines.empty()) page.heading("What hangs together (correlation)");
    for (const std::string& line : lines) page.point(line);
    if (!match.blurred.empty()) page.heading("What the log can't tell apart");
    std::size_t told = 0;
    for (const Blurred& each : match.blurred) {
        if (told++ == told_blurred) break;
        std::string text;
        const double sign =
            *std::max_element(each.share.begin(), each.share.end(),
                              [](double a, double b) { return std::abs(a) < std::abs(b); }) < 0
                ? -1
                : 1;
        for (std::size_t k = 0; k < each.share.size(); ++k)
            if (each.share[k] != 0)
                text += fmt::format("{}{} {}", text.empty() ? "" : " with ",
                                    sign * each.share[k] > 0 ? "more" : "less",
                                    match.inputs[k].input.name);
        page.point(
            fmt::format("{} looks nearly the same: {:.0f} % of what was open there is still open.",
                        text, 100 * each.deviation));
    }
}

void tell_next(const Match& match, Page& page) {
    std::size_t told = 0;
    for (const NextMeasurement& next : match.next) {
        if (next.gain < worth || told == told_next) break;
        if (told++ == 0) {
            page.heading("What to log next");
            page.line(fmt::format("  {:<34} {:>8}   {}", "", "narrows", "most"));
        }
        page.line(fmt::format("  {:<34} {:>6.0f} %   {}, {:.0f} % to {:.0f} %", next.sensor.what(),
                              100 * next.gain, match.inputs[next.most].input.name, 100 * next.from,
                              100 * next.to));
    }
    if (told > 0)
        page.paragraph(
            "Expected, if it were logged each minute with its usual noise, in variance of all "
            "fitted inputs together, as far as the model is right. Gas by a shielded bead.");
}

}  // namespace

std::string shown_difference(double value, const Sensor& sensor) {
    switch (sensor.quantity) {
        case Quantity::temperature:
            return fmt::format("{:.1f} K", value);
        case Quantity::mass:
            return fmt::format("{:.0f} g", to_grams(value));
        case Quantity::share:
            return fmt::format("{:.2f} %", to_percent(value));
        default:
            return fmt::format("{:.2g} {}", value, sensor.unit);
    }
}

std::string match_page(const Match& match, const std::string& log, bool colour) {
    Page page(colour);
    page.verdict(fmt::format("{} is matched, by {} burns.", log, match.burns), match.settled);
    tell_inputs(match, page);
    tell_sensors(match, page);
    tell_links(match, page);
    tell_next(match, page);
    page.heading("What that rests on");
    const auto others = std::count_if(match.inputs.begin(), match.inputs.end(),
                                      [](const MatchedInput& each) { return !each.told; });
    if (others == 0 && match.rest.empty())
        page.point("All else counts as known, as the file and data/ have it.");
    else
        page.point(fmt::format(
            "{} other uncertain figures took part and stay nearly as uncertain as they were; {} "
            "more hardly move the log.",
            others, match.rest.size()));
    std::vector<std::string> sources;
    for (const MatchedSensor& each : match.sensors) {
        const std::string& source = each.sensor.noise.source;
        if (std::find(sources.begin(), sources.end(), source) != sources.end()) continue;
        sources.push_back(source);
        page.point("Noise: " + source + ".");
    }
    for (const MatchedSensor& each : match.sensors) {
        if (!each.sensor.bead) continue;
        const Bead& bead = *each.sensor.bead;
        page.point(bead.diameter > 0
                       ? fmt::format("{} is a {} bead of {:.3g} mm, emissivity {:.2g}: it reads "
                                     "{}late",
                                     each.sensor.header, bead.shielded ? "shielded" : "bare",
                                     to_millimetres(bead.diameter), bead.emissivity,
                                     bead.shielded ? "" : "between gas and walls, and ")
                       : each.sensor.header + " reads the gas itself, as --bead says");
    }
    page.point(
        "A match is no proof: a stove that is wrong in another way may match as well. Carbon "
        "monoxide, clearances and flue are judged by an alarm and by licensed practice, not by "
        "it.");
    return page.text();
}

}  // namespace drawwell
