#pragma once

#include <fmt/format.h>

#include <string>
#include <string_view>

#include "cli/report/page_text.h"

namespace drawwell {

/// A page being written, line by line.
class Page {
  public:
    explicit Page(bool colour) : colour_(colour) {}

    void heading(std::string_view text) { text_ += "\n" + marked(std::string(text), "1") + "\n"; }
    void row(std::string_view label, std::string_view value) {
        const std::string lead = fmt::format("  {:<24}", label);
        text_ += wrapped(lead, value, lead.size());
    }
    void paragraph(std::string_view text) { text_ += wrapped("  ", text, 2); }
    void point(std::string_view text) { text_ += wrapped("  - ", text, 4); }
    void line(std::string_view text) { text_ += std::string(text) + "\n"; }
    void verdict(std::string_view text, bool good) {
        text_ += marked(wrapped("", text, 0), good ? "1;32" : "1;31");
    }
    const std::string& text() const { return text_; }

  private:
    std::string marked(std::string text, std::string_view code) const {
        if (!colour_) return text;
        const bool newline = text.ends_with('\n');
        if (newline) text.pop_back();
        return fmt::format("\x1b[{}m{}\x1b[0m{}", code, text, newline ? "\n" : "");
    }

    bool colour_;
    std::string text_;
};

}  // namespace drawwell
