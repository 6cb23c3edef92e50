#include "cli/report/web/section_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "cli/read/units.h"
#include "cli/report/nice_steps.h"
#include "cli/report/web/heat_colour.h"
#include "cli/report/web/section_painter.h"

namespace drawwell {
namespace {

double mm(double metres) {
    return to_millimetres(metres);
}

// Shares of the picture's width: our choice, so that names can be read at 360 pixels.
constexpr double letter_size = 0.036, letter_width = 0.62;  // of a letter, as wide as DejaVu Sans
constexpr double pole_width = 0.045, flue_peek = 0.08;

struct Mark {
    double height = 0;  // [mm] over the tunnel floor
    std::string name;
    double shown = 0;  // where its text stands
};

std::vector<Mark> marks_of(const Stove& stove) {
    std::vector<Mark> marks;
    const auto add = [&](double height, std::string_view name) {
        marks.push_back({mm(height), fmt::format("{:.0f} {}", mm(height), name), 0});
    };
    add(0, stove.tunnel ? "tunnel floor" : "nothing");
    if (stove.tunnel) add(stove.tunnel->height, "tunnel roof");
    if (stove.feed) add(stove.feed->mouth, "feed mouth");
    if (stove.barrel && stove.plate) {
        add(stove.barrel_foot(), "barrel foot");
        add(stove.outlet_height(), stove.flue.sections.empty() ? "outlet" : "flue outlet");
    }
    add(stove.riser.top, "riser top");
    if (stove.plate) add(stove.plate->underside, "under plate");
    std::sort(marks.begin(), marks.end(),
              [](const Mark& a, const Mark& b) { return a.height < b.height; });
    return marks;
}

/// A pole of heights left of the stove, its texts pushed apart where they would touch.
std::string pole_svg(std::vector<Mark> marks, double x, double reach, double text) {
    double least = -1e9;
    for (Mark& mark : marks) {
        mark.shown = std::max(mark.height, least);
        least = mark.shown + 1.25 * text;
    }
    std::string svg;
    for (const Mark& mark : marks)
        svg += fmt::format(
            "<path class=\"rule\" d=\"M{:.1f} {:.1f}h{:.1f}L{:.1f} {:.1f}h{:.1f}\"/><text "
            "x=\"{:.1f}\" "
            "y=\"{:.1f}\" text-anchor=\"end\">{}</text>\n",
            x + reach, -mark.height, -0.5 * reach, x + 0.2 * reach, -mark.shown, -0.2 * reach,
            x - 0.3 * text, -mark.shown + 0.35 * text, mark.name);
    return svg;
}

std::string view_box(double x0, double y0, double x1, double y1) {
    return fmt::format("{:.0f} {:.0f} {:.0f} {:.0f}", x0, -y1, x1 - x0, y1 - y0);
}

}  // namespace

std::string section_picture(const Stove& stove, const Results& results, const Moment& moment,
                            const std::string& id) {
    const PaintedSection section = paint_section(stove, results, moment);
    const SectionDrawing& all = section.drawing;
    if (all.most_x() <= all.least_x()) return "";

    // Beside the stove the pole of heights takes what its longest name needs, at the size that
    // page.css gives letters on a phone.
    const std::vector<Mark> marks = marks_of(stove);
    std::size_t letters = 0;
    for (const Mark& mark : marks) letters = std::max(letters, mark.name.size());
    const double names = letter_width * letter_size * static_cast<double>(letters);
    const double wide = section.stove_right - all.least_x();
    const double tall = section.stove_top - section.stove_foot;
    const double full = std::max(wide / (1 - names - pole_width - flue_peek), 0.9 * tall);
    const double text = letter_size * full, margin = pole_width / 1.4 * full;
    const double spare = full * (1 - names - pole_width - flue_peek) - wide;
    const double pole = all.least_x() - margin - spare / 2;
    const double x1 = section.stove_right + flue_peek * full + spare / 2;
    const double x0 = x1 - full, y0 = section.stove_foot - margin - 2 * text;
    const double y1 = section.stove_top + margin + text;
    const NiceSteps ruler = nice_steps(0, 0.5 * wide, 1);
    const double bar = ruler.count > 1 ? ruler.at(ruler.count - 1) : 100;

    std::string svg = fmt::format(
        "<svg class=\"picture section\" style=\"--u:{:.2f}px\" viewBox=\"{}\" role=\"img\" "
        "aria-label=\"The stove cut open along its tunnel, to scale, painted by temperature\">\n"
        "<g class=\"stove\" id=\"{}\">\n{}</g>\n",
        full / 100, view_box(x0, y0, x1, y1), id, all.svg());
    svg += pole_svg(marks, pole, margin, text);
    svg += fmt::format(
        "<path class=\"line\" d=\"M{:.1f} {:.1f}h{:.1f}m0 {:.1f}v{:.1f}m{:.1f} 0v{:.1f}\"/><text "
        "x=\"{:.1f}\" y=\"{:.1f}\">{:.0f} mm</text>\n</svg>\n",
        pole, -(y0 + 0.8 * text), bar, -0.2 * text, 0.4 * text, -bar, -0.4 * text,
        pole + bar + 0.4 * text, -(y0 + 0.5 * text), bar);

    const double rise = all.most_y() - all.least_y();
    if (rise > 1.15 * (y1 - y0) || all.most_x() > x1) {
        const double edge = 0.02 * std::max(rise, all.most_x() - all.least_x());
        svg += fmt::format(
            "<svg class=\"picture whole\" viewBox=\"{}\" role=\"img\" aria-label=\"The same with "
            "its whole flue, smaller\"><use href=\"#{}\"/></svg>\n",
            view_box(all.least_x() - edge, all.least_y() - edge, all.most_x() + edge,
                     all.most_y() + edge),
            id);
    }
    return svg;
}

std::vector<std::string> section_columns() {
    return {"tunnel_gas_temperature", "tunnel_wall_temperature", "riser_gas_temperature",
            "riser_wall_temperature", "riser_skin_temperature",  "annulus_gas_temperature",
            "barrel_temperature",     "plate_temperature",       "flue_gas_temperature",
            "flue_wall_temperature"};
}

std::string section_dimensions(const Stove& stove) {
    std::vector<std::string> parts;
    if (stove.feed)
        parts.push_back(
            fmt::format("feed {:.0f} by {:.0f} mm", mm(stove.feed->width), mm(stove.feed->depth)));
    if (stove.tunnel)
        parts.push_back(fmt::format("tunnel {:.0f} wide, {:.0f} high, {:.0f} mm from feed to riser",
                                    mm(stove.tunnel->width), mm(stove.tunnel->height),
                                    mm(stove.tunnel->length)));
    if (stove.riser.bore > 0)
        parts.push_back(fmt::format("riser {:.0f} mm bore", mm(stove.riser.bore)));
    else
        parts.push_back(
            fmt::format("riser {:.0f} by {:.0f} mm", mm(stove.riser.width), mm(stove.riser.depth)));
    if (stove.plate)
        parts.push_back(fmt::format("{:.0f} mm from riser to plate",
                                    mm(stove.plate->underside - stove.riser.top)));
    if (stove.barrel)
        parts.push_back(fmt::format("barrel {:.0f} across, {:.0f} mm high",
                                    mm(stove.barrel->diameter), mm(stove.barrel->height)));
    if (stove.plate)
        parts.push_back(fmt::format("plate {:.0f} across, {:g} mm thick", mm(stove.plate->diameter),
                                    mm(stove.plate->thickness)));
    double rise = 0, length = 0;
    for (const FlueSection& flue : stove.flue.sections) {
        rise += flue.rise;
        length += flue.length;
    }
    if (length > 0)
        parts.push_back(fmt::format("flue {:.0f} mm bore, {:.2f} m long, {:.2f} m up",
                                    mm(stove.flue.sections.front().bore), length, rise));
    std::string text;
    for (const std::string& part : parts) text += (text.empty() ? "" : "; ") + part;
    return text;
}

std::string heat_key() {
    std::string key = "<ul class=\"scale\">";
    for (const HeatAnchor& anchor : heat_scale)
        key += fmt::format("<li><i style=\"background:{}\"></i>{:.0f}{}</li>",
                           heat_colour(anchor.celsius), anchor.celsius,
                           anchor.celsius == heat_scale.back().celsius ? " °C and over" : "");
    return key + "</ul>\n";
}

}  // namespace drawwell
