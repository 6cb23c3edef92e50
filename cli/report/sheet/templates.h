#pragma once

#include <string>
#include <vector>

#include "cli/report/sheet/paper.h"
#include "models/stove.h"

namespace drawwell {

/// A line of a template, full size.
struct TemplateLine {
    std::vector<PaperPoint> points;  // [mm] from the template's upper left corner
    bool closed = false;
    std::string name = {};  // in the key, with its size; empty: no entry
    Pen pen = Pen::cut;
};

/// Something to lay on the material and cut by.
struct Template {
    std::string title, use;
    double width = 0, height = 0;  // [mm]
    std::vector<TemplateLine> lines;
};

/// Templates of what is awkward to mark out: the port, a quarter of all cuts about the riser's
/// axis, the flue outlet unrolled from the barrel's round.
std::vector<Template> templates_for(const Stove& stove);

}  // namespace drawwell
