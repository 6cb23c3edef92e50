#include "cli/report/section/flue_way.h"

#include <algorithm>
#include <cmath>

namespace drawwell {
namespace {

constexpr double steep = 0.5;    // [-] of rise to length, from which a piece would pass the barrel
constexpr double beside = 0.02;  // [m] from barrel or plate to such a piece: our choice

/// How far the stove reaches at the outlet's side.
double stove_side(const Stove& stove) {
    const double axis = riser_axis(stove);
    if (!stove.barrel) return axis;
    const double barrel = stove.barrel->diameter / 2 + thickness(stove.barrel->jacket);
    return axis + std::max(barrel, stove.plate ? stove.plate->diameter / 2 : 0.0);
}

CutShape level_pipe(std::string name, FlatPoint from, double to, double half) {
    return {std::move(name),
            {{from.x, from.y - half},
             {to, from.y - half},
             {to, from.y + half},
             {from.x, from.y + half}}};
}

void add_bells(const Stove& stove, FlueWay& way, FlatPoint& at, double& start) {
    for (const Fitting& fitting : stove.fittings) {
        const auto* bell = std::get_if<Bell>(&fitting);
        if (!bell) continue;
        const double wall = thickness(bell->wall);
        const double across = bell->diameter > 0 ? bell->diameter : bell->width;
        const double left = std::max(at.x, stove_side(stove)) + wall;
        const double floor = at.y - bell->inlet;
        if (way.bells.empty() && left - wall > at.x)
            way.stubs.push_back(level_pipe("into the bell", at, left, bell->opening / 2));
        way.bells.push_back({bell, left, floor, left + across, floor + bell->height, start});
        start += bell->height;
        at = {left + across + wall, floor + bell->outlet};
    }
}

void add_bypass(const Stove& stove, FlueWay& way) {
    if (!stove.bypass || !stove.barrel || !stove.plate || way.runs.empty()) return;
    const auto into = std::find_if(way.runs.begin(), way.runs.end(), [&](const FlueRun& run) {
        return !stove.bypass->into.empty() && run.section->name == stove.bypass->into;
    });
    const FlatPoint joins = into == way.runs.end() ? way.runs.front().from : into->from;
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

FlueWay flue_way(const Stove& stove) {
    FlueWay way;
    const double axis = riser_axis(stove);
    way.outlet = {stove.barrel ? axis + stove.barrel->diameter / 2 : axis, stove.outlet_height()};
    if (stove.flue.sections.empty()) return way;
    FlatPoint at = way.outlet;
    double start = 0;
    add_bells(stove, way, at, start);
    for (const FlueSection& section : stove.flue.sections) {
        const double share = std::clamp(section.rise / section.length, -1.0, 1.0);
        const double outer = outer_diameter(section) / 2;
        if (way.runs.empty() && stove.barrel && std::abs(share) > steep) {
            const double clear = (way.bells.empty() ? stove_side(stove) : at.x) + outer + beside;
            way.stubs.push_back(level_pipe("flue outlet", at, clear, section.bore / 2));
            at.x = clear;
        }
        const bool bent = !way.runs.empty() || !way.stubs.empty();
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

}  // namespace drawwell
