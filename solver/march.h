#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "solver/network.h"
#include "solver/topology.h"

namespace drawwell {

/// The gas everywhere for given flows, walls and fuel.
///
/// There is no fixed order: a junction's gas is worked out when someone asks for it, by asking the
/// passages that flow into it, whichever they are at these flows. Where gas runs in a circle the
/// junction is taken as it was and the round is repeated until it stands still. What a fire gives
/// off is known once its junction is, and swells the flow of all that lies on from there.
class March {
  public:
    March(const Network& network, const Topology& topology);

    /// What is held while flows are sought.
    struct Conditions {
        double time = 0;                            // [s]
        std::span<const double> solid_temperature;  // [K]
        std::span<const double> fuel;
    };

    /// Starts anew with these inlet flows and emissions [kg/s]; nothing is worked out yet. The
    /// emissions are a guess, which counts only where gas flows back from a fire's way out.
    void begin(const Conditions& conditions, std::span<const double> inlet_flow,
               std::span<const double> emission);

    /// [Pa] by which the gas is driven round a loop over what it loses; works out what it needs.
    double imbalance(std::size_t loop);
    /// Works out every passage; repeats while gas runs in circles.
    void complete();

    double mass_flow(std::size_t passage) const { return flow_[passage]; }
    const Crossing& crossing(std::size_t passage) const { return crossing_[passage]; }
    const GasState& junction_gas(JunctionId id) const { return gas_[index(id)]; }
    /// Emission [kg/s] that a fire site gave.
    double emitted(std::size_t site) const { return emitted_[site]; }
    /// [kg/s] by which the flows hold other emissions than the fires gave: nothing unless gas flows
    /// back from a fire's way out.
    double unsettled() const;
    const std::vector<Arriving>& arrived() const { return arrived_; }
    std::span<const GasCell> cells() const { return cells_; }
    std::span<const double> conductance() const { return conductance_; }
    std::span<const double> given() const { return given_; }
    /// What stands round the network and is set in it at the time of the last `begin`.
    const Surroundings& surroundings() const { return around_; }
    /// Passages in the order they were worked out: upstream first.
    const std::vector<std::size_t>& order() const { return order_; }

  private:
    enum class Progress : unsigned char { none, under_way, done };
    const GasState& gas_of(std::size_t junction);
    const Crossing& cross(std::size_t passage);
    void mix(std::size_t junction);
    void carry_on(std::size_t site);
    void look_around(double time);

    const Network& network_;
    const Topology& topology_;
    std::vector<std::vector<std::size_t>> at_junction_;  // passages that end there
    std::vector<std::size_t> site_of_;                   // fire site of a junction, or npos

    GasState still_air_;  // what a junction holds that nothing flows into
    Conditions conditions_;
    Surroundings around_;
    double around_at_;  // [s] the time they are of
    std::vector<double> flow_, emitted_, carried_, conductance_, given_;
    std::vector<GasState> gas_;
    std::vector<Crossing> crossing_;
    std::vector<Arriving> arrived_;
    std::vector<GasCell> cells_;
    std::vector<Progress> junction_progress_, passage_progress_;
    std::vector<std::size_t> order_;
    bool circle_ = false;
};

}  // namespace drawwell
