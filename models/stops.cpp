#include "models/stops.h"

#include <functional>
#include <utility>
#include <variant>

#include "solver/instants.h"

namespace drawwell {
namespace {

using Times = std::vector<double>;

/// Calls `see` with every list of times that a stove holds.
void each_times(Stove& stove, const std::function<void(Times&)>& see) {
    const auto see_table = [&](Table& table) {
        Times times = table.x();
        see(times);
        table = Table(std::move(times), table.y());
    };
    const auto see_steps = [&](Steps& steps) {
        Times times = steps.time();
        see(times);
        steps = Steps(std::move(times), steps.value());
    };
    for (Load& load : stove.loads) see(load.times);
    for (auto* table : {&stove.heat_source, &stove.burn_rate})
        if (*table) see_table(**table);
    Site& site = stove.site;
    for (Table* table : {&site.outdoor, &site.wind, &site.gust, &site.room_suction})
        see_table(*table);
    Schedule& schedule = stove.schedule;
    for (Steps* steps : {&schedule.damper, &schedule.bypass, &schedule.port, &schedule.side_air,
                         &schedule.feed_cover, &schedule.plate_cover})
        see_steps(*steps);
    for (Fitting& fitting : stove.fittings)
        std::visit(
            [&](auto& part) {
                if constexpr (requires { part.put_on; }) {
                    see(part.put_on);
                    see(part.taken_off);
                }
            },
            fitting);
}

}  // namespace

std::vector<double> stops_of(const Stove& stove) {
    Stove seen = stove;
    Times all{0};
    each_times(seen, [&](Times& times) { all.insert(all.end(), times.begin(), times.end()); });
    return distinct_instants(std::move(all));
}

Stove at_common_stops(Stove stove) {
    const Times stops = stops_of(stove);
    each_times(stove, [&](Times& times) {
        for (double& time : times) time = instant_among(stops, time);
    });
    return stove;
}

}  // namespace drawwell
