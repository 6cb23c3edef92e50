#include "models/fittings/damp.h"

#include <algorithm>
#include <array>
#include <memory>
#include <utility>

#include "models/components/stove_builder.h"
#include "models/fittings/reading.h"
#include "models/laws/water.h"
#include "models/series.h"
#include "models/stove.h"

namespace drawwell {
namespace {

constexpr double metal_from = 10;    // [W/(m K)] walls that conduct better hold no water
constexpr double in_step = 60;       // [s] in which water follows its wall: our choice
constexpr double boils_over = 5;     // [K] above the boiling point it is all gone: our choice
constexpr double corner = 0.5;       // [K] over which the heat capacity turns
constexpr double steam_left = 0.01;  // [-] of water's heat capacity, for what is no longer there
constexpr double dry_at = 0.02;      // [-] of the first water that counts as none

/// Heat capacity [J/(kg K)] of water that boils off and is gone.
Table drying(double boils) {
    const double boiling = vaporisation_heat / boils_over;  // half of either corner counts
    const double gone = steam_left * water_heat_capacity;
    return {{boils - corner, boils, boils + boils_over - corner, boils + boils_over},
            {water_heat_capacity, boiling, boiling, gone}};
}

/// How much of the water is gone [-] at a temperature [K].
double gone_share(double temperature, double boils) {
    return std::clamp((temperature - boils) / (boils_over - corner), 0.0, 1.0);
}

/// The parts of a stove that have layers which may be wet.
std::vector<std::string> walls_of(const Stove& stove) {
    std::vector<std::string> walls{"riser"};
    if (stove.feed) walls.emplace_back("feed");
    if (stove.tunnel) walls.emplace_back("tunnel");
    for (const FlueSection& section : stove.flue.sections) walls.push_back("flue." + section.name);
    for (const Fitting& fitting : stove.fittings)
        if (const Bell* bell = std::get_if<Bell>(&fitting)) walls.push_back("bell." + bell->name);
    return walls;
}

}  // namespace

std::span<const ColumnInfo> Damp::columns() {
    static constexpr std::array columns{
        ColumnInfo{"damp_water", "kg", table, "water left in each damp wall"},
        ColumnInfo{"damp_heat", "W", table, "heat that its water takes from it"},
    };
    return columns;
}

std::vector<FittingProblem> problems(const Damp& damp, const Stove& stove) {
    const std::vector<std::string> walls = walls_of(stove);
    if (std::find(walls.begin(), walls.end(), damp.wall) != walls.end()) return {};
    std::string known;
    for (const std::string& wall : walls) known += (known.empty() ? "" : ", ") + wall;
    return {{{"wall"}, "no wall here is called " + damp.wall + "; there are " + known}};
}

void add_fitting(StoveBuilder& builder, const Damp& damp) {
    Network& network = builder.network;
    const double boils = boiling_point(builder.stove.site.pressure);
    const auto curve = std::make_shared<const EnthalpyCurve>(drying(boils));
    const std::string prefix = damp.wall + ".";
    struct Wet {
        std::size_t water = 0, link = 0;
        double mass = 0;  // [kg] at first
    };
    std::vector<Wet> wet;
    const std::size_t dry_solids = network.solids.size();
    for (std::size_t i = 0; i < dry_solids; ++i) {
        const Solid wall = network.solids[i];
        const std::string& material = builder.layout.material[i];
        if (!wall.name.starts_with(prefix) || material.empty()) continue;
        if (builder.material(material).conductivity.y().front() > metal_from) continue;
        const double mass = damp.water * wall.mass;
        wet.push_back({network.solids.size(), network.links.size(), mass});
        network.solids.push_back({.name = "damp." + damp.name + "." + wall.name,
                                  .curve = curve,
                                  .conductivity = std::make_shared<Table>(1.0),
                                  .mass = mass,
                                  .initial_temperature = wall.initial_temperature});
        builder.layout.material.emplace_back();  // none that wears
        network.links.push_back(
            {.a = SolidId{i},
             .b = SolidId{wet.back().water},
             .shape_a = 1e9,
             .shape_b = 1e9,
             .contact = in_step / (mass * water_heat_capacity),
             .share = [i, water = wet.back().water](double, std::span<const double> temperature) {
                 return temperature[i] > temperature[water] ? 1.0 : 0.0;
             }});
    }
    builder.layout.readings.push_back(
        {"damp_water", [wet, boils](const HeatBalance& at) {
             double left = 0;
             for (const Wet& cell : wet)
                 left += cell.mass * (1 - gone_share(at.temperature()[cell.water], boils));
             return left;
         }});
    builder.layout.readings.push_back({"damp_heat", [wet](const HeatBalance& at) {
                                           double heat = 0;
                                           for (const Wet& cell : wet) {
                                               const ConductionLink& link =
                                                   at.network().links[cell.link];
                                               const double over = at.temperature()[index(link.a)] -
                                                                   at.temperature()[index(link.b)];
                                               heat += std::max(over, 0.0) / link.contact;
                                           }
                                           return heat;
                                       }});
}

std::vector<FittingAnswer> answers(const Damp&, const Stove&, std::size_t at,
                                   const Results& results) {
    const Series left(results, "damp_water", at), heat(results, "damp_heat", at);
    std::optional<double> dry;
    for (std::size_t i = 0; i < results.time.size() && !dry; ++i)
        if (left[i] < dry_at * left[0]) dry = results.time[i];
    return {{"driven_off", "water driven off", "kg", left[0] - left[results.time.size() - 1]},
            {"dry_after", "dry after", "s", dry},
            {"heat", "heat it took", "J", integrate(results, heat)}};
}

}  // namespace drawwell
