#include "cli/report/page_writer.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/read/visible_text.h"
#include "cli/report/page_text.h"

namespace drawwell {

void Page::heading(std::string_view text) {
    text_ += "\n" + marked(keep(PageBlock::Kind::heading, "", text).text, "1") + "\n";
}

void Page::row(std::string_view label, std::string_view value) {
    const PageBlock& block = keep(PageBlock::Kind::row, label, value);
    const std::string lead = fmt::format("  {:<24}", block.label);
    text_ += wrapped(lead, block.text, lead.size());
}

void Page::aligned(std::string_view label, std::string_view value) {
    const PageBlock& block = keep(PageBlock::Kind::aligned, label, value);
    text_ += fmt::format("  {:<24}{}\n", block.label, block.text);
}

void Page::paragraph(std::string_view text) {
    text_ += wrapped("  ", keep(PageBlock::Kind::paragraph, "", text).text, 2);
}

void Page::point(std::string_view text) {
    text_ += wrapped("  - ", keep(PageBlock::Kind::point, "", text).text, 4);
}

void Page::line(std::string_view text) {
    text_ += keep(PageBlock::Kind::line, "", text).text + "\n";
}

void Page::verdict(std::string_view text, std::optional<bool> good) {
    PageBlock& block = keep(PageBlock::Kind::verdict, "", text);
    block.good = good;
    text_ += marked(wrapped("", block.text, 0), !good ? "1;33" : *good ? "1;32" : "1;31");
}

void Page::problems(std::string_view text) {
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        paragraph(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
}

PageBlock& Page::keep(PageBlock::Kind kind, std::string_view label, std::string_view text) {
    return blocks_.emplace_back(PageBlock{kind, visible(label), visible(text)});
}

std::string Page::marked(std::string text, std::string_view code) const {
    if (!colour_) return text;
    const bool newline = text.ends_with('\n');
    if (newline) text.pop_back();
    return fmt::format("\x1b[{}m{}\x1b[0m{}", code, text, newline ? "\n" : "");
}

}  // namespace drawwell
