#pragma once

#include <string>
#include <string_view>

namespace drawwell {

/// Builds a page of `page_width` columns from headings, labelled rows and sentences.
class Page {
  public:
    /// `colour`: marks headings and the verdict for a terminal.
    explicit Page(bool colour) : colour_(colour) {}

    void heading(std::string_view text);
    void row(std::string_view label, std::string_view value);
    void paragraph(std::string_view text);
    void point(std::string_view text);
    /// Text as it is, never broken.
    void line(std::string_view text);
    void verdict(std::string_view text, bool good);
    const std::string& text() const { return text_; }

  private:
    std::string marked(std::string text, std::string_view code) const;

    bool colour_;
    std::string text_;
};

}  // namespace drawwell
