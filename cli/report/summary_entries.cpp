#include "cli/report/summary_entries.h"

#include <optional>
#include <type_traits>

#include "cli/read/units.h"

namespace drawwell {
namespace {

/// From SI to the unit at the key's end, and back.
struct Change {
    double (*to)(double);
    double (*from)(double);
};

double same(double value) {
    return value;
}

constexpr Change as_it_is{same, same}, celsius{to_celsius, from_celsius},
    minutes{to_minutes, from_minutes}, megajoules{to_megajoules, from_megajoules};

/// Time in a band of one of the plate's surfaces.
struct Band {
    std::optional<CookingTime> Summary::*surface;
    double CookingTime::*band;
};

/// A figure's key and where a summary keeps it.
struct Entry {
    std::string_view key;
    std::variant<std::optional<bool> Summary::*, std::size_t Summary::*, double Summary::*,
                 std::optional<double> Summary::*, std::optional<Limit> Summary::*, Band,
                 double ColdStart::*, std::optional<double> ColdStart::*, Leaning ColdStart::*>
        home;
    Change change = as_it_is;
};

constexpr std::array all{
    Entry{"draws", &Summary::draws},
    Entry{"reserve_draw_min_pa", &Summary::reserve_draw_min},
    Entry{"reserve_draw_min_time_s", &Summary::reserve_draw_min_time},
    Entry{"reserve_suction_min_pa", &Summary::reserve_suction_min},
    Entry{"sustained_push_min_pa", &Summary::sustained_push_min},
    Entry{"exchange_draw_min_early_pa", &Summary::exchange_draw_min_early},
    Entry{"exchange_draw_min_late_pa", &Summary::exchange_draw_min_late},
    Entry{"draw_limit", &Summary::draw_limit},
    Entry{"gust_push_max_pa", &Summary::gust_push_max},
    Entry{"gust_margin_min_pa", &Summary::gust_margin_min},
    Entry{"no_fire_column_pa", &ColdStart::column},
    Entry{"before_lighting", &ColdStart::leaning},
    Entry{"priming_pa", &ColdStart::priming},
    Entry{"priming_kindling_s", &ColdStart::kindling},
    Entry{"feed_suction_min_pa", &Summary::feed_suction_min},
    Entry{"smoke_back_s", &Summary::smoke_back},
    Entry{"smoke_back_first_s", &Summary::smoke_back_first},
    Entry{"air_ratio_mean", &Summary::air_ratio_mean},
    Entry{"air_flow_mean_kg_s", &Summary::air_flow_mean},
    Entry{"plate_centre_max_c", &Summary::plate_centre_max, celsius},
    Entry{"plate_centre_max_time_s", &Summary::plate_centre_max_time},
    Entry{"plate_rim_max_c", &Summary::plate_rim_max, celsius},
    Entry{"plate_time_to_175c_s", &Summary::plate_time_to_fry},
    Entry{"plate_best_ring_radius_m", &Summary::plate_best_ring_radius},
    Entry{"plate_bow_low_m", &Summary::plate_bow_low},
    Entry{"plate_bow_high_m", &Summary::plate_bow_high},
    Entry{"plate_bow_time_s", &Summary::plate_bow_time},
    Entry{"plate_minutes_warm", Band{&Summary::plate_best_ring, &CookingTime::warm}, minutes},
    Entry{"plate_minutes_simmer", Band{&Summary::plate_best_ring, &CookingTime::simmer}, minutes},
    Entry{"plate_minutes_fry", Band{&Summary::plate_best_ring, &CookingTime::fry}, minutes},
    Entry{"plate_minutes_sear", Band{&Summary::plate_best_ring, &CookingTime::sear}, minutes},
    Entry{"plate_pot_minutes_warm", Band{&Summary::plate_pot, &CookingTime::warm}, minutes},
    Entry{"plate_pot_minutes_simmer", Band{&Summary::plate_pot, &CookingTime::simmer}, minutes},
    Entry{"plate_pot_minutes_fry", Band{&Summary::plate_pot, &CookingTime::fry}, minutes},
    Entry{"plate_pot_minutes_sear", Band{&Summary::plate_pot, &CookingTime::sear}, minutes},
    Entry{"barrel_top_max_c", &Summary::barrel_top_max, celsius},
    Entry{"barrel_foot_max_c", &Summary::barrel_foot_max, celsius},
    Entry{"riser_gas_max_c", &Summary::riser_gas_max, celsius},
    Entry{"exit_gas_max_c", &Summary::exit_gas_max, celsius},
    Entry{"exit_gas_mean_c", &Summary::exit_gas_mean, celsius},
    Entry{"flue_top_max_c", &Summary::flue_top_max, celsius},
    Entry{"flue_wet_s", &Summary::flue_wet},
    Entry{"flue_wet_last_s", &Summary::flue_wet_last},
    Entry{"wood_burned_kg", &Summary::wood_burned},
    Entry{"ash_left_kg", &Summary::ash_left},
    Entry{"heat_released_mj", &Summary::heat_released, megajoules},
    Entry{"heat_to_room_mj", &Summary::heat_to_room, megajoules},
    Entry{"heat_lost_outdoors_mj", &Summary::heat_lost_outdoors, megajoules},
    Entry{"heat_stored_mj", &Summary::heat_stored, megajoules},
    Entry{"heat_up_flue_mj", &Summary::heat_up_flue, megajoules},
    Entry{"heat_up_flue_latent_mj", &Summary::heat_up_flue_latent, megajoules},
    Entry{"heat_up_flue_unburnt_mj", &Summary::heat_up_flue_unburnt, megajoules},
    Entry{"heat_from_room_air_mj", &Summary::heat_from_room_air, megajoules},
    Entry{"heat_with_smoke_mj", &Summary::heat_with_smoke, megajoules},
    Entry{"room_warmest_c", &Summary::room_warmest, celsius},
    Entry{"room_warmest_time_s", &Summary::room_warmest_time},
    Entry{"room_demand_mj", &Summary::room_demand, megajoules},
    Entry{"energy_residual", &Summary::energy_residual},
    Entry{"mass_residual", &Summary::mass_residual},
    Entry{"element_residual", &Summary::element_residual},
    Entry{"steps", &Summary::steps},
    Entry{"rhs_evaluations", &Summary::rhs_evaluations},
    Entry{"wall_clock_s", &Summary::wall_clock}};

using Value = decltype(SummaryEntry::value);

/// A summary's value at each kind of home.
struct Given {
    const Summary& summary;
    const Change& change;

    Value figure(const std::optional<double>& value) const {
        return value ? Value(change.to(*value)) : Value();
    }
    Value operator()(std::optional<bool> Summary::*home) const {
        const std::optional<bool>& holds = summary.*home;
        return holds ? Value(*holds) : Value();
    }
    Value operator()(std::size_t Summary::*home) const { return summary.*home; }
    Value operator()(double Summary::*home) const { return change.to(summary.*home); }
    Value operator()(std::optional<double> Summary::*home) const { return figure(summary.*home); }
    Value operator()(std::optional<Limit> Summary::*home) const {
        const std::optional<Limit>& limit = summary.*home;
        return limit ? Value(limit_words[static_cast<std::size_t>(*limit)]) : Value();
    }
    Value operator()(const Band& home) const {
        const std::optional<CookingTime>& time = summary.*home.surface;
        return time ? Value(change.to((*time).*home.band)) : Value();
    }
    Value operator()(double ColdStart::*home) const {
        return summary.cold_start ? Value((*summary.cold_start).*home) : Value();
    }
    Value operator()(std::optional<double> ColdStart::*home) const {
        return summary.cold_start ? figure((*summary.cold_start).*home) : Value();
    }
    Value operator()(Leaning ColdStart::*home) const {
        if (!summary.cold_start) return {};
        return leaning_words[static_cast<std::size_t>((*summary.cold_start).*home)];
    }
};

/// Which of the words it is; none: no answer's.
template <class Choice, std::size_t count>
std::optional<Choice> choice_of(const std::string& word,
                                const std::array<std::string_view, count>& words) {
    for (std::size_t i = 0; i < count; ++i)
        if (words[i] == word) return static_cast<Choice>(i);
    return {};
}

template <class T>
T& made(std::optional<T>& part) {
    return part ? *part : part.emplace();
}

/// Puts a number at each kind of home.
struct TakenNumber {
    Summary& summary;
    const Change& change;
    double number;

    void operator()(std::optional<bool> Summary::*home) const { summary.*home = number != 0; }
    void operator()(std::size_t Summary::*home) const {
        summary.*home = static_cast<std::size_t>(number);
    }
    void operator()(double Summary::*home) const { summary.*home = change.from(number); }
    void operator()(std::optional<double> Summary::*home) const {
        summary.*home = change.from(number);
    }
    void operator()(const Band& home) const {
        made(summary.*home.surface).*home.band = change.from(number);
    }
    void operator()(double ColdStart::*home) const { made(summary.cold_start).*home = number; }
    void operator()(std::optional<double> ColdStart::*home) const {
        made(summary.cold_start).*home = number;
    }
    void operator()(std::optional<Limit> Summary::*) const {}  // a word
    void operator()(Leaning ColdStart::*) const {}
};

}  // namespace

std::vector<SummaryEntry> summary_entries(const Summary& summary) {
    std::vector<SummaryEntry> entries;
    entries.reserve(all.size());
    for (const Entry& entry : all)
        entries.push_back({entry.key, std::visit(Given{summary, entry.change}, entry.home)});
    return entries;
}

Summary summary_from(const SummaryFigures& figures) {
    Summary summary;
    std::optional<Leaning> leaning;
    for (const Entry& entry : all) {
        const std::string key(entry.key);
        if (const auto number = figures.numbers.find(key); number != figures.numbers.end())
            std::visit(TakenNumber{summary, entry.change, number->second}, entry.home);
        const auto word = figures.words.find(key);
        if (word == figures.words.end()) continue;
        if (std::holds_alternative<Leaning ColdStart::*>(entry.home))
            leaning = choice_of<Leaning>(word->second, leaning_words);
        if (const auto* limit = std::get_if<std::optional<Limit> Summary::*>(&entry.home))
            summary.*(*limit) = choice_of<Limit>(word->second, limit_words);
    }
    // What stood before lighting is only told whole.
    if (leaning)
        made(summary.cold_start).leaning = *leaning;
    else
        summary.cold_start.reset();
    return summary;
}

}  // namespace drawwell
