#include "cli/report/summary_entries.h"

#include <array>
#include <iterator>
#include <optional>

#include "cli/read/units.h"

namespace drawwell {
namespace {

using Value = decltype(SummaryEntry::value);

Value plain(const std::optional<double>& value) {
    return value ? Value(*value) : Value();
}

Value celsius(const std::optional<double>& kelvin) {
    return kelvin ? Value(to_celsius(*kelvin)) : Value();
}

Value before(const Summary& summary, double ColdStart::*figure) {
    return summary.cold_start ? Value(*summary.cold_start.*figure) : Value();
}

Value limit_name(const std::optional<Limit>& limit) {
    return limit ? Value(limit_words[static_cast<std::size_t>(*limit)]) : Value();
}

Value leaning_name(const std::optional<ColdStart>& start) {
    return start ? Value(leaning_words[static_cast<std::size_t>(start->leaning)]) : Value();
}

void add_bands(std::vector<SummaryEntry>& entries, const std::array<std::string_view, 4>& keys,
               const std::optional<CookingTime>& time) {
    const auto minutes = [&](double CookingTime::*band) {
        return time ? Value(to_minutes(*time.*band)) : Value();
    };
    entries.push_back({keys[0], minutes(&CookingTime::warm)});
    entries.push_back({keys[1], minutes(&CookingTime::simmer)});
    entries.push_back({keys[2], minutes(&CookingTime::fry)});
    entries.push_back({keys[3], minutes(&CookingTime::sear)});
}

}  // namespace

std::vector<SummaryEntry> summary_entries(const Summary& summary) {
    std::vector<SummaryEntry> entries = {
        {"draws", summary.draws},
        {"reserve_draw_min_pa", plain(summary.reserve_draw_min)},
        {"reserve_draw_min_time_s", plain(summary.reserve_draw_min_time)},
        {"reserve_suction_min_pa", plain(summary.reserve_suction_min)},
        {"sustained_push_min_pa", plain(summary.sustained_push_min)},
        {"exchange_draw_min_early_pa", plain(summary.exchange_draw_min_early)},
        {"exchange_draw_min_late_pa", plain(summary.exchange_draw_min_late)},
        {"draw_limit", limit_name(summary.draw_limit)},
        {"gust_push_max_pa", plain(summary.gust_push_max)},
        {"gust_margin_min_pa", plain(summary.gust_margin_min)},
        {"no_fire_column_pa", before(summary, &ColdStart::column)},
        {"before_lighting", leaning_name(summary.cold_start)},
        {"priming_pa", before(summary, &ColdStart::priming)},
        {"priming_kindling_s", summary.cold_start ? plain(summary.cold_start->kindling) : Value()},
        {"feed_suction_min_pa", plain(summary.feed_suction_min)},
        {"smoke_back_s", summary.smoke_back},
        {"smoke_back_first_s", plain(summary.smoke_back_first)},
        {"air_ratio_mean", plain(summary.air_ratio_mean)},
        {"air_flow_mean_kg_s", summary.air_flow_mean},
        {"plate_centre_max_c", celsius(summary.plate_centre_max)},
        {"plate_centre_max_time_s", plain(summary.plate_centre_max_time)},
        {"plate_rim_max_c", celsius(summary.plate_rim_max)},
        {"plate_time_to_175c_s", plain(summary.plate_time_to_fry)},
        {"plate_best_ring_radius_m", plain(summary.plate_best_ring_radius)},
        {"plate_bow_low_m", plain(summary.plate_bow_low)},
        {"plate_bow_high_m", plain(summary.plate_bow_high)},
        {"plate_bow_time_s", plain(summary.plate_bow_time)},
    };
    add_bands(
        entries,
        {"plate_minutes_warm", "plate_minutes_simmer", "plate_minutes_fry", "plate_minutes_sear"},
        summary.plate_best_ring);
    add_bands(entries,
              {"plate_pot_minutes_warm", "plate_pot_minutes_simmer", "plate_pot_minutes_fry",
               "plate_pot_minutes_sear"},
              summary.plate_pot);
    const SummaryEntry rest[] = {
        {"barrel_top_max_c", celsius(summary.barrel_top_max)},
        {"barrel_foot_max_c", celsius(summary.barrel_foot_max)},
        {"riser_gas_max_c", to_celsius(summary.riser_gas_max)},
        {"exit_gas_max_c", to_celsius(summary.exit_gas_max)},
        {"exit_gas_mean_c", celsius(summary.exit_gas_mean)},
        {"flue_top_max_c", to_celsius(summary.flue_top_max)},
        {"flue_wet_s", plain(summary.flue_wet)},
        {"flue_wet_last_s", plain(summary.flue_wet_last)},
        {"wood_burned_kg", summary.wood_burned},
        {"ash_left_kg", summary.ash_left},
        {"heat_released_mj", to_megajoules(summary.heat_released)},
        {"heat_to_room_mj", to_megajoules(summary.heat_to_room)},
        {"heat_lost_outdoors_mj", to_megajoules(summary.heat_lost_outdoors)},
        {"heat_stored_mj", to_megajoules(summary.heat_stored)},
        {"heat_up_flue_mj", to_megajoules(summary.heat_up_flue)},
        {"heat_up_flue_latent_mj", to_megajoules(summary.heat_up_flue_latent)},
        {"heat_up_flue_unburnt_mj", to_megajoules(summary.heat_up_flue_unburnt)},
        {"heat_from_room_air_mj", to_megajoules(summary.heat_from_room_air)},
        {"heat_with_smoke_mj", to_megajoules(summary.heat_with_smoke)},
        {"room_warmest_c", celsius(summary.room_warmest)},
        {"room_warmest_time_s", plain(summary.room_warmest_time)},
        {"room_demand_mj", to_megajoules(summary.room_demand)},
        {"energy_residual", summary.energy_residual},
        {"mass_residual", summary.mass_residual},
        {"element_residual", summary.element_residual},
        {"steps", summary.steps},
        {"rhs_evaluations", summary.rhs_evaluations},
        {"wall_clock_s", summary.wall_clock},
    };
    entries.insert(entries.end(), std::begin(rest), std::end(rest));
    return entries;
}

}  // namespace drawwell
