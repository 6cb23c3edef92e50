#include "models/exchange.h"

#include <cmath>

#include "models/build_network.h"
#include "solver/constants.h"

namespace drawwell {
double flow_at_unit_froude(double cold, double hot, double area) {
    if (!(cold > hot)) return 0;
    const double diameter = std::sqrt(4 * area / constants::pi);
    return cold * area * std::sqrt(constants::gravity * diameter * (cold - hot) / cold);
}

ExchangeOnset exchange_onset(const Stove& stove, const BuiltStove& built, const March& march) {
    if (!stove.feed) return {};
    const std::span<const double> settings = march.surroundings().settings;
    const double area = settings[*built.layout.feed_free_area] *
                        (built.layout.feed_open ? settings[*built.layout.feed_open] : 1);
    const GasState& gas = march.junction_gas(built.layout.hearth);
    const double air_density =
        built.gas->mixture(dry_air()).density(stove.site.room, stove.site.pressure);
    const double gas_density =
        built.gas->mixture(gas.mass_fraction)
            .density(built.network.gas_temperature(gas), stove.site.pressure);
    const double at_one = flow_at_unit_froude(air_density, gas_density, area);
    return {early_froude * at_one, late_froude * at_one};
}

}  // namespace drawwell
