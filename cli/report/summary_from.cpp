#include "cli/report/summary_from.h"

#include <array>
#include <optional>
#include <string_view>

#include "cli/read/units.h"
#include "cli/report/summary_entries.h"

namespace drawwell {
namespace {

using Figure = std::optional<double>;

class Figures {
  public:
    explicit Figures(const SummaryFigures& figures) : figures_(figures) {}

    Figure plain(const std::string& key) const {
        const auto found = figures_.numbers.find(key);
        return found == figures_.numbers.end() ? Figure() : Figure(found->second);
    }
    Figure kelvin(const std::string& key) const { return changed(key, from_celsius); }
    Figure seconds(const std::string& key) const { return changed(key, from_minutes); }
    double joules(const std::string& key) const {
        return changed(key, from_megajoules).value_or(0);
    }
    double number(const std::string& key) const { return plain(key).value_or(0); }
    std::size_t count(const std::string& key) const {
        return static_cast<std::size_t>(number(key));
    }
    /// Which of the words stands there.
    template <class Choice, std::size_t count>
    std::optional<Choice> word(const std::string& key,
                               const std::array<std::string_view, count>& words) const {
        const auto found = figures_.words.find(key);
        if (found == figures_.words.end()) return {};
        for (std::size_t i = 0; i < count; ++i)
            if (words[i] == found->second) return static_cast<Choice>(i);
        return {};
    }
    std::optional<CookingTime> bands(const std::string& stem) const {
        const Figure warm = seconds(stem + "warm");
        if (!warm) return {};
        return CookingTime{*warm, seconds(stem + "simmer").value_or(0),
                           seconds(stem + "fry").value_or(0), seconds(stem + "sear").value_or(0)};
    }

  private:
    Figure changed(const std::string& key, double (*change)(double)) const {
        const Figure figure = plain(key);
        return figure ? Figure(change(*figure)) : figure;
    }

    const SummaryFigures& figures_;
};

std::optional<ColdStart> cold_start_of(const Figures& figures) {
    const auto leaning = figures.word<Leaning>("before_lighting", leaning_words);
    if (!leaning) return {};
    return ColdStart{figures.number("no_fire_column_pa"), *leaning, figures.number("priming_pa"),
                     figures.plain("priming_kindling_s")};
}

void take_draw(Summary& summary, const Figures& figures) {
    summary.draws = figures.number("draws") != 0;
    summary.reserve_draw_min = figures.plain("reserve_draw_min_pa");
    summary.reserve_draw_min_time = figures.plain("reserve_draw_min_time_s");
    summary.reserve_suction_min = figures.plain("reserve_suction_min_pa");
    summary.sustained_push_min = figures.plain("sustained_push_min_pa");
    summary.exchange_draw_min_early = figures.plain("exchange_draw_min_early_pa");
    summary.exchange_draw_min_late = figures.plain("exchange_draw_min_late_pa");
    summary.draw_limit = figures.word<Limit>("draw_limit", limit_words);
    summary.gust_push_max = figures.plain("gust_push_max_pa");
    summary.gust_margin_min = figures.plain("gust_margin_min_pa");
    summary.cold_start = cold_start_of(figures);
    summary.feed_suction_min = figures.plain("feed_suction_min_pa");
    summary.smoke_back = figures.number("smoke_back_s");
    summary.smoke_back_first = figures.plain("smoke_back_first_s");
    summary.air_ratio_mean = figures.plain("air_ratio_mean");
    summary.air_flow_mean = figures.number("air_flow_mean_kg_s");
}

void take_temperatures(Summary& summary, const Figures& figures) {
    summary.plate_centre_max = figures.kelvin("plate_centre_max_c");
    summary.plate_centre_max_time = figures.plain("plate_centre_max_time_s");
    summary.plate_rim_max = figures.kelvin("plate_rim_max_c");
    summary.plate_time_to_fry = figures.plain("plate_time_to_175c_s");
    summary.plate_best_ring = figures.bands("plate_minutes_");
    summary.plate_pot = figures.bands("plate_pot_minutes_");
    summary.plate_best_ring_radius = figures.plain("plate_best_ring_radius_m");
    summary.plate_bow_low = figures.plain("plate_bow_low_m");
    summary.plate_bow_high = figures.plain("plate_bow_high_m");
    summary.plate_bow_time = figures.plain("plate_bow_time_s");
    summary.barrel_top_max = figures.kelvin("barrel_top_max_c");
    summary.barrel_foot_max = figures.kelvin("barrel_foot_max_c");
    summary.riser_gas_max = figures.kelvin("riser_gas_max_c").value_or(0);
    summary.exit_gas_max = figures.kelvin("exit_gas_max_c").value_or(0);
    summary.exit_gas_mean = figures.kelvin("exit_gas_mean_c");
    summary.flue_top_max = figures.kelvin("flue_top_max_c").value_or(0);
    summary.flue_wet = figures.plain("flue_wet_s");
    summary.flue_wet_last = figures.plain("flue_wet_last_s");
    summary.room_warmest = figures.kelvin("room_warmest_c");
    summary.room_warmest_time = figures.plain("room_warmest_time_s");
}

void take_heat(Summary& summary, const Figures& figures) {
    summary.wood_burned = figures.number("wood_burned_kg");
    summary.ash_left = figures.number("ash_left_kg");
    summary.heat_released = figures.joules("heat_released_mj");
    summary.heat_to_room = figures.joules("heat_to_room_mj");
    summary.heat_lost_outdoors = figures.joules("heat_lost_outdoors_mj");
    summary.heat_stored = figures.joules("heat_stored_mj");
    summary.heat_up_flue = figures.joules("heat_up_flue_mj");
    summary.heat_up_flue_latent = figures.joules("heat_up_flue_latent_mj");
    summary.heat_up_flue_unburnt = figures.joules("heat_up_flue_unburnt_mj");
    summary.heat_from_room_air = figures.joules("heat_from_room_air_mj");
    summary.heat_with_smoke = figures.joules("heat_with_smoke_mj");
    summary.room_demand = figures.joules("room_demand_mj");
}

}  // namespace

Summary summary_from(const SummaryFigures& given) {
    const Figures figures(given);
    Summary summary;
    take_draw(summary, figures);
    take_temperatures(summary, figures);
    take_heat(summary, figures);
    summary.energy_residual = figures.number("energy_residual");
    summary.mass_residual = figures.number("mass_residual");
    summary.element_residual = figures.number("element_residual");
    summary.steps = figures.count("steps");
    summary.rhs_evaluations = figures.count("rhs_evaluations");
    summary.wall_clock = figures.number("wall_clock_s");
    return summary;
}

}  // namespace drawwell
