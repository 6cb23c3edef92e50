#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace drawwell {

/// What a page is made of, for those who set it in another way than as plain text.
struct PageBlock {
    enum class Kind { heading, row, aligned, paragraph, point, line, verdict };
    Kind kind = Kind::line;
    std::string label, text;
    std::optional<bool> good = true;  // a verdict; none: neither good nor bad
};

/// Builds a page of `page_width` columns from headings, labelled rows and sentences. Each text is
/// one line: what a terminal would obey in it, line breaks too, is shown (`visible`).
class Page {
  public:
    /// `colour`: marks headings and the verdict for a terminal.
    explicit Page(bool colour) : colour_(colour) {}

    void heading(std::string_view text);
    void row(std::string_view label, std::string_view value);
    /// The same with blanks as they are, so that figures stand below each other.
    void aligned(std::string_view label, std::string_view value);
    void paragraph(std::string_view text);
    /// What an error says (`error_text`), a paragraph a line.
    void problems(std::string_view text);
    void point(std::string_view text);
    /// Text as it is, never broken.
    void line(std::string_view text);
    /// `good`: none where nothing is known for good or bad.
    void verdict(std::string_view text, std::optional<bool> good);
    const std::string& text() const { return text_; }
    /// All of it, in order.
    const std::vector<PageBlock>& blocks() const { return blocks_; }

  private:
    PageBlock& keep(PageBlock::Kind kind, std::string_view label, std::string_view text);
    std::string marked(std::string text, std::string_view code) const;

    bool colour_;
    std::string text_;
    std::vector<PageBlock> blocks_;
};

}  // namespace drawwell
