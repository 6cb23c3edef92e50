#include "cli/report/page_writer.h"

#include <fmt/format.h>

#include "cli/report/page_text.h"

namespace drawwell {

void Page::heading(std::string_view text) {
    blocks_.push_back({PageBlock::Kind::heading, "", std::string(text)});
    text_ += "\n" + marked(std::string(text), "1") + "\n";
}

void Page::row(std::string_view label, std::string_view value) {
    blocks_.push_back({PageBlock::Kind::row, std::string(label), std::string(value)});
    const std::string lead = fmt::format("  {:<24}", label);
    text_ += wrapped(lead, value, lead.size());
}

void Page::aligned(std::string_view label, std::string_view value) {
    blocks_.push_back({PageBlock::Kind::aligned, std::string(label), std::string(value)});
    text_ += fmt::format("  {:<24}{}\n", label, value);
}

void Page::paragraph(std::string_view text) {
    blocks_.push_back({PageBlock::Kind::paragraph, "", std::string(text)});
    text_ += wrapped("  ", text, 2);
}

void Page::point(std::string_view text) {
    blocks_.push_back({PageBlock::Kind::point, "", std::string(text)});
    text_ += wrapped("  - ", text, 4);
}

void Page::line(std::string_view text) {
    blocks_.push_back({PageBlock::Kind::line, "", std::string(text)});
    text_ += std::string(text) + "\n";
}

void Page::verdict(std::string_view text, bool good) {
    blocks_.push_back({PageBlock::Kind::verdict, "", std::string(text), good});
    text_ += marked(wrapped("", text, 0), good ? "1;32" : "1;31");
}

std::string Page::marked(std::string text, std::string_view code) const {
    if (!colour_) return text;
    const bool newline = text.ends_with('\n');
    if (newline) text.pop_back();
    return fmt::format("\x1b[{}m{}\x1b[0m{}", code, text, newline ? "\n" : "");
}

}  // namespace drawwell
