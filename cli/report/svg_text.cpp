#include "cli/report/svg_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/visible_text.h"
#include "cli/report/page_text.h"

namespace drawwell {
namespace {

constexpr double width_of_letter = 0.56;  // [-] of the size, mean of a wide plain face; our choice

bool starts_letter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
}

}  // namespace

std::string escaped(std::string_view text) {
    std::string blank(text), safe;
    for (char& c : blank)
        if (c == '\t' || c == '\n' || c == '\r') c = ' ';
    for (const char c : visible(blank)) {
        if (c == '&')
            safe += "&amp;";
        else if (c == '<')
            safe += "&lt;";
        else if (c == '>')
            safe += "&gt;";
        else if (c == '"')
            safe += "&quot;";
        else
            safe += c;
    }
    return safe;
}

double text_width(std::string_view text, double size) {
    return width_of_letter * size *
           static_cast<double>(std::count_if(text.begin(), text.end(), starts_letter));
}

std::string shortened(std::string_view text, double width, double size) {
    if (text_width(text, size) <= width) return std::string(text);
    while (!text.empty() && text_width(text, size) + width_of_letter * size > width) {
        while (!text.empty() && !starts_letter(text.back())) text.remove_suffix(1);
        if (!text.empty()) text.remove_suffix(1);
    }
    return std::string(text) + "…";
}

std::string text_svg(ChartPoint at, std::string_view text, std::string_view colour, double size,
                     Anchor anchor) {
    const std::string_view name = anchor == Anchor::start    ? "start"
                                  : anchor == Anchor::middle ? "middle"
                                                             : "end";
    return fmt::format(
        "<text x=\"{:.1f}\" y=\"{:.1f}\" fill=\"{}\" font-size=\"{}\" text-anchor=\"{}\" "
        "stroke=\"#ffffff\" stroke-width=\"3\" stroke-linejoin=\"round\" "
        "paint-order=\"stroke\">{}</text>\n",
        at.x, at.y, colour, size, name, escaped(text));
}

std::string line_svg(ChartPoint from, ChartPoint to, std::string_view colour, double thickness,
                     std::string_view dashes) {
    return fmt::format(
        "<line x1=\"{:.1f}\" y1=\"{:.1f}\" x2=\"{:.1f}\" y2=\"{:.1f}\" stroke=\"{}\" "
        "stroke-width=\"{}\"{}/>\n",
        from.x, from.y, to.x, to.y, colour, thickness,
        dashes.empty() ? std::string() : fmt::format(" stroke-dasharray=\"{}\"", dashes));
}

std::string tick_text(const NiceSteps& steps, int index) {
    return show_number(steps.at(index), steps.decimals);
}

}  // namespace drawwell
