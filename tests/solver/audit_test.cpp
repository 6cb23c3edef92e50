#include "solver/audit.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/simulate.h"
#include "tests/near.h"
#include "tests/solver/small_network.h"

using namespace drawwell;

namespace {

/// The residual falls with the tolerance of the steps that the quadrature is taken over: 2e-4 at
/// 1e-4, 5e-5 at 1e-5 as measured.
///
/// The books of a quarter of an hour of a small stove, fuel burning at a changing rate.
struct Books {
    explicit Books(Network made, double tolerance = 1e-5)
        : network(std::move(made)),
          topology(find_topology(network)),
          balance(network, topology),
          audit(network) {
        Simulation simulation;
        simulation.end = 900;
        simulation.tolerance = tolerance;
        simulation.stops = {300};
        simulation.sample = [](double, auto, HeatBalance&) { return true; };
        simulate(simulation, balance, audit);
    }
    /// Residual as a share of the heat that the fuel set free.
    double residual() const { return audit.energy_residual(audit.totals().fuel_used); }

    Network network;
    Topology topology;
    HeatBalance balance;
    Audit audit;
};

/// A fire that warms a wall and does not tell.
class SecretFire final : public Fire {
  public:
    explicit SecretFire(double secret) : secret_(secret) {}
    std::size_t state_count() const override { return inner_.state_count(); }
    std::span<const double> state_scale() const override { return inner_.state_scale(); }
    std::size_t site_count() const override { return 1; }
    void set(const View&, std::span<double>) const override {}
    Emission emission(std::size_t site, const View& view, const Arriving& air) const override {
        return inner_.emission(site, view, air);
    }
    void rates(const View& view, std::span<const Arriving> arrived, std::span<const GasCell> gas,
               std::span<double> rate, std::span<double> solid_heat) const override {
        inner_.rates(view, arrived, gas, rate, solid_heat);
        solid_heat[0] += secret_;
    }
    double enthalpy(std::span<const double> fuel) const override { return inner_.enthalpy(fuel); }
    std::array<double, 4> elements(std::span<const double> fuel) const override {
        return inner_.elements(fuel);
    }
    void rate_slopes(const View&, std::span<const Arriving>,
                     std::span<double> slope) const override {
        slope[0] = 0;
    }

  private:
    double secret_;  // [W]
    NitrogenFire inner_{[](double) { return 2e-4; }, 2e7};
};

Network with_secret(double secret) {
    Network network = small_stove();
    network.fire = std::make_unique<SecretFire>(secret);
    return network;
}

/// Audits fluxes that are a known function of time at uneven instants: a held wall's heat.
double integral_of_extra(int steps) {
    Network network = small_stove();
    double now = 0;
    network.extra_heat = [&](double, std::span<double> heat) { heat[0] += std::exp(-now); };
    const Topology topology = find_topology(network);
    HeatBalance balance(network, topology);
    Audit audit(network);
    const auto state = network.initial_state();
    std::vector<double> rate(state.size());
    balance.rates(0, state, rate);
    audit.open(0, state, balance);
    for (int i = 1; i <= steps; ++i) {
        const double share = static_cast<double>(i) / steps;
        now = 2 * share * (0.6 + 0.4 * share);
        balance.rates(0, state, rate);
        audit.step(now, balance);
    }
    audit.close(state);
    return audit.totals().extra;
}

}  // namespace

TEST_SUITE("solver/audit") {
    TEST_CASE("the books of a flowing transient network close") {
        const Books books(small_stove());
        CHECK(books.residual() < 1e-4);
        CHECK(books.audit.mass_residual(books.audit.totals().fuel_elements[3]) < 1e-5);
        // They close on something: every kind of flux takes part.
        const auto& totals = books.audit.totals();
        CHECK(totals.stored > 0.01 * totals.fuel_used);
        CHECK(totals.outside[0] > 0.001 * totals.fuel_used);
        CHECK(totals.boundary_heat[3] > 0.1 * totals.fuel_used);
    }

    TEST_CASE("the fuel that the books count is the integral of its rate") {
        const Books books(small_stove());
        const double exact = 2e-4 * (900 + 0.5 * 150 * (1 - std::cos(900.0 / 150)));
        CHECK(books.audit.totals().fuel_used == near(2e7 * exact, 1e-4));
        CHECK(books.audit.totals().fuel_elements[3] == near(exact, 1e-4));
        CHECK(books.audit.totals().fuel_elements[0] == 0);
    }

    TEST_CASE("heat that a passage gives to its walls without taking it from the gas shows") {
        const Books books(small_stove(10));
        CHECK(books.residual() > 1e-3);
        // 10 W to each of four walls for 900 s, unpaid; give or take what honest books leave open.
        CHECK(books.audit.energy_residual(1) == near(10 * 4 * 900, 0.02));
    }

    TEST_CASE("heat that a fire gives to a wall without taking it from its fuel shows") {
        const Books honest(with_secret(0)), books(with_secret(30));
        CHECK(honest.residual() < 1e-4);
        CHECK(books.residual() > 1e-3);
        CHECK(books.audit.energy_residual(1) == near(30 * 900, 0.02));
    }

    TEST_CASE("fuel that burns to less gas than it weighs shows") {
        const Books books(small_stove());
        const double fuel = books.audit.totals().fuel_elements[3];
        CHECK(books.audit.mass_residual(1.2 * fuel) > 1e-3);
    }

    TEST_CASE("heat into a wall that is held is counted") {
        Network network = small_stove();
        network.solids[0].held = true;
        network.solids[0].initial_temperature = 350;
        const Books books(std::move(network));
        CHECK(books.residual() < 1e-4);
        CHECK(std::abs(books.audit.totals().held) > 0.001 * books.audit.totals().fuel_used);
    }

    TEST_CASE("the quadrature is of third order at uneven steps") {
        const double exact = 1 - std::exp(-2.0);
        const double coarse = std::abs(integral_of_extra(10) - exact);
        const double fine = std::abs(integral_of_extra(20) - exact);
        CHECK(std::log2(coarse / fine) > 2.7);
    }

    TEST_CASE("a jump of the state between stretches is not in the books") {
        Network network = small_stove();
        const Topology topology = find_topology(network);
        HeatBalance balance(network, topology);
        Audit audit(network);
        auto state = network.initial_state();
        std::vector<double> rate(state.size());
        balance.rates(0, state, rate);
        audit.open(0, state, balance);
        audit.close(state);
        state[0] += 1e6;
        state.back() += 5;
        audit.open(0, state, balance);
        audit.close(state);
        CHECK(audit.totals().stored == 0);
        CHECK(audit.totals().fuel_used == 0);
    }
}
