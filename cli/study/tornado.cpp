#include "cli/study/tornado.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "cli/report/nice_steps.h"
#include "cli/report/page_text.h"
#include "cli/report/svg_text.h"

namespace drawwell {
namespace {

// Pixels.
constexpr double width = 800, left = 270, right = 770;
constexpr double row_height = 24, bar_height = 8;
constexpr double heading = 42, foot = 56, title_height = 64;
constexpr double text = 13, heading_text = 15, small_text = 11;

constexpr std::string_view ink = "#222222", faint = "#bbbbbb", absent = "#666666",
                           less_colour = "#2a6fb0", more_colour = "#c4611a";
// As charts begin, so that another run may replace the file.
constexpr std::string_view origin = "<metadata>drawn by drawwell " DRAWWELL_VERSION "</metadata>";

std::optional<double> against(const Row& row, double here, std::string_view answer) {
    if (!row.done || !row.error.empty()) return {};
    const std::optional<double> value = row.answers.number(answer);
    return value ? std::optional(*value - here) : std::nullopt;
}

double height_of(const Tornado& figure) {
    return heading + row_height * static_cast<double>(figure.bars.size()) + foot;
}

/// The scale of a figure.
struct Span {
    double least = 0, most = 0;

    explicit Span(const Tornado& figure) {
        for (const Tornado::Bar& bar : figure.bars)
            for (const auto& value : {bar.less, bar.more}) {
                least = std::min(least, value.value_or(0));
                most = std::max(most, value.value_or(0));
            }
        if (!(most > least)) most = least + 1;
        const double air = 0.06 * (most - least);
        least -= least < 0 ? air : 0;
        most += most > 0 ? air : 0;
    }
    double pixel(double value) const {
        return left + (value - least) / (most - least) * (right - left);
    }
};

std::string bar_svg(const Span& span, double value, double y, std::string_view colour) {
    const double from = span.pixel(std::min(value, 0.0)), to = span.pixel(std::max(value, 0.0));
    return fmt::format(
        "<rect x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{}\" fill=\"{}\"/>\n", from, y,
        std::max(to - from, 0.5), bar_height, colour);
}

std::string figure_svg(const Tornado& figure, double y) {
    const Span span(figure);
    const double top = y + heading;
    const double bottom = top + row_height * static_cast<double>(figure.bars.size());
    std::string svg = text_svg({20, y + 24}, figure.title, ink, heading_text, Anchor::start);
    const NiceSteps steps = nice_steps(span.least, span.most, 6);
    for (int i = 0; i < steps.count; ++i) {
        const double x = span.pixel(steps.at(i));
        svg += line_svg({x, top}, {x, bottom}, faint, 1);
        svg += text_svg({x, bottom + 18}, tick_text(steps, i), ink, text, Anchor::middle);
    }
    svg += text_svg({(left + right) / 2, bottom + 38}, "changes by, " + figure.unit, ink, text,
                    Anchor::middle);
    double at = top;
    for (const Tornado::Bar& bar : figure.bars) {
        svg += text_svg({left - 12, at + row_height / 2 + 5}, shortened(bar.input, left - 32, text),
                        ink, text, Anchor::end);
        const double first = at + row_height / 2 - bar_height;
        if (bar.less) svg += bar_svg(span, *bar.less, first, less_colour);
        if (bar.more) svg += bar_svg(span, *bar.more, first + bar_height, more_colour);
        if (!bar.less || !bar.more) {
            const bool leftward = bar.less.value_or(bar.more.value_or(0)) > 0;
            svg += text_svg({span.pixel(0) + (leftward ? -8 : 8), at + row_height / 2 + 4},
                            bar.less ? "more can't be" : "less can't be", absent, small_text,
                            leftward ? Anchor::end : Anchor::start);
        }
        at += row_height;
    }
    return svg + line_svg({span.pixel(0), top - 4}, {span.pixel(0), bottom + 4}, ink, 1.5);
}

/// What the colours mean; `y`: of its base line.
std::string key_svg(double y) {
    std::string svg;
    double x = 20;
    for (const auto& [colour, meaning] :
         {std::pair(less_colour,
                    "less of it: a dimension by a tenth, what is uncertain by one "
                    "standard deviation"),
          std::pair(more_colour, "more of it")}) {
        svg += fmt::format("<rect x=\"{}\" y=\"{}\" width=\"14\" height=\"{}\" fill=\"{}\"/>\n", x,
                           y - bar_height, bar_height, colour);
        svg += text_svg({x + 20, y}, meaning, ink, text, Anchor::start);
        x += 40 + text_width(meaning, text);
    }
    return svg;
}

}  // namespace

Tornado tornado_of(const std::vector<Influence>& influences, const Row& base,
                   const Headline& headline, bool uncertain, std::size_t most) {
    Tornado figure{
        std::string(headline.heading) + (uncertain ? ": what is uncertain" : ": dimensions"),
        std::string(headline.unit.empty() ? "in its own unit" : headline.unit),
        headline.decimals,
        {}};
    const std::optional<double> here = base.answers.number(headline.answer);
    if (!here) return figure;
    for (const Influence* each : ranked(influences, base, headline.answer)) {
        if (each->uncertain != uncertain || figure.bars.size() == most) continue;
        figure.bars.push_back({each->input, against(each->less, *here, headline.answer),
                               against(each->more, *here, headline.answer)});
    }
    return figure;
}

std::string tornado_svg(const std::string& title, const std::vector<Tornado>& figures) {
    std::string parts;
    double y = title_height;
    for (const Tornado& figure : figures) {
        if (figure.bars.empty()) continue;
        parts += figure_svg(figure, y);
        y += height_of(figure);
    }
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}\" height=\"{1}\" viewBox=\"0 0 {0} "
        "{1}\">\n{2}\n<title>{3}</title>\n<rect width=\"{0}\" height=\"{1}\" "
        "fill=\"#ffffff\"/>\n<g font-family=\"DejaVu Sans, Verdana, Arial, "
        "sans-serif\">\n{4}{5}{6}</g>\n</svg>\n",
        width, y, origin, escaped(title), text_svg({20, 28}, title, ink, 18, Anchor::start),
        key_svg(52), parts);
}

}  // namespace drawwell
