#pragma once

#include <memory>
#include <span>
#include <vector>

#include "solver/flow.h"
#include "solver/network.h"
#include "solver/structured_matrix.h"

namespace drawwell {

/// Everything that crosses the stove's outer bounds at an instant.
struct Fluxes {
    std::vector<double> outside;        // [W] leaving by each outside face
    double held = 0;                    // [W] taken up by solids held at their temperature
    std::vector<double> boundary_heat;  // [W] enthalpy leaving by each junction that is a boundary
    std::vector<Composition> boundary_gas;  // [kg/s] leaving likewise
    double extra = 0;                       // [W] manufactured heat put in
};

/// The right-hand side of the whole stove, dy/dt = f(t, y), and its approximate Jacobian.
///
/// The state: enthalpy of every solid [J], then the fuel. Gas is quasi-steady. The function is
/// pure given the committed flow branch. The Jacobian holds flow, gas properties and film
/// coefficients as they are, which a W-method allows without loss of order.
class HeatBalance {
  public:
    HeatBalance(const Network& network, const Topology& topology);

    /// Rates of change; leaves flow, fluxes and temperatures at this state.
    void rates(double time, std::span<const double> state, std::span<double> rate);
    /// The same where x [kg/s] is made to enter by the first inlet. Returns the push [Pa] that
    /// takes.
    double rates_at_flow(double time, std::span<const double> state, double inlet_flow,
                         std::span<double> rate);
    /// Takes the Jacobian at the state last given to `rates`.
    void linearise();
    /// Factors 1/(gamma h) - J at that state.
    void factor(double gamma_step);
    /// Heat capacity [J/K] of each solid where `linearise` was last called; without measure where
    /// held.
    std::span<const double> heat_capacity() const { return heat_capacity_; }
    /// Solves (1/(gamma h) - J) x = b in place.
    void solve(std::span<double> x) const;

    /// Prepares temperatures and conditions without seeking the flow.
    Flow::Conditions conditions(double time, std::span<const double> state);
    Flow& flow() { return flow_; }
    const Flow& flow() const { return flow_; }
    /// What was last asked for: its time [s], temperatures [K], heat.
    double time() const { return time_; }
    std::span<const double> temperature() const { return temperature_; }
    /// Heat [W] that each solid took up, held ones too.
    std::span<const double> heat() const { return heat_; }
    const Fluxes& fluxes() const { return fluxes_; }
    std::size_t evaluations() const { return evaluations_; }
    const Network& network() const { return network_; }

  private:
    void sum_up(std::span<double> rate);
    double conductance(const ConductionLink& link) const;
    void conduct(std::span<double> heat);
    void radiate(std::span<double> heat);
    void meet_gas(std::span<double> heat) const;
    void lose_outside(std::span<double> heat);
    void leave_by_gas();
    void couple_by_gas();
    void couple_by_radiation();
    void couple_by_fire();

    const Network& network_;
    Flow flow_;
    std::vector<double> temperature_, conductivity_, patch_, heat_;
    std::vector<double> fire_heat_;  // [W] that the fire gave each solid
    std::vector<std::vector<double>> face_temperature_, face_flux_;
    std::vector<double> heat_capacity_;  // [J/K] of each solid at the linearised state
    std::vector<double> fuel_slope_;
    double gamma_step_ = 0;
    std::span<const double> fuel_;
    double time_ = 0;
    Fluxes fluxes_;
    std::size_t evaluations_ = 0;
    std::unique_ptr<StructuredMatrix> matrix_;
};

}  // namespace drawwell
