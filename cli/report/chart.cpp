#include "cli/report/chart.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <utility>

#include "cli/report/file_kind.h"
#include "cli/report/nice_steps.h"
#include "cli/report/svg_text.h"

namespace drawwell {
namespace {

std::string origin() {
    return fmt::format("{}{}</metadata>", figure_mark, DRAWWELL_VERSION);
}

constexpr double width = 800, height_in_all = 500;
constexpr double left = 84, right = 640, top = 106, bottom = 444;
constexpr double small_text = 12, title_text = 17;
constexpr double mark_radius = 5;
constexpr std::string_view ink = "#222222", grey = "#666666", pale = "#e8e8e8";

bool finite(ChartPoint at) {
    return std::isfinite(at.x) && std::isfinite(at.y);
}

/// A range that can be drawn.
std::pair<double, double> usable(double least, double most) {
    if (!std::isfinite(least) || !std::isfinite(most)) return {0, 1};
    // Half of each: the span of two huge numbers need not be a number.
    constexpr double huge = std::numeric_limits<double>::max() / 4;
    least = std::clamp(least, -huge, huge);
    most = std::clamp(most, -huge, huge);
    if (least > most) std::swap(least, most);
    const double narrow = 1e-6 * std::max(std::abs(least), std::abs(most));
    if (most - least > narrow) return {least, most};
    const double middle = least + (most - least) / 2;
    const double half = middle == 0 ? 1 : std::abs(middle) / 10;
    return {middle - half, middle + half};
}

/// How a figure begins, or a part of one.
std::string opening(double y, double tall) {
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\"{} width=\"{}\" height=\"{}\" viewBox=\"0 0 {} "
        "{}\" role=\"img\"",
        y > 0 ? fmt::format(" y=\"{}\"", y) : std::string(), width, tall, width, tall);
}

std::string shape_svg(ChartPoint at, ChartMark shape, std::string_view colour) {
    if (shape == ChartMark::diamond)
        return fmt::format("<path d=\"M{:.1f} {:.1f}l6 6l-6 6l-6 -6z\" fill=\"{}\"/>\n", at.x,
                           at.y - 6, colour);
    if (shape == ChartMark::square)
        return fmt::format(
            "<rect x=\"{:.1f}\" y=\"{:.1f}\" width=\"9\" height=\"9\" fill=\"{}\"/>\n", at.x - 4.5,
            at.y - 4.5, colour);
    const bool ring = shape == ChartMark::ring;
    return fmt::format(
        "<circle cx=\"{:.1f}\" cy=\"{:.1f}\" r=\"{}\" fill=\"{}\" stroke=\"{}\" "
        "stroke-width=\"{}\"/>\n",
        at.x, at.y, ring ? 9 : mark_radius,
        ring                         ? "none"
        : shape == ChartMark::hollow ? "#ffffff"
                                     : colour,
        colour, ring ? 1.2 : 2);
}

std::string stroke_of(ChartStyle style, double thickness) {
    return fmt::format("fill=\"none\" stroke=\"{}\" stroke-width=\"{}\"{}", style.colour, thickness,
                       style.dashed ? " stroke-dasharray=\"7 4\"" : "");
}

}  // namespace

Chart::Chart(std::string_view title, std::string_view description, const ChartAxis& x,
             const ChartAxis& y)
    : title_(shortened(title, width - 40, title_text)),
      description_(description),
      places_({left + 2, top + 2, right - 2, bottom - 2}),
      key_x_(left),
      key_y_(52),
      margin_x_(right + 14),
      margin_y_(top) {
    std::tie(x_least_, x_most_) = usable(x.least, x.most);
    std::tie(y_least_, y_most_) = usable(y.least, y.most);
    draw_axes(x.label, y.label);
}

double Chart::pixel_x(double x) const {
    // Far off the plot is far enough; a viewer need not know how far.
    return left + std::clamp((x - x_least_) / (x_most_ - x_least_), -5.0, 5.0) * (right - left);
}

double Chart::pixel_y(double y) const {
    return bottom - std::clamp((y - y_least_) / (y_most_ - y_least_), -5.0, 5.0) * (bottom - top);
}

bool Chart::inside(ChartPoint at) const {
    return finite(at) && at.x >= x_least_ && at.x <= x_most_ && at.y >= y_least_ && at.y <= y_most_;
}

void Chart::draw_axes(std::string_view x_label, std::string_view y_label) {
    const NiceSteps along = nice_steps(x_least_, x_most_, 8);
    for (int i = 0; i < along.count; ++i) {
        const double x = pixel_x(along.at(i));
        behind_ += line_svg({x, top}, {x, bottom}, pale, 1);
        around_ += text_svg({x, bottom + 17}, tick_text(along, i), ink, small_text, Anchor::middle);
    }
    const NiceSteps up = nice_steps(y_least_, y_most_, 7);
    for (int i = 0; i < up.count; ++i) {
        const double y = pixel_y(up.at(i));
        behind_ += line_svg({left, y}, {right, y}, pale, 1);
        around_ += text_svg({left - 7, y + 4}, tick_text(up, i), ink, small_text, Anchor::end);
    }
    around_ += fmt::format(
        "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" fill=\"none\" stroke=\"{}\"/>\n", left,
        top, right - left, bottom - top, grey);
    around_ += text_svg({(left + right) / 2, bottom + 40}, x_label, ink, 13, Anchor::middle);
    around_ += fmt::format("<g transform=\"translate(17 {}) rotate(-90)\">", (top + bottom) / 2) +
               text_svg({0, 0}, y_label, ink, 13, Anchor::middle) + "</g>\n";
}

void Chart::band(double from, double to, std::string_view colour) {
    if (!std::isfinite(from) || !std::isfinite(to)) return;
    const double start = std::clamp(pixel_x(std::min(from, to)), left, right);
    const double end = std::clamp(pixel_x(std::max(from, to)), left, right);
    if (end <= left || start >= right) return;
    behind_ +=
        fmt::format("<rect x=\"{:.1f}\" y=\"{}\" width=\"{:.1f}\" height=\"{}\" fill=\"{}\"/>\n",
                    start, top, std::max(end - start, 2.0), bottom - top, colour);
}

void Chart::upright_rule(double x) {
    if (!(x >= x_least_ && x <= x_most_)) return;
    const ChartPoint from{pixel_x(x), top}, to{pixel_x(x), bottom};
    lines_ += line_svg(from, to, grey, 1);
    places_.pass(from, to);
}

void Chart::level_rule(double y) {
    if (!(y >= y_least_ && y <= y_most_)) return;
    const ChartPoint from{left, pixel_y(y)}, to{right, pixel_y(y)};
    lines_ += line_svg(from, to, grey, 1);
    places_.pass(from, to);
}

void Chart::line(const std::vector<ChartPoint>& points, ChartStyle style) {
    std::string path;
    bool open = false;
    ChartPoint before;
    for (const ChartPoint& point : points) {
        if (!finite(point)) {
            open = false;
            continue;
        }
        const ChartPoint at{pixel_x(point.x), pixel_y(point.y)};
        path += fmt::format("{}{:.1f} {:.1f}", open ? "L" : "M", at.x, at.y);
        if (open) places_.pass(before, at);
        before = at;
        open = true;
    }
    if (path.empty()) return;
    lines_ +=
        fmt::format("<path d=\"{}\" clip-path=\"url(#plot)\" stroke-linejoin=\"round\" {}/>\n",
                    path, stroke_of(style, 2.2));
}

void Chart::mark(ChartPoint at, ChartMark shape, std::string_view colour) {
    if (!inside(at)) return;
    const ChartPoint pixel{pixel_x(at.x), pixel_y(at.y)};
    marks_ += shape_svg(pixel, shape, colour);
    const double reach = shape == ChartMark::ring ? 9 : 6;
    places_.take({pixel.x - reach, pixel.y - reach, pixel.x + reach, pixel.y + reach});
}

void Chart::label(ChartPoint at, std::string_view text, std::string_view colour) {
    if (inside(at))
        labels_.push_back({{pixel_x(at.x), pixel_y(at.y)}, std::string(text), std::string(colour)});
}

void Chart::sides(double x, std::string_view left_text, std::string_view right_text) {
    const double at = std::clamp(pixel_x(x), left, right);
    const double base = top + 15;
    const double before = text_width(left_text, small_text) + 12;
    const double after = text_width(right_text, small_text) + 12;
    if (at - before > left) {
        around_ += text_svg({at - 8, base}, left_text, grey, small_text, Anchor::end);
        places_.take({at - before, top, at, top + 20});
    }
    if (at + after < right) {
        around_ += text_svg({at + 8, base}, right_text, grey, small_text, Anchor::start);
        places_.take({at, top, at + after, top + 20});
    }
}

void Chart::height(ChartPoint at, const std::vector<std::string>& lines, std::string_view colour) {
    if (!inside(at) || !inside({at.x, 0})) return;
    const double end = pixel_y(at.y), foot = pixel_y(0);
    const double tip = end < foot ? 6 : -6;
    marks_ += line_svg({pixel_x(at.x), end}, {margin_x_ + 5, end}, colour, 1, "2 3");
    places_.pass({pixel_x(at.x), end}, {right, end});
    marks_ += line_svg({margin_x_ - 5, foot}, {margin_x_ + 5, foot}, colour, 1.5);
    marks_ += line_svg({margin_x_, foot}, {margin_x_, end}, colour, 1.5);
    if (std::abs(end - foot) > 8)
        marks_ += fmt::format("<path d=\"M{:.1f} {:.1f}l4 {}l-8 0z\" fill=\"{}\"/>\n", margin_x_,
                              end, 1.4 * tip, colour);
    constexpr double leading = 15;
    const double tall = leading * static_cast<double>(lines.size());
    // Beside its arrow, but below the text before it.
    double base = std::max((end + foot) / 2 - tall / 2 + 11, margin_y_ + 11);
    base = std::min(base, bottom - tall + 11);
    for (const std::string& text : lines) {
        marks_ += text_svg({right + 42, base}, text, colour, small_text, Anchor::start);
        base += leading;
    }
    margin_y_ = base - 4;
    margin_x_ += 14;
}

double Chart::key_start(double needed) {
    constexpr double row = 19;
    if (key_x_ > left && key_x_ + needed > width - 10) {
        key_x_ = left;
        key_y_ += row;
    }
    const double start = key_x_;
    key_x_ += needed + 20;
    return start;
}

void Chart::key_line(ChartStyle style, std::string_view text) {
    const double x = key_start(36 + text_width(text, small_text));
    around_ +=
        fmt::format("<path d=\"M{:.1f} {:.1f}h30\" {}/>\n", x, key_y_ - 4, stroke_of(style, 2.2));
    around_ += text_svg({x + 36, key_y_}, text, ink, small_text, Anchor::start);
}

void Chart::key_mark(ChartMark shape, std::string_view colour, std::string_view text) {
    const double x = key_start(16 + text_width(text, small_text));
    around_ += shape_svg({x + 6, key_y_ - 4}, shape, colour);
    around_ += text_svg({x + 16, key_y_}, text, ink, small_text, Anchor::start);
}

void Chart::key_band(std::string_view colour, std::string_view text) {
    const double x = key_start(24 + text_width(text, small_text));
    around_ +=
        fmt::format("<rect x=\"{:.1f}\" y=\"{:.1f}\" width=\"18\" height=\"12\" fill=\"{}\"/>\n", x,
                    key_y_ - 10, colour);
    around_ += text_svg({x + 24, key_y_}, text, ink, small_text, Anchor::start);
}

std::string Chart::placed_labels() const {
    ChartLabels places = places_;
    std::string leaders, texts;  // leaders run below every text
    for (const Label& label : labels_) {
        const auto place = places.place(label.at, text_width(label.text, small_text));
        if (!place) continue;  // rather no label than two in one place
        const ChartPoint near{std::clamp(label.at.x, place->left, place->right),
                              std::clamp(label.at.y, place->top, place->bottom)};
        constexpr double far = 24;
        if (std::hypot(near.x - label.at.x, near.y - label.at.y) > far)
            leaders += line_svg(label.at, near, grey, 0.7);
        texts += text_svg({(place->left + place->right) / 2, place->bottom - 4}, label.text,
                          label.colour, small_text, Anchor::middle);
    }
    return leaders + texts;
}

std::string Chart::svg(double y) const {
    return fmt::format(
        "{}>\n{}\n<title>{}</title>\n<desc>{}</desc>\n<defs><clipPath id=\"plot\"><rect x=\"{}\" "
        "y=\"{}\" width=\"{}\" height=\"{}\"/></clipPath></defs>\n<rect width=\"{}\" "
        "height=\"{}\" fill=\"#ffffff\"/>\n<g font-family=\"DejaVu Sans, Verdana, Arial, "
        "sans-serif\">\n{}{}{}{}{}{}</g>\n</svg>\n",
        opening(y, height_in_all), origin(), escaped(title_), escaped(description_), left, top,
        right - left, bottom - top, width, height_in_all, behind_, lines_, around_, marks_,
        text_svg({left, 28}, title_, ink, title_text, Anchor::start), placed_labels());
}

std::string stacked_svg(const std::vector<Chart>& charts) {
    if (charts.size() == 1) return charts.front().svg();
    std::string figure =
        opening(0, height_in_all * static_cast<double>(charts.size())) + ">\n" + origin() + "\n";
    double y = 0;
    for (const Chart& chart : charts) {
        figure += chart.svg(y);
        y += height_in_all;
    }
    return figure + "</svg>\n";
}

}  // namespace drawwell
