#include "models/overturn.h"

#include <algorithm>
#include <utility>
#include <vector>

#include "models/build_network.h"
#include "models/exchange.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double least_fire = 1e-6;  // [kg/s] given off by what counts as a fire

/// A duct that rises from a fire.
struct Chimney {
    std::size_t site = 0, passage = 0;
    double area = 0;                // [m2]
    std::vector<std::size_t> away;  // gas cells where the fire's gas goes if it does not rise
};

}  // namespace

std::function<double(const March&)> overturning(const BuiltStove& built) {
    std::vector<Chimney> chimneys;
    const Network& network = built.network;
    const Layout& layout = built.layout;
    for (std::size_t s = 0; s < network.fire_sites.size(); ++s)
        for (std::size_t p = 0; p < network.passages.size(); ++p) {
            if (network.passages[p].from != network.fire_sites[s]) continue;
            const bool up_flue =
                layout.flue_rises && !layout.flue_starts.empty() &&
                std::find(layout.flue.begin(), layout.flue.end(), p) != layout.flue.end() &&
                network.passages[p].from == layout.flue_starts.front().junction;
            if (layout.riser != p && !up_flue) continue;
            Chimney chimney{s, p, layout.riser == p ? layout.riser_area : layout.flue_area, {}};
            for (const Passage& other : network.passages)
                if (other.to == network.fire_sites[s])
                    for (std::size_t c = 0; c < other.law->cell_count(); ++c)
                        chimney.away.push_back(other.first_cell + c);
            chimneys.push_back(std::move(chimney));
        }
    if (chimneys.empty()) return {};
    return [chimneys, sites = network.fire_sites, gas = built.gas, pressure = built.pressure,
            temperature = network.gas_temperature](const March& march) {
        for (const Chimney& chimney : chimneys) {
            const double down = -march.mass_flow(chimney.passage);
            if (!(down > 0) || !(march.emitted(chimney.site) > least_fire)) continue;
            const GasState& fire = march.junction_gas(sites[chimney.site]);
            const GasState& above = march.crossing(chimney.passage).outlet;
            const double cold =
                gas->mixture(above.mass_fraction).density(temperature(above), pressure);
            double flame = temperature(fire);  // the flame's, wherever it is blown to
            for (const std::size_t cell : chimney.away)
                flame = std::max(flame, march.cells()[cell].mean_temperature);
            const double hot = gas->mixture(fire.mass_fraction).density(flame, pressure);
            const double rising = late_froude * flow_at_unit_froude(cold, hot, chimney.area);
            if (down < rising) return rising;
        }
        return 0.0;
    };
}

}  // namespace drawwell
