#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "models/cold_start.h"
#include "models/fittings/reading.h"
#include "models/spare_draw.h"
#include "models/stretched.h"

namespace drawwell {

/// Minutes a surface spent in each cooking band, here in seconds.
struct CookingTime {
    double warm = 0;    // [s] 60-120 degC
    double simmer = 0;  // [s] 120-175
    double fry = 0;     // [s] 175-230
    double sear = 0;    // [s] over 230
};

/// The answers of a burn, SI. What never happened is empty; what the stove lacks is empty.
struct Summary {
    std::optional<bool> draws;                    // none: it burned too short to judge
    std::optional<double> reserve_draw_min;       // [Pa]
    std::optional<double> reserve_draw_min_time;  // [s]
    std::optional<double> reserve_suction_min;    // [Pa] by suction in the room
    std::optional<double> sustained_push_min;     // [Pa] a push that lasts, walls following
    /// [Pa] before smoke trickles out of the feed beside the air coming in: it may, it surely does.
    std::optional<double> exchange_draw_min_early, exchange_draw_min_late;
    std::optional<Limit> draw_limit;         // what gives way first, at the weakest moment
    std::optional<double> gust_push_max;     // [Pa] of the gusts given; none: no gusts
    std::optional<double> gust_margin_min;   // [Pa] of spare draw over what the gusts push
    std::optional<ColdStart> cold_start;     // none: it starts from an earlier burn
    std::optional<double> feed_suction_min;  // [Pa] static, at the feed's foot, same period
    double smoke_back = 0;                   // [s] in which gas left by the feed
    std::optional<double> smoke_back_first;  // [s] when it first did
    std::optional<double> air_ratio_mean;    // [-]
    double air_flow_mean = 0;                // [kg/s] into feed and side air while it burns

    std::optional<double> plate_centre_max, plate_rim_max;  // [K]
    std::optional<double> plate_centre_max_time;            // [s]
    std::optional<double> plate_time_to_fry;                // [s] best ring first at 175 degC
    std::optional<CookingTime> plate_best_ring, plate_pot;  // pot: mean over 200 mm at the centre
    std::optional<double> plate_best_ring_radius;           // [m]
    /// [m] The plate's deepest bow, middle over rim (negative: dished), as a band, and when [s];
    /// none: its metal's expansion is not known.
    std::optional<double> plate_bow_low, plate_bow_high, plate_bow_time;
    std::optional<double> plate_hole;                       // [m] edge of a hole a pot fills
    std::optional<double> barrel_top_max, barrel_foot_max;  // [K]
    double riser_gas_max = 0;                               // [K]
    double exit_gas_max = 0;                                // [K] at the flue outlet
    std::optional<double> exit_gas_mean;                    // [K] there, while it burns
    double flue_top_max = 0;                                // [K] gas at the flue's top
    /// [s] in which gas goes up past some flue wall colder than its dew point, and when it last
    /// did; none without a flue.
    std::optional<double> flue_wet, flue_wet_last;

    double heat_released = 0;         // [J] higher heating value of what left the wood
    double heat_to_room = 0;          // [J] from every outer face in the room
    double heat_lost_outdoors = 0;    // [J] from every outer face outdoors
    double heat_stored = 0;           // [J] left in the walls at the end
    double heat_up_flue = 0;          // [J] sensible, latent and unburnt, over outdoors
    double heat_up_flue_latent = 0;   // [J]
    double heat_up_flue_unburnt = 0;  // [J]
    double heat_from_room_air = 0;    // [J] brought in by air warmer than outdoors
    double heat_with_smoke = 0;       // [J] carried into the room by gas that left by an inlet
    double wood_burned = 0;           // [kg] dry
    double ash_left = 0;              // [kg] of that wood
    std::optional<double> room_warmest, room_warmest_time;  // [K], [s]; none: no site.room_volume
    double room_demand = 0;  // [J] the room lost meanwhile, from site.room_loss

    double energy_residual = 0;   // [-] of heat released, or given by held walls if that is more
    double mass_residual = 0;     // [-] of gas that left
    double element_residual = 0;  // [-] worst of C, H, O, N
    std::size_t steps = 0, rhs_evaluations = 0;
    double wall_clock = 0;                // [s] solving only, reserve included
    std::vector<std::string> remarks;     // loads that waited
    std::vector<FittingAnswer> fittings;  // in the order of their kinds
    std::vector<Stretched> stretched;     // laws used outside their ranges, heaviest first
};

}  // namespace drawwell
