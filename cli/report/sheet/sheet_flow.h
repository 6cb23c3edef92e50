#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/report/sheet/paper.h"

namespace drawwell {

/// A kind of paper, upright.
struct PaperSize {
    double width = 0, height = 0;  // [mm]
};
inline constexpr PaperSize paper_a4{210, 297}, paper_letter{215.9, 279.4};

/// A column of a table: its share of the width.
struct SheetColumn {
    double share = 1;
    PaperAnchor anchor = PaperAnchor::start;
};

/// Pages filled from top to bottom; what does not fit goes on the next.
class SheetFlow {
  public:
    static constexpr double margin = 12;  // [mm] printers reach that far

    SheetFlow(PaperSize paper, std::string title);

    void new_page();
    PaperPage& page() { return pages_.back(); }
    double left() const { return margin; }
    double right() const { return paper_.width - margin; }
    double bottom() const { return paper_.height - margin; }
    double at() const { return at_; }
    double room() const { return bottom() - at_; }
    void skip(double height) { at_ += height; }
    /// A strip of the page, on a new one if this has no room for it.
    PaperBox take(double height);

    /// A heading with a rule under it; on a new page if less than `follows` [mm] would be left.
    void heading(std::string_view text, double follows = 20);
    /// A row of a table, broken into lines within its columns.
    void row(const std::vector<SheetColumn>& columns, const std::vector<std::string>& cells,
             bool bold = false);
    void paragraph(std::string_view text, std::string_view lead = {});

    /// The pages, numbered.
    std::vector<PaperPage> finish() &&;

    static constexpr double text_size = 2.6, line_height = 3.7;

  private:
    PaperSize paper_;
    std::string title_;
    std::vector<PaperPage> pages_;
    double at_ = 0;
};

}  // namespace drawwell
