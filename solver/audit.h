#pragma once

#include <array>
#include <span>
#include <vector>

#include "solver/heat_balance.h"

namespace drawwell {

/// Keeps the books of a burn, apart from the integration: what crossed the bounds is integrated
/// by its own quadrature (trapezia, bent as the steps on either side tell), what is stored is the
/// difference of end and start.
class Audit {
  public:
    /// Totals since the first `open`.
    struct Totals {
        std::vector<double> outside;            // [J] through each outside face
        double held = 0;                        // [J] into walls held at their temperature
        std::vector<double> boundary_heat;      // [J] enthalpy out by each boundary junction
        std::vector<Composition> boundary_gas;  // [kg] out likewise
        double extra = 0;                       // [J] manufactured heat in
        double stored = 0;                      // [J] gained by the solids that are not held
        double fuel_used = 0;                   // [J] lost by the fuel, loads apart
        std::array<double, 4> fuel_elements{};  // [kg] lost by the fuel: C, H, O, N
    };

    explicit Audit(const Network& network);

    /// Begins a stretch without jumps at this state; `balance` holds its fluxes.
    void open(double time, std::span<const double> state, const HeatBalance& balance);
    /// An accepted step of the stretch ended here.
    void step(double time, const HeatBalance& balance);
    /// Ends the stretch at this state.
    void close(std::span<const double> state);

    const Totals& totals() const { return totals_; }
    /// What does not close, as a share of `scale` [J].
    double energy_residual(double scale) const;
    /// Mass [kg] out less in, less what the fuel lost (`fuel_mass`), as a share of all that left.
    double mass_residual(double fuel_mass) const;

  private:
    void gather(const HeatBalance& balance, std::vector<double>& values) const;
    void add(const std::vector<double>& integral);
    /// Adds what crossed the bounds between a remembered step and the next.
    void add_interval(std::size_t from, bool bend_before, bool bend_after);

    const Network& network_;
    Totals totals_;
    double stored_at_start_ = 0, fuel_at_start_ = 0;
    std::array<double, 4> elements_at_start_{};
    std::array<double, 4> time_{};  // the last steps, latest last
    std::array<std::vector<double>, 4> value_;
    int known_ = 0;
    double gas_out_ = 0;  // [kg] that left, by whichever end
};

}  // namespace drawwell
