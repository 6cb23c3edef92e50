#include "cli/report/section/flue_way.h"

#include <algorithm>
#include <cmath>

namespace drawwell {
namespace {

constexpr double steep = 0.5;    // [-] of rise to length, from which a piece would pass the barrel
constexpr double beside = 0.02;  // [m] from barrel or plate to such a piece: our choice

CutShape level_pipe(std::string name, FlatPoint from, double to, double half) {
    return {std::move(name),
            {{from.x, from.y - half},
             {to, from.y - half},
             {to, from.y + half},
             {from.x, from.y + half}}};
}

/// Adds the bells; gives the outside of the last one's wall.
double add_bells(const Stove& stove, FlueWay& way, FlatPoint& at, double& start) {
    double outside = stove_side(stove);
    for (const Fitting& fitting : stove.fittings) {
        const auto* bell = std::get_if<Bell>(&fitting);
        if (!bell) continue;
        const double wall = thickness(bell->wall);
        const double across = bell->diameter > 0 ? bell->diameter : bell->width;
        const double left = outside + wall, floor = at.y - bell->inlet;
        way.connect.push_back({"connector into the bell, " + bell->name, bell, at, left,
                               bell->opening, bell->opening + 2 * thickness(connector_wall(stove)),
                               &connector_wall(stove)});
        way.bells.push_back({bell, left, floor, left + across, floor + bell->height, start});
        start += bell->height;
        at = {left + across, floor + bell->outlet};
        outside = at.x + wall;
    }
    return outside;
}

/// Where the bypass joins the gas's way.
FlatPoint bypass_joint(const Stove& stove, const FlueWay& way) {
    for (const FlueRun& run : way.runs)
        if (!stove.bypass->into.empty() && run.section->name == stove.bypass->into) return run.from;
    return way.bells.empty() && !way.runs.empty() ? way.runs.front().from : way.outlet;
}

void add_bypass(const Stove& stove, FlueWay& way) {
    if (!stove.bypass || !stove.barrel || !stove.plate || way.runs.empty()) return;
    const FlatPoint joins = bypass_joint(stove, way);
    const double half = stove.bypass->bore / 2;
    const double wall = riser_axis(stove) + stove.barrel->diameter / 2;
    const double height = (stove.riser.top + stove.plate->underside) / 2;
    const double right = std::max(joins.x, wall + half);
    way.bypass.push_back(level_pipe("bypass", {wall, height}, right + half, half));
    const double low = std::min(joins.y, height), high = std::max(joins.y, height);
    way.bypass.push_back(
        {"bypass",
         {{right - half, low}, {right + half, low}, {right + half, high}, {right - half, high}}});
}

}  // namespace

CutShape LevelPipe::shape(double half) const {
    return level_pipe(name, from, to, half);
}

FlueWay flue_way(const Stove& stove) {
    FlueWay way;
    const double axis = riser_axis(stove);
    way.outlet = {stove.barrel ? axis + stove.barrel->diameter / 2 : axis, stove.outlet_height()};
    if (stove.flue.sections.empty()) return way;
    FlatPoint at = way.outlet;
    double start = 0;
    const double outside = add_bells(stove, way, at, start);
    for (const FlueSection& section : stove.flue.sections) {
        const double share = std::clamp(section.rise / section.length, -1.0, 1.0);
        const double outer = outer_diameter(section) / 2;
        if (way.runs.empty() && stove.barrel && std::abs(share) > steep) {
            const double clear = outside + outer + beside;
            way.connect.push_back({"level piece to the flue, " + section.name, nullptr, at, clear,
                                   section.bore, 2 * outer, &section.wall});
            at.x = clear;
        }
        const bool bent = !way.runs.empty() || (!way.connect.empty() && !way.connect.back().into);
        const FlueRun run{&section,       at,    {std::sqrt(1 - share * share), share},
                          section.length, start, section.bore / 2,
                          outer,          bent};
        at = run.end();
        start += section.length;
        way.runs.push_back(run);
    }
    add_bypass(stove, way);
    return way;
}

double bypass_length(const Stove& stove) {
    const double rise = bypass_joint(stove, flue_way(stove)).y - stove.riser.top;
    return std::max(stove.bypass->length, std::abs(rise));
}

}  // namespace drawwell
