#pragma once

#include <cstddef>
#include <functional>
#include <span>
#include <vector>

#include "solver/march.h"

namespace drawwell {

/// The largest sustained push that the flow withstands, everything but the gas held as it is.
struct ReserveDraw {
    double pressure = 0;  // [Pa]
    double flow = 0;      // [kg/s] through the first inlet at that push
};

/// Finds the flows that balance the loops, on the branch that the present flow belongs to.
///
/// The gas has inertia though the model neglects it: out of balance, the flow grows while the
/// drive exceeds the losses and falls otherwise. So the state sought is the first one met when
/// walking from the present flow in the direction of the imbalance. Near by it is found by
/// Broyden's method on all loops; otherwise by walking and bracketing along p_adv(x).
class Flow {
  public:
    using Conditions = March::Conditions;

    Flow(const Network& network, const Topology& topology);

    /// Works out the steady state met first from the committed flow, under a push [Pa] where the
    /// first loop leaves. SolverError if there is none.
    void solve(const Conditions& conditions, double push = 0);
    /// Whether the last state found is so far from the committed flow that a branch was left.
    bool jumped() const;
    /// Whether some flow through the bounds changed its direction since the committed state.
    bool turned() const;
    /// The last state found becomes the present one.
    void commit();
    /// Loops that are out by less than this [Pa] count as balanced; 1e-4 at first, a
    /// hundred-thousandth of a common draw.
    void balance_within(double pressure) { balanced_ = pressure; }
    /// Takes these flows [kg/s], one an inlet, for the present ones: those of an earlier run.
    void begin_from(std::span<const double> inlet);
    /// Turns a committed reverse flow into this forward one [kg/s] if the draw then carries it on:
    /// what hot gas under cold does by itself. Whether it did.
    bool overturn(const Conditions& conditions, double forward);

    /// p_adv(x) [Pa]: the push that balances all loops when x [kg/s] enters by the first inlet.
    /// `share`: what each loop feels of it [-], the first not zero.
    double adverse_pressure(const Conditions& conditions, double inlet_flow,
                            std::span<const double> share);
    /// The same for a gust where the first loop leaves.
    double adverse_pressure(const Conditions& conditions, double inlet_flow);
    /// From the flow last found down to the spill point, where the first inlet takes in nothing.
    ReserveDraw reserve(const Conditions& conditions, std::span<const double> share);
    ReserveDraw reserve(const Conditions& conditions);

    double inlet_flow(std::size_t inlet = 0) const { return found_.inlet[inlet]; }
    const March& march() const { return march_; }
    March& march() { return march_; }
    std::size_t marches() const { return marches_; }
    const Topology& topology() const { return topology_; }
    double committed_flow() const { return committed_.inlet[0]; }

  private:
    struct State {
        std::vector<double> inlet;     // [kg/s]
        std::vector<double> emission;  // [kg/s]
        double time = 0;               // [s]
    };
    /// Where the committed flows are heading: on the parabola through them and the two before.
    State expected(double time) const;
    void find(const Conditions& conditions, double push);
    bool solve_near(const Conditions& conditions, double push);
    void solve_by_walking(const Conditions& conditions, double push);
    void begin_march(const Conditions& conditions, const State& state);
    /// Imbalance of every loop at a state [Pa], whose emission becomes what the fires gave.
    void imbalances(const Conditions& conditions, State& state, std::vector<double>& pressure);
    /// d imbalance / d inlet flow about a state whose imbalances are known.
    void find_slopes(const Conditions& conditions, State at, const std::vector<double>& base);
    /// Solves the loops after the first for the other inlets, the first inlet's flow given and the
    /// push whatever balances the first loop; the march is left begun there.
    void balance_others(const Conditions& conditions, State& state, std::span<const double> share);

    const Topology& topology_;
    March march_;
    State committed_, found_, trial_;
    // The parabola by divided differences: pace [kg/s per s] of the last step, which began at the
    // pace's time; bend [kg/s per s2]. Nothing of either after a jump or a stop.
    State pace_, bend_;
    bool pace_known_ = false;
    std::vector<double> slope_;            // [Pa s/kg] row-major, d imbalance / d inlet flow
    std::vector<double> committed_slope_;  // the same, where the present flow was committed
    bool slopes_known_ = false;
    std::vector<double> other_slope_;  // the same of `balance_others`, where it was last asked
    bool other_slopes_known_ = false;
    double top_share_ = 0;    // [-] of the present flow, where the reserve was last found
    double balanced_ = 1e-4;  // [Pa]
    std::size_t marches_ = 0;
};

}  // namespace drawwell
