#pragma once

#include <span>
#include <string>
#include <string_view>

#include "cli/report/sheet/paper.h"

namespace drawwell {

/// One page as SVG, as large as its paper.
std::string page_svg(const PaperPage& page, std::string_view title);

/// All pages under one another in one SVG.
std::string pages_svg(std::span<const PaperPage> pages, std::string_view title);

/// All pages as HTML that needs nothing else, one to a sheet of paper when printed at full size.
std::string pages_html(std::span<const PaperPage> pages, std::string_view title);

/// A comment to put at the end of a PDF of a sheet, by which it is known again.
std::string pdf_origin();

}  // namespace drawwell
