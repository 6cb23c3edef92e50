#include "models/stops.h"

#include <set>

namespace drawwell {

std::vector<double> stops_of(const Stove& stove, const BuiltStove& built) {
    std::set<double> stops;
    for (const auto& load : built.load_times) stops.insert(load.time);
    for (const auto& table : {stove.heat_source, stove.burn_rate})
        if (table) stops.insert(table->x().begin(), table->x().end());
    const Site& site = stove.site;
    for (const Table* table : {&site.outdoor, &site.wind, &site.gust, &site.room_suction})
        stops.insert(table->x().begin(), table->x().end());
    const Schedule& schedule = stove.schedule;
    for (const Steps* steps : {&schedule.damper, &schedule.bypass, &schedule.port,
                               &schedule.side_air, &schedule.feed_cover, &schedule.plate_cover})
        stops.insert(steps->time().begin(), steps->time().end());
    for (const Fitting& fitting : stove.fittings)
        std::visit(
            [&](const auto& part) {
                if constexpr (requires { part.there(); }) {
                    const Steps there = part.there();
                    stops.insert(there.time().begin(), there.time().end());
                }
            },
            fitting);
    return {stops.begin(), stops.end()};
}

}  // namespace drawwell
