#include "models/fouling.h"

#include <algorithm>

namespace drawwell {
namespace {

void line(double soot, BuildUp& wall) {
    if (soot > 0) wall.insert(wall.begin(), {soot_material, soot});
}

void narrow(double soot, double& across) {
    if (across > 0) across -= 2 * soot;
}

}  // namespace

bool is_sooted(const Stove& stove) {
    const auto& sections = stove.flue.sections;
    return stove.riser.soot > 0 || (stove.barrel && stove.barrel->soot > 0) ||
           std::any_of(sections.begin(), sections.end(),
                       [](const FlueSection& section) { return section.soot > 0; });
}

Stove with_soot_layers(const Stove& stove) {
    Stove sooted = stove;
    Riser& riser = sooted.riser;
    line(riser.soot, riser.lining);
    for (double* across : {&riser.bore, &riser.width, &riser.depth}) narrow(riser.soot, *across);
    if (sooted.barrel && sooted.barrel->soot > 0) {
        const double soot = sooted.barrel->soot;
        line(soot, sooted.barrel->shell);
        riser.lining.push_back({soot_material, soot});  // on its skin, in the barrel
        if (sooted.bypass) narrow(soot, sooted.bypass->bore);
    }
    for (FlueSection& section : sooted.flue.sections) {
        line(section.soot, section.wall);
        narrow(section.soot, section.bore);
    }
    return sooted;
}

double sooted_roughness(double swept, double soot) {
    return std::max(swept, soot / 2);
}

}  // namespace drawwell
