#include "cli/report/sheet/sheet_flow.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace drawwell {
namespace {

constexpr double head_line = 17;  // [mm] of the rule under a page's head
constexpr double number_width = 30;
constexpr double column_gap = 2.5;
constexpr std::size_t most_lines = 12;  // of a cell

}  // namespace

SheetFlow::SheetFlow(PaperSize paper, std::string title) : paper_(paper), title_(std::move(title)) {
    new_page();
}

void SheetFlow::new_page() {
    pages_.push_back({paper_.width, paper_.height, {}, {}});
    page().lines.push_back({{{left(), head_line}, {right(), head_line}}, Pen::frame});
    at_ = head_line + 5;
}

PaperBox SheetFlow::take(double height) {
    if (height > room()) new_page();
    const PaperBox box{left(), at_, right(), at_ + height};
    at_ += height;
    return box;
}

void SheetFlow::heading(std::string_view text, double follows) {
    if (room() < follows + 10) new_page();
    at_ += 5;
    page().texts.push_back({{left(), at_}, cut_to(text, right() - left(), 3.4, true), 3.4, true});
    at_ += 1.6;
    page().lines.push_back({{{left(), at_}, {right(), at_}}, Pen::frame});
    at_ += line_height + 0.6;
}

void SheetFlow::row(const std::vector<SheetColumn>& columns, const std::vector<std::string>& cells,
                    bool bold) {
    double shares = 0;
    for (const SheetColumn& column : columns) shares += column.share;
    const double whole = right() - left() + column_gap;
    std::vector<std::vector<std::string>> lines;
    std::size_t count = 1;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const double width = columns[i].share / shares * whole - column_gap;
        lines.push_back(lines_of(i < cells.size() ? cells[i] : "", width, text_size, bold));
        if (lines.back().size() > most_lines) {
            lines.back().resize(most_lines);
            lines.back().back() = "…";
        }
        count = std::max(count, lines.back().size());
    }
    if (static_cast<double>(count) * line_height > room()) {
        new_page();
        at_ += line_height;
    }
    double x = left();
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const double width = columns[i].share / shares * whole - column_gap;
        const bool end = columns[i].anchor == PaperAnchor::end;
        for (std::size_t k = 0; k < lines[i].size(); ++k)
            if (!lines[i][k].empty())
                page().texts.push_back(
                    {{end ? x + width : x, at_ + static_cast<double>(k) * line_height},
                     lines[i][k],
                     text_size,
                     bold,
                     columns[i].anchor});
        x += width + column_gap;
    }
    at_ += static_cast<double>(count) * line_height + 0.5;
}

void SheetFlow::paragraph(std::string_view text, std::string_view lead) {
    const double indent = lead.empty() ? 0 : 5;
    const std::vector<std::string> lines = lines_of(text, right() - left() - indent, text_size);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (line_height > room()) {
            new_page();
            at_ += line_height;
        }
        if (i == 0 && !lead.empty())
            page().texts.push_back(
                {{left(), at_}, cut_to(lead, indent - 0.5, text_size), text_size});
        page().texts.push_back({{left() + indent, at_}, lines[i], text_size});
        at_ += line_height;
    }
    at_ += 0.6;
}

std::vector<PaperPage> SheetFlow::finish() && {
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        PaperPage& page = pages_[i];
        page.texts.push_back({{left(), head_line - 1.8},
                              cut_to(title_, right() - left() - number_width - 2, 3.4, true),
                              3.4,
                              true});
        page.texts.push_back({{right(), head_line - 1.8},
                              fmt::format("page {} of {}", i + 1, pages_.size()),
                              2.6,
                              false,
                              PaperAnchor::end});
    }
    return std::move(pages_);
}

}  // namespace drawwell
