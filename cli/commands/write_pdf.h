#pragma once

#include <filesystem>
#include <span>
#include <string_view>

#include "cli/report/sheet/paper.h"

namespace drawwell {

/// Writes pages as a PDF at full size, by rsvg-convert or else chromium, whichever is installed.
/// FileError: neither is, with what to install; or the tool failed. The target is then untouched.
void write_pdf(const std::filesystem::path& target, std::span<const PaperPage> pages,
               std::string_view title);

/// FileError, with what to install, unless a PDF could be written.
void check_pdf_tool();

}  // namespace drawwell
