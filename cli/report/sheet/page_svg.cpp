#include "cli/report/sheet/page_svg.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/report/file_kind.h"
#include "cli/report/svg_text.h"

namespace drawwell {
namespace {

constexpr std::string_view ink = "#1d2529";
constexpr double between_pages = 8;  // [mm] in the one SVG

/// Narrow faces first: paper_width allows for wider ones.
constexpr std::string_view faces = "Liberation Sans, Arial, Helvetica, DejaVu Sans, sans-serif";

std::string origin() {
    return fmt::format("{}{}", sheet_mark, DRAWWELL_VERSION);
}

struct Look {
    std::string_view colour;
    double thickness;  // [mm]
    std::string_view dashes;
};

Look look(Pen pen) {
    switch (pen) {
        case Pen::outline:
            return {"#1d2529", 0.25, ""};
        case Pen::hidden:
            return {"#5d6b73", 0.2, "1.6 1"};
        case Pen::measure:
            return {"#33708a", 0.13, ""};
        case Pen::gas:
            return {"#c2410c", 0.4, "2.2 1.1"};
        case Pen::cut:
            return {"#000000", 0.3, ""};
        case Pen::fold:
            return {"#5d6b73", 0.2, "5 1.5 1 1.5"};
        case Pen::frame:
            break;
    }
    return {"#9aa5ab", 0.15, ""};
}

std::string line_text(const PaperLine& line) {
    std::string points;
    for (const PaperPoint& point : line.points)
        points += fmt::format("{}{:.3f},{:.3f}", points.empty() ? "" : " ", point.x, point.y);
    const Look style = look(line.pen);
    return fmt::format(
        "<{} points=\"{}\" fill=\"{}\" stroke=\"{}\" stroke-width=\"{}\" "
        "stroke-linejoin=\"round\"{}/>\n",
        line.closed ? "polygon" : "polyline", points, line.fill.empty() ? "none" : line.fill,
        style.colour, style.thickness,
        style.dashes.empty() ? std::string()
                             : fmt::format(" stroke-dasharray=\"{}\"", style.dashes));
}

std::string text_text(const PaperText& text) {
    const std::string_view anchor = text.anchor == PaperAnchor::start    ? "start"
                                    : text.anchor == PaperAnchor::middle ? "middle"
                                                                         : "end";
    return fmt::format(
        "<text x=\"{:.2f}\" y=\"{:.2f}\" font-size=\"{:.2f}\" text-anchor=\"{}\"{}>{}</text>\n",
        text.at.x, text.at.y, text.size, anchor, text.bold ? " font-weight=\"bold\"" : "",
        escaped(text.text));
}

std::string contents(const PaperPage& page) {
    std::string all = fmt::format("<rect width=\"{}\" height=\"{}\" fill=\"#ffffff\"/>\n",
                                  page.width, page.height);
    for (const PaperLine& line : page.lines) all += line_text(line);
    for (const PaperText& text : page.texts) all += text_text(text);
    return all;
}

std::string opened(double width, double height) {
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" "
        "viewBox=\"0 0 {0} {1}\" font-family=\"{2}\" fill=\"{3}\">\n",
        width, height, faces, ink);
}

std::string origin_text(std::string_view title) {
    return fmt::format("<desc>{}</desc>\n<title>{}</title>\n", origin(), escaped(title));
}

}  // namespace

std::string page_svg(const PaperPage& page, std::string_view title) {
    return opened(page.width, page.height) + origin_text(title) + contents(page) + "</svg>\n";
}

std::string pages_svg(std::span<const PaperPage> pages, std::string_view title) {
    double width = 0, height = 0;
    for (const PaperPage& page : pages) {
        width = std::max(width, page.width);
        height += page.height + (height > 0 ? between_pages : 0);
    }
    std::string svg = opened(width, height) + origin_text(title);
    svg += fmt::format("<rect width=\"{}\" height=\"{}\" fill=\"#d5dadd\"/>\n", width, height);
    double top = 0;
    for (const PaperPage& page : pages) {
        svg += fmt::format("<g transform=\"translate(0 {})\">\n{}</g>\n", top, contents(page));
        top += page.height + between_pages;
    }
    return svg + "</svg>\n";
}

std::string pages_html(std::span<const PaperPage> pages, std::string_view title) {
    const double width = pages.empty() ? 210 : pages.front().width;
    const double height = pages.empty() ? 297 : pages.front().height;
    std::string html = fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
        "<meta name=\"generator\" content=\"{}\"/>\n<title>{}</title>\n<style>\n"
        "@page {{ size: {}mm {}mm; margin: 0 }}\n"
        "body {{ margin: 0; background: #d5dadd }}\n"
        "svg {{ display: block; margin: 0 auto 8mm; break-after: page; break-inside: avoid }}\n"
        "@media print {{ body {{ background: none }} svg {{ margin: 0 }} }}\n"
        "</style>\n</head>\n<body>\n",
        origin(), escaped(title), width, height);
    for (const PaperPage& page : pages)
        html += opened(page.width, page.height) + contents(page) + "</svg>\n";
    return html + "</body>\n</html>\n";
}

std::string pdf_origin() {
    return fmt::format("% {}\n", origin());
}

}  // namespace drawwell
