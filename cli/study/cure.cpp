#include "cli/study/cure.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/units.h"

namespace drawwell {
namespace {

std::string length_text(double metres) {
    return show_quantity(metres, Quantity::length, 6);
}

/// The last section that rises, which a builder lengthens.
const FlueSection* stack_of(const Stove& stove) {
    const auto& sections = stove.flue.sections;
    const auto found = std::find_if(sections.rbegin(), sections.rend(),
                                    [](const FlueSection& section) { return section.rise > 0; });
    return found == sections.rend() ? nullptr : &*found;
}

void add_smaller_loads(const Stove& stove, std::vector<Remedy>& all) {
    if (stove.loads.empty()) return;
    Remedy remedy{"loads a third lighter, sticks as thick", {}};
    for (const Load& load : stove.loads) {
        const int pieces = std::max(1, static_cast<int>(std::lround(load.pieces * 2.0 / 3)));
        const double share = static_cast<double>(pieces) / load.pieces;
        remedy.variant.settings.push_back(
            {"load." + load.name + ".pieces", std::to_string(pieces), ""});
        remedy.variant.settings.push_back(
            {"load." + load.name + ".mass",
             show_quantity(load.mass * (share < 1 ? share : 2.0 / 3), Quantity::mass, 6), ""});
    }
    all.push_back(std::move(remedy));
}

void add_wider_gap(const Stove& stove, std::vector<Remedy>& all) {
    if (!stove.plate) return;
    for (const double more : {0.015, 0.03})
        all.push_back({fmt::format("opening under the plate {} higher", length_text(more)),
                       {{{"riser.top", length_text(stove.riser.top - more), ""}}}});
}

void add_wider_port(const Stove& stove, std::vector<Remedy>& all) {
    if (!stove.port || !stove.tunnel) return;
    const double most = stove.tunnel->width;
    if (most > stove.port->width * 1.01)
        all.push_back({fmt::format("port as wide as the tunnel, {}", length_text(most)),
                       {{{"port.width", length_text(most), ""}}}});
}

void add_flue(const Stove& stove, std::vector<Remedy>& all) {
    const FlueSection* stack = stack_of(stove);
    if (!stack) return;
    const std::string prefix = "flue." + stack->name + ".";
    for (const double more : {0.5, 1.0, 2.0}) {
        Remedy remedy{fmt::format("flue {} higher", length_text(more)), {}};
        remedy.variant.settings = {{prefix + "length", length_text(stack->length + more), ""},
                                   {prefix + "rise", length_text(stack->rise + more), ""}};
        all.push_back(std::move(remedy));
    }
    all.push_back(
        {"flue insulated by 25 mm of blanket",
         {{{prefix + "wall", "0.5 mm stainless_304, 25 mm aes_blanket, 0.5 mm mild_steel", ""}}}});
}

void add_bypass(const Stove& stove, std::vector<Remedy>& all) {
    if (!stove.barrel || stove.bypass) return;
    all.push_back({"a bypass from under the plate, open for 15 min",
                   {{{"bypass.bore", length_text(0.1), ""},
                     {"schedule.bypass", "[[\"0 min\", \"open\"], [\"15 min\", \"shut\"]]", ""}}}});
}

}  // namespace

std::vector<Remedy> remedies_for(const Stove& stove) {
    std::vector<Remedy> all;
    add_smaller_loads(stove, all);
    add_wider_gap(stove, all);
    add_wider_port(stove, all);
    add_bypass(stove, all);
    add_flue(stove, all);
    return all;
}

}  // namespace drawwell
