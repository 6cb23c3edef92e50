#include "cli/report/answer_infos.h"

#include <algorithm>

#include "cli/report/fitting_text.h"
#include "models/fittings/fittings.h"

namespace drawwell {
namespace {

const std::vector<AnswerInfo>& infos() {
    static const std::vector<AnswerInfo> all = {
        {"draws", "yes/no",
         "the feed takes in air, net, from five minutes after lighting until the fire is as good "
         "as out (a fiftieth of its peak); none: too short to judge"},
        {"reserve_draw_min_pa", "Pa",
         "spare draw at its weakest in that time: the short push from the flue's top that would "
         "just turn it"},
        {"reserve_draw_min_time_s", "s", "when that is, after lighting"},
        {"reserve_suction_min_pa", "Pa", "the same against suction in the room, as of a fan"},
        {"sustained_push_min_pa", "Pa", "the same against a push that lasts, walls following"},
        {"exchange_draw_min_early_pa", "Pa",
         "push from which smoke may trickle out of the feed past the air coming in, least"},
        {"exchange_draw_min_late_pa", "Pa", "push from which it surely does, least"},
        {"draw_limit", "word",
         "what gives way first at the weakest moment: short_push, lasting_push or exchange (smoke "
         "past the air)"},
        {"gust_push_max_pa", "Pa", "what the gusts told push into the flue's top at most"},
        {"gust_margin_min_pa", "Pa",
         "spare draw left over the gusts at the least; below 0: they "
         "turn it"},
        {"no_fire_column_pa", "Pa",
         "what the gas does by itself before lighting: up is more than 0"},
        {"before_lighting", "word", "the same in words: falls, stands or rises"},
        {"priming_pa", "Pa", "push it takes before lighting to turn gas that falls"},
        {"priming_kindling_s", "s", "how long the kindling takes to turn it; none: it does not"},
        {"feed_suction_min_pa", "Pa", "suction at the feed's foot at its weakest"},
        {"smoke_back_s", "s", "for how long gas leaves by the feed, from lighting on"},
        {"smoke_back_first_s", "s", "when it first does"},
        {"air_ratio_mean", "", "air taken in over what the wood needs, while it burns well"},
        {"air_flow_mean_kg_s", "kg/s", "air into feed and side air, mean while it burns well"},
        {"plate_centre_max_c", "°C", "plate's centre at its hottest"},
        {"plate_centre_max_time_s", "s", "when that is"},
        {"plate_rim_max_c", "°C", "plate's rim at its hottest"},
        {"plate_time_to_175c_s", "s", "until the best ring fries (175 °C)"},
        {"plate_best_ring_radius_m", "m", "radius of the ring that fries longest"},
        {"plate_bow_low_m", "m", "plate's deepest bow by heat, where its rim can slide"},
        {"plate_bow_high_m", "m", "the same where its rim can't"},
        {"plate_bow_time_s", "s", "when that is"},
        {"plate_minutes_warm", "min", "best ring at 60 to 120 °C"},
        {"plate_minutes_simmer", "min", "best ring at 120 to 175 °C"},
        {"plate_minutes_fry", "min", "best ring at 175 to 230 °C"},
        {"plate_minutes_sear", "min", "best ring over 230 °C"},
        {"plate_pot_minutes_warm", "min", "plate under a pot of 200 mm at 60 to 120 °C"},
        {"plate_pot_minutes_simmer", "min", "the same at 120 to 175 °C"},
        {"plate_pot_minutes_fry", "min", "the same at 175 to 230 °C"},
        {"plate_pot_minutes_sear", "min", "the same over 230 °C"},
        {"barrel_top_max_c", "°C", "barrel at its top, hottest"},
        {"barrel_foot_max_c", "°C", "barrel at its foot, hottest"},
        {"riser_gas_max_c", "°C", "gas in the riser, hottest"},
        {"exit_gas_max_c", "°C", "gas at the flue outlet (collar), hottest"},
        {"exit_gas_mean_c", "°C", "gas there, mean while it burns well"},
        {"flue_top_max_c", "°C", "gas at the flue's top (terminal), hottest"},
        {"flue_wet_s", "s", "for how long some flue wall is colder than the gas's dew point"},
        {"flue_wet_last_s", "s", "when it last is"},
        {"wood_burned_kg", "kg", "dry wood that burned"},
        {"ash_left_kg", "kg", "ash of it"},
        {"heat_released_mj", "MJ",
         "heat the wood gave, its steam's with it (higher heating value)"},
        {"heat_to_room_mj", "MJ", "heat from every face in the room"},
        {"heat_lost_outdoors_mj", "MJ", "heat from every face outdoors"},
        {"heat_stored_mj", "MJ", "heat still in the stove at the end"},
        {"heat_up_flue_mj", "MJ", "heat up the flue"},
        {"heat_up_flue_latent_mj", "MJ", "of that as steam"},
        {"heat_up_flue_unburnt_mj", "MJ", "of that unburnt"},
        {"heat_from_room_air_mj", "MJ", "heat brought in by room air warmer than outdoors"},
        {"heat_with_smoke_mj", "MJ", "heat out of the feed, in smoke"},
        {"room_warmest_c", "°C", "room that the stove alone heats, warmest"},
        {"room_warmest_time_s", "s", "when that is"},
        {"room_demand_mj", "MJ", "what the room lost meanwhile (site.room_loss)"},
        {"energy_residual", "", "by what share the books miss in heat (residual)"},
        {"mass_residual", "", "the same in gas"},
        {"element_residual", "", "the same in carbon, hydrogen, oxygen or nitrogen, the worst"},
        {"steps", "", "steps the solver took"},
        {"rhs_evaluations", "", "evaluations it took for them"},
        {"wall_clock_s", "s", "what solving took; in --json only"}};
    return all;
}

/// By the ending of a fitting's answer (`fitting_figure`).
std::string unit_of(std::string_view si_unit) {
    if (si_unit == "K") return "°C";
    if (si_unit == "J") return "MJ";
    return si_unit == "1" ? "" : std::string(si_unit);
}

}  // namespace

std::span<const AnswerInfo> burn_answers() {
    return infos();
}

std::vector<AnswerInfo> fitting_answer_infos() {
    std::vector<AnswerInfo> all;
    for (const FittingAnswer& answer : answers_of_any_fitting()) {
        const std::string_view label = answer.label;
        all.push_back(
            {answer.fitting + "/" + fitting_figure(answer).first, unit_of(answer.unit),
             std::string(label.substr(std::min(label.find_first_not_of(' '), label.size())))});
    }
    return all;
}

}  // namespace drawwell
