#include "solver/heat_balance.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numeric>

#include "solver/constants.h"
#include "tests/near.h"
#include "tests/solver/small_network.h"

using namespace drawwell;
using Vector = std::vector<double>;

namespace {

/// A network with its right-hand side at its first state.
struct Run {
    explicit Run(Network made)
        : network(std::move(made)),
          topology(find_topology(network)),
          balance(network, topology),
          state(network.initial_state()) {
        at(state);
    }
    Vector at(const Vector& where, double time = 0) {
        Vector rate(where.size());
        balance.rates(time, where, rate);
        return rate;
    }
    Network network;
    Topology topology;
    HeatBalance balance;
    Vector state;
};

/// Air goes by and touches nothing.
void add_draft(Network& network) {
    const JunctionId room = add_boundary(network, "room", 1);
    const JunctionId outdoors = add_boundary(network, "outdoors");
    Duct duct;
    duct.square = 1e4;
    add_passage(network, "draft", room, outdoors, std::move(duct), true);
}

Network three_solids(double first, double second, double third) {
    Network network;
    add_draft(network);
    const SolidId a = add_solid(network, "a", 1, first), b = add_solid(network, "b", 2, second),
                  c = add_solid(network, "c", 3, third);
    network.links.push_back({.a = a, .b = b, .shape_a = 0.1, .shape_b = 0.3, .contact = 0.05});
    RadiationEnclosure enclosure;
    enclosure.name = "round";
    enclosure.patches = {{{a, 0.25}, {b, 0.75}}, {{c, 1.0}}};
    enclosure.exchange_area = {0, 0.2, 0.2, 0};
    network.enclosures.push_back(enclosure);
    return network;
}

/// Everything at once, with flow that no wall drives: a duct past two walls, conduction,
/// radiation, a face to the room, one wall held, fuel.
Network everything() {
    Network network = three_solids(700, 500, 400);
    const SolidId held = add_solid(network, "held", 1, 800, true);
    network.links.push_back({.a = SolidId{2}, .b = held, .shape_a = 0.02, .shape_b = 0.02});
    add_face(network, "skin", SolidId{1}, 0.2, 15);
    const JunctionId room = add_boundary(network, "room", 4);
    const JunctionId hearth = add_junction(network, "hearth");
    const JunctionId middle = add_junction(network, "middle");
    const JunctionId outdoors = add_boundary(network, "outdoors");
    Duct feed, first, second;
    feed.square = 2e4;
    first.linear = 50;
    first.wall = {0, 2, index(held)};
    first.conductance = 3;
    second.linear = 30;
    second.wall = {1, 0};
    second.conductance = 2;
    add_passage(network, "feed", room, hearth, std::move(feed), true);
    add_passage(network, "first", hearth, middle, std::move(first));
    add_passage(network, "second", middle, outdoors, std::move(second));
    network.fire = std::make_unique<NitrogenFire>([](double) { return 1e-4; }, 2e7);
    network.fire_sites = {hearth};
    network.initial_fuel = {1};
    return network;
}

}  // namespace

TEST_SUITE("solver/heat_balance") {
    TEST_CASE("solids as warm as each other and as the air exchange nothing") {
        Network network = three_solids(300, 300, 300);
        add_face(network, "skin", SolidId{0}, 1, 10);
        Run run(finish(std::move(network)));
        for (const double rate : run.at(run.state)) CHECK(std::abs(rate) < 1e-9);
    }

    TEST_CASE("what one solid loses to another by conduction the other gains") {
        Network network = three_solids(700, 500, 400);
        network.enclosures.clear();
        Run run(finish(std::move(network)));
        const Vector rate = run.at(run.state);
        const double resistance =
            1 / (solid_conductivity * 0.1) + 1 / (solid_conductivity * 0.3) + 0.05;
        CHECK(rate[1] == near(200 / resistance, 1e-12));
        CHECK(rate[0] == near(-rate[1], 1e-12));
        CHECK(rate[2] == 0);
    }

    TEST_CASE("a contact that holds in part passes that share, and none while it is apart") {
        const auto into = [](double time) {
            Network network = three_solids(700, 500, 400);
            network.enclosures.clear();
            network.links[0].share = [](double at, std::span<const double> temperature) {
                CHECK(temperature[0] == near(700, 1e-9));
                return at < 60 ? 0.0 : 0.25;
            };
            Run run(finish(std::move(network)));
            Vector rate(run.state.size());
            run.balance.rates(time, run.state, rate);
            CHECK(run.balance.time() == time);
            CHECK(run.balance.heat()[1] == rate[1]);
            return rate[1];
        };
        const double resistance =
            1 / (solid_conductivity * 0.1) + 1 / (solid_conductivity * 0.3) + 0.05;
        CHECK(into(59) == 0);
        CHECK(into(60) == near(0.25 * 200 / resistance, 1e-12));
    }

    TEST_CASE("conductivity is taken at each cell's own temperature") {
        Network network = three_solids(700, 500, 400);
        network.enclosures.clear();
        network.solids[0].conductivity =
            std::make_shared<Table>(Vector{300, 700}, Vector{40.0, 10.0});
        Run run(finish(std::move(network)));
        CHECK(run.at(run.state)[1] ==
              near(200 / (1 / (10 * 0.1) + 1 / (solid_conductivity * 0.3) + 0.05), 1e-12));
    }

    TEST_CASE("patches radiate the mean fourth power of what they spread over") {
        Network network = three_solids(700, 500, 400);
        network.links.clear();
        Run run(finish(std::move(network)));
        const Vector rate = run.at(run.state);
        const double mean = 0.25 * std::pow(700, 4) + 0.75 * std::pow(500, 4);
        const double heat = constants::stefan_boltzmann * 0.2 * (mean - std::pow(400, 4));
        CHECK(rate[2] == near(heat, 1e-12));
        CHECK(rate[0] == near(-0.25 * heat, 1e-12));
        CHECK(rate[1] == near(-0.75 * heat, 1e-12));
    }

    TEST_CASE("heat to room leaves the solid and is told to the books") {
        Network network = three_solids(700, 700, 700);
        add_face(network, "skin", SolidId{2}, 0.4, 10);
        Run run(finish(std::move(network)));
        CHECK(run.at(run.state)[2] == near(-0.4 * 10 * 400, 1e-12));
        CHECK(run.balance.fluxes().outside[0] == near(0.4 * 10 * 400, 1e-12));
    }

    TEST_CASE("walls gain exactly what the gas loses on its way") {
        Run run(finish(everything()));
        const Vector rate = run.at(run.state);
        const Fluxes& fluxes = run.balance.fluxes();
        const double into_solids = rate[0] + rate[1] + rate[2] + fluxes.held;
        double out = fluxes.outside[0];
        for (const double heat : fluxes.boundary_heat) out += heat;
        const double fuel = -rate[4] * 2e7;
        // Found to where the fire's gas and the loops stand still, 1e-8 kg/s or so.
        CHECK(into_solids + out == doctest::Approx(fuel).epsilon(1e-3));
        CHECK(fluxes.held != 0);
        CHECK(rate[3] == 0);
    }

    TEST_CASE("manufactured heat goes to the solids it names, at its time") {
        Network network = three_solids(300, 300, 300);
        network.extra_heat = [](double time, std::span<double> heat) { heat[1] += 5 * time; };
        Run run(finish(std::move(network)));
        const Vector rate = run.at(run.state, 7);
        CHECK(rate[1] == near(35, 1e-12));
        CHECK(std::abs(rate[0]) < 1e-9);
        CHECK(run.balance.fluxes().extra == near(35, 1e-12));
    }

    TEST_CASE("the same state gives the same rates whatever was asked in between") {
        Run run(finish(everything()));
        const Vector once = run.at(run.state);
        Vector other = run.state;
        for (std::size_t i = 0; i < 3; ++i) other[i] *= 1.2;
        run.at(other);
        const Vector again = run.at(run.state);
        // The flow is found from another side: equal within what it is found to.
        for (std::size_t i = 0; i < once.size(); ++i)
            CHECK(again[i] == doctest::Approx(once[i]).epsilon(1e-4));
    }

    TEST_CASE("with flow that no wall drives, the Jacobian is that of the rates") {
        Run run(finish(everything()));
        run.balance.linearise();
        constexpr double gamma_step = 40;
        run.balance.factor(gamma_step);
        const std::size_t n = run.state.size();
        Vector right{900, -400, 700, 0, 1e-3};
        Vector x = right;
        run.balance.solve(x);
        CHECK(x[3] == 0);                                   // held
        CHECK(x[4] == near(gamma_step * right[4], 1e-12));  // fuel without a slope
        // J x by differences; small enough that fourth powers are straight.
        const double step = 1e-3;
        Vector ahead = run.state, behind = run.state;
        for (std::size_t i = 0; i < 3; ++i) {
            ahead[i] += step * x[i];
            behind[i] -= step * x[i];
        }
        const Vector rate_ahead = run.at(ahead), rate_behind = run.at(behind);
        for (std::size_t i = 0; i < n - 2; ++i) {
            const double jx = (rate_ahead[i] - rate_behind[i]) / (2 * step);
            CHECK(x[i] / gamma_step - jx == doctest::Approx(right[i]).epsilon(1e-3));
            CHECK(std::abs(jx) > 0.01 * std::abs(right[i]));  // the check sees the Jacobian
        }
    }
}
