#pragma once

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "models/draw_study.h"

namespace drawwell {

/// What the page of a draw says beside the study itself.
struct DrawFrame {
    std::string title;    // of the stove
    bool colour = false;  // marks headings and the verdict for a terminal
    std::vector<std::pair<std::string, std::filesystem::path>> files;  // what each holds, its path
};

/// The draw at one instant as a page of 80 columns: the verdict and what the draw withstands, the
/// directions it can stand in, then both curves as a table.
std::string draw_page(const DrawStudy& study, const DrawFrame& frame);

}  // namespace drawwell
