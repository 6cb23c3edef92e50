#include "cli/report/sheet/paper.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "solver/constants.h"

namespace drawwell {
namespace {

// Advance widths of DejaVu Sans from the blank to ~, in thousandths of its size.
constexpr std::array<int, 95> letters{
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361,  318, 337, 636, 636, 636,
    636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632,
    575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635,  611, 732, 684, 989, 685,
    611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352,  635, 634, 278, 278, 579,
    278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592,  525, 636, 337, 636, 838};
constexpr double other_letter = 1.0, bold_factor = 1.16;
constexpr double above_line = 0.76, below_line = 0.24;  // [-] of the size

bool starts_letter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
}

double width_of(char c) {
    if (!starts_letter(c)) return 0;
    if (c >= ' ' && c <= '~') return letters[static_cast<std::size_t>(c - ' ')] / 1000.0;
    return other_letter;
}

}  // namespace

bool overlap(const PaperBox& a, const PaperBox& b) {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

std::vector<PaperPoint> clipped(PaperPoint from, PaperPoint to, const PaperBox& box) {
    // Liang and Barsky's way: the stretch of the line between 0 and 1 that each edge leaves.
    const double dx = to.x - from.x, dy = to.y - from.y;
    double first = 0, last = 1;
    const auto keep = [&](double step, double room) {
        if (step == 0) return room >= 0;
        (step < 0 ? first : last) =
            step < 0 ? std::max(first, room / step) : std::min(last, room / step);
        return true;
    };
    if (!keep(-dx, from.x - box.left) || !keep(dx, box.right - from.x) ||
        !keep(-dy, from.y - box.top) || !keep(dy, box.bottom - from.y) || first > last)
        return {};
    return {{from.x + first * dx, from.y + first * dy}, {from.x + last * dx, from.y + last * dy}};
}

bool crosses(PaperPoint from, PaperPoint to, const PaperBox& box) {
    constexpr double hair = 1e-9;
    return !clipped(from, to,
                    {box.left + hair, box.top + hair, box.right - hair, box.bottom - hair})
                .empty();
}

double paper_width(std::string_view text, double size, bool bold) {
    double sum = 0;
    for (const char c : text) sum += width_of(c);
    return sum * size * (bold ? bold_factor : 1);
}

PaperBox box_of(const PaperText& text) {
    const double width = paper_width(text.text, text.size, text.bold);
    const double left = text.anchor == PaperAnchor::start    ? text.at.x
                        : text.anchor == PaperAnchor::middle ? text.at.x - width / 2
                                                             : text.at.x - width;
    return {left, text.at.y - above_line * text.size, left + width,
            text.at.y + below_line * text.size};
}

std::string cut_to(std::string_view text, double width, double size, bool bold) {
    if (paper_width(text, size, bold) <= width) return std::string(text);
    const double rest = width - paper_width("…", size, bold);
    while (!text.empty() && paper_width(text, size, bold) > rest) {
        while (!text.empty() && !starts_letter(text.back())) text.remove_suffix(1);
        if (!text.empty()) text.remove_suffix(1);
    }
    return std::string(text) + "…";
}

std::vector<std::string> lines_of(std::string_view text, double width, double size, bool bold) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t length = std::min(text.find(' '), text.size());
        const std::string word = cut_to(text.substr(0, length), width, size, bold);
        text.remove_prefix(std::min(length + 1, text.size()));
        if (!lines.empty() && paper_width(lines.back() + " " + word, size, bold) <= width)
            lines.back() += " " + word;
        else
            lines.push_back(word);
    }
    if (lines.empty()) lines.emplace_back();
    return lines;
}

std::vector<PaperPoint> circle(PaperPoint centre, double radius) {
    // Sides that leave the circle by less than a fiftieth of a millimetre.
    constexpr double most_off = 0.02;
    const double turn = std::acos(1 - std::min(most_off / std::max(radius, 1e-6), 0.5));
    const int sides = std::clamp(static_cast<int>(constants::pi / turn), 24, 720);
    std::vector<PaperPoint> points;
    for (int i = 0; i < sides; ++i) {
        const double angle = 2 * constants::pi * i / sides;
        points.push_back(
            {centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)});
    }
    return points;
}

std::vector<PaperPoint> rectangle(const PaperBox& box) {
    return {
        {box.left, box.top}, {box.right, box.top}, {box.right, box.bottom}, {box.left, box.bottom}};
}

}  // namespace drawwell
