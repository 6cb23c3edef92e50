#pragma once

#include "cli/report/run_record.h"
#include "models/summary.h"
#include "solver/results.h"

namespace drawwell {

// A made-up burn for the tests of what is written: three instants, one divided part.
inline Results sample_results() {
    Results results;
    results.time = {0, 30, 60};
    results.axes = {{"plate_radius", "m", "ring of the plate", {0.05, 0.15}}};
    results.columns = {
        {"spare_draw", "Pa", "spare draw", "", 1, {4.5, 5.5, 6.5}},
        {"plate_temperature", "K", "plate", "plate_radius", 2, {280, 281, 380, 361, 480, 441}}};
    return results;
}

inline Summary sample_summary() {
    Summary summary;
    summary.draws = true;
    summary.reserve_draw_min = 5.4;
    summary.reserve_draw_min_time = 310;
    summary.feed_suction_min = 3.2;
    summary.air_ratio_mean = 3.1;
    summary.air_flow_mean = 0.008;
    summary.plate_centre_max = 743.15;
    summary.plate_centre_max_time = 8400;
    summary.plate_rim_max = 590.65;
    summary.plate_time_to_fry = 1080;
    summary.plate_best_ring = CookingTime{240, 300, 480, 8400};
    summary.plate_pot = CookingTime{300, 360, 540, 8100};
    summary.plate_best_ring_radius = 0.04;
    summary.plate_bow_low = -0.0004;
    summary.plate_bow_high = -0.0072;
    summary.plate_bow_time = 1800;
    summary.barrel_top_max = 623.15;
    summary.barrel_foot_max = 433.15;
    summary.riser_gas_max = 1203.15;
    summary.exit_gas_max = 453.15;
    summary.exit_gas_mean = 413.15;
    summary.heat_released = 52e6;
    summary.heat_to_room = 29e6;
    summary.heat_stored = 5e6;
    summary.heat_up_flue = 18e6;
    summary.heat_up_flue_latent = 5e6;
    summary.wood_burned = 3.2;
    summary.energy_residual = 2e-5;
    summary.mass_residual = -3e-6;
    summary.element_residual = 1e-6;
    summary.steps = 1234;
    summary.rhs_evaluations = 5678;
    summary.wall_clock = 0.21;
    return summary;
}

inline RunRecord sample_record() {
    RunRecord record;
    record.title = "test stove";
    record.stove_name = "test.toml";
    record.stove_text = "title = \"test stove\"\n";
    record.stove_resolved = "title = \"test stove\"\nburn.duration = \"3 h\"\n";
    record.overrides = {"flue.stack.length=2 m"};
    record.created = "2026-01-31T12:00:00Z";
    return record;
}

inline SavedState sample_end_state() {
    SavedState state;
    state.time = 10800;
    state.temperature = {{"plate.0", 512.5}, {"riser.wall.3.0", 701.25}};
    state.inlet_flow = {{"feed", -0.004}, {"side air slot", 0.0015}};
    LeftLot left{.lot = {.name = "main",
                         .dry_mass = 0.6,
                         .moisture_dry_basis = 0.19,
                         .lit_area = 0.046,
                         .section = 0.0037,
                         .foot_share = 0.37},
                 .place = "hearth"};
    left.state = {2e-4, 0.25, 0.06};
    state.left = {left, left};
    state.left[1].lot.name = "kindling";
    state.left[1].place = "riser foot";
    state.left[1].state = {0, 0, 0.002};
    return state;
}

}  // namespace drawwell
