#include "validation/random_stoves/burn_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "models/build_network.h"
#include "models/fire/solid_fuel.h"
#include "validation/random_stoves/heat_limit.h"

namespace drawwell {
namespace {

// A step's error is 2e-4 of a temperature, and between samples gas may be a little hotter.
constexpr double wall_slack = 2;   // [K]
constexpr double gas_slack = 0.1;  // [K] of rounding: gas is worked out anew from walls and fuel
constexpr double books_close = 1e-3;
constexpr double ground = 298.15;  // [K]

/// Every number of a summary, with its name.
std::vector<std::pair<const char*, double>> figures(const Summary& s) {
    std::vector<std::pair<const char*, double>> all{
        {"smoke_back", s.smoke_back},
        {"air_flow_mean", s.air_flow_mean},
        {"riser_gas_max", s.riser_gas_max},
        {"exit_gas_max", s.exit_gas_max},
        {"flue_top_max", s.flue_top_max},
        {"heat_released", s.heat_released},
        {"heat_to_room", s.heat_to_room},
        {"heat_lost_outdoors", s.heat_lost_outdoors},
        {"heat_stored", s.heat_stored},
        {"heat_up_flue", s.heat_up_flue},
        {"heat_up_flue_latent", s.heat_up_flue_latent},
        {"heat_up_flue_unburnt", s.heat_up_flue_unburnt},
        {"heat_from_room_air", s.heat_from_room_air},
        {"heat_with_smoke", s.heat_with_smoke},
        {"wood_burned", s.wood_burned},
        {"room_demand", s.room_demand},
        {"energy_residual", s.energy_residual},
        {"mass_residual", s.mass_residual},
        {"element_residual", s.element_residual}};
    const auto add = [&](const char* name, const std::optional<double>& value) {
        if (value) all.emplace_back(name, *value);
    };
    add("reserve_draw_min", s.reserve_draw_min);
    add("reserve_draw_min_time", s.reserve_draw_min_time);
    add("feed_suction_min", s.feed_suction_min);
    add("smoke_back_first", s.smoke_back_first);
    add("air_ratio_mean", s.air_ratio_mean);
    add("plate_centre_max", s.plate_centre_max);
    add("plate_rim_max", s.plate_rim_max);
    add("plate_centre_max_time", s.plate_centre_max_time);
    add("plate_time_to_fry", s.plate_time_to_fry);
    add("plate_best_ring_radius", s.plate_best_ring_radius);
    add("barrel_top_max", s.barrel_top_max);
    add("barrel_foot_max", s.barrel_foot_max);
    add("exit_gas_mean", s.exit_gas_mean);
    for (const auto& time : {s.plate_best_ring, s.plate_pot})
        if (time)
            for (const double each : {time->warm, time->simmer, time->fry, time->sear})
                all.emplace_back("minutes in a cooking band", each);
    return all;
}

}  // namespace

Instant instant_of(double time, std::span<const double> state, const HeatBalance& balance) {
    const Network& network = balance.network();
    const March& march = balance.flow().march();
    Instant instant;
    instant.time = time;
    instant.state.assign(state.begin(), state.end());
    instant.wall.assign(balance.temperature().begin(), balance.temperature().end());
    for (std::size_t p = 0; p < network.passages.size(); ++p) {
        const Passage& passage = network.passages[p];
        const JunctionId upstream = march.mass_flow(p) >= 0 ? passage.from : passage.to;
        Instant::Stretch stretch;
        stretch.name = passage.name;
        stretch.mass_fraction = march.junction_gas(upstream).mass_fraction;
        for (std::size_t i = 0; i < passage.law->cell_count(); ++i) {
            const GasCell& cell = march.cells()[passage.first_cell + i];
            for (const double each :
                 {cell.inlet_temperature, cell.mean_temperature, cell.outlet_temperature})
                stretch.temperature.push_back(each);
        }
        instant.stretches.push_back(std::move(stretch));
    }
    return instant;
}

BurnChecks::Bounds BurnChecks::bounds_of(const Stove& stove, const Library& library) {
    const BuiltStove built = build_network(stove, library);
    Bounds bounds;
    const auto& outdoor = stove.site.outdoor.y();
    bounds.sources = bounds.air =
        std::max(stove.site.room, *std::max_element(outdoor.begin(), outdoor.end()));
    if (stove.riser.wall_temperature)
        bounds.sources = std::max(bounds.sources, *stove.riser.wall_temperature);
    if (stove.heat_source) return bounds;
    bounds.gas = built.gas;
    bounds.sources = std::max(
        {bounds.sources, library.bed.flame_temperature.value, library.bed.ember_temperature.value});
    // Wood that goes in warmer than the reference gives off its gas so much hotter.
    bounds.fuel_surface = pyrolysis_temperature + std::max(built.fuel.temperature - ground, 0.0);
    return bounds;
}

BurnChecks::BurnChecks(Bounds bounds) : bounds_(std::move(bounds)), hottest_(bounds_.sources) {}

void BurnChecks::see(const Instant& instant) {
    const std::string when = fmt::format(" at {:.0f} s", instant.time);
    for (const double value : instant.state) require_finite("the state", value, when);
    for (const double value : instant.wall) require_temperature("a wall", value, when);
    for (const Instant::Stretch& stretch : instant.stretches) {
        for (const double value : stretch.temperature)
            require_temperature(stretch.name, value, when);
        for (const double value : stretch.mass_fraction) require_finite(stretch.name, value, when);
    }
    if (!complaints_.empty()) return;  // nothing to compare with

    const double hottest_wall = *std::max_element(instant.wall.begin(), instant.wall.end());
    const Preheat preheat{.walls = std::max(hottest_wall, bounds_.air),
                          .fuel = bounds_.fuel_surface};
    for (const Instant::Stretch& stretch : instant.stretches) {
        if (stretch.temperature.empty()) continue;
        const double gas =
            *std::max_element(stretch.temperature.begin(), stretch.temperature.end());
        hottest_ = std::max(hottest_, gas);
        if (!bounds_.gas) continue;
        const double over = gas - hottest_gas(*bounds_.gas, stretch.mass_fraction, preheat);
        worst_.gas = std::max(worst_.gas, over);
        if (over > gas_slack)
            complain("gas", fmt::format("gas in {}{}: {:.1f} K, {:.2f} K over what it could be",
                                        stretch.name, when, gas, over));
    }
    // The walls' first temperatures are no more than a start.
    if (instant.time == 0) hottest_ = std::max(hottest_, hottest_wall);
    const double over = hottest_wall - hottest_;
    worst_.wall = std::max(worst_.wall, over);
    if (over > wall_slack)
        complain("wall", fmt::format("a wall{}: {:.1f} K, {:.2f} K over all that could heat it",
                                     when, hottest_wall, over));
}

void BurnChecks::see(const BurnOutcome& outcome) {
    for (const Column& column : outcome.results.columns)
        for (const double value : column.values)
            if (column.unit == "K")
                require_temperature(column.name, value);
            else
                require_finite(column.name, value);
    for (const auto& [name, value] : figures(outcome.summary)) require_finite(name, value);
    const Summary& summary = outcome.summary;
    worst_.energy = summary.energy_residual;
    worst_.mass = summary.mass_residual;
    worst_.elements = summary.element_residual;
    for (const auto& [name, residual] :
         {std::pair{"energy", worst_.energy}, {"mass", worst_.mass}, {"elements", worst_.elements}})
        if (!(residual <= books_close))
            complain(name, fmt::format("the books of {} are off by {:.2e}", name, residual));
}

std::vector<std::string> BurnChecks::complaints() const {
    std::vector<std::string> all;
    for (const auto& [kind, text] : complaints_) all.push_back(text);
    return all;
}

void BurnChecks::complain(const std::string& kind, const std::string& text) {
    complaints_.emplace(kind, text);
}

void BurnChecks::require_finite(std::string_view what, double value, std::string_view when) {
    if (!std::isfinite(value)) complain("finite", fmt::format("{}{}: {}", what, when, value));
}

void BurnChecks::require_temperature(std::string_view what, double value, std::string_view when) {
    if (!std::isfinite(value) || value <= 0)
        complain("temperature", fmt::format("{}{}: a temperature of {} K", what, when, value));
}

}  // namespace drawwell
