#pragma once

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "cli/report/page_writer.h"
#include "cli/report/shown_unit.h"
#include "models/summary.h"

namespace drawwell {

/// What the page says beside the answers themselves.
struct PageFrame {
    std::string title;     // of the stove
    double duration = 0;   // [s] as far as computed
    bool complete = true;  // false: stopped before its end
    bool colour = false;   // marks headings and the verdict for a terminal
    std::vector<std::pair<std::string, std::filesystem::path>> files;  // what each holds, its path
    std::string begun_from = {};  // the run it begins from, in words; empty: lit cold
    UnitSystem units = UnitSystem::metric;
};

/// The answers of a burn as a page for the person who builds the stove: 80 columns, the verdict
/// first, then draw, cooking, heat, cautions, whether the books balance, and where the files are.
std::string burn_page(const Summary& summary, const PageFrame& frame);

/// The same, block by block.
void write_answers(Page& page, const Summary& summary, const PageFrame& frame);

}  // namespace drawwell
