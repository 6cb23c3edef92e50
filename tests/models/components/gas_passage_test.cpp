#include "models/components/gas_passage.h"

#include <doctest/doctest.h>

#include <cmath>

#include "models/components/duct_shape.h"
#include "models/laws/losses.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

constexpr double bore = 0.15, pressure = 101325;

GasSurroundings surroundings() {
    return {.model = std::make_shared<const GasModel>(volatile_gas(plain_fuel())),
            .pressure = pressure,
            .outdoor_density = 1.25,
            .flame = {},
            .radiant_fraction = 0.25,
            .flame_absorption = 0.8,
            .flame_temperature = 1373.15};
}

/// A round duct, one wall to a cell, numbered along the passage.
GasPassageShape duct(std::size_t count, double length, double rise) {
    const DuctSection section = round_section(bore);
    GasPassageShape shape;
    const double share = 1 / static_cast<double>(count);
    for (std::size_t i = 0; i < count; ++i) {
        GasCellShape cell = duct_cell(section, length * share, rise * share);
        cell.faces.push_back({i, section.perimeter * length * share, 0.9});
        shape.cells.push_back(cell);
    }
    return shape;
}

struct PassageBench {
    explicit PassageBench(GasPassageShape shape) : law(std::move(shape), around) {}

    GasState air(double temperature) const {
        return {.enthalpy = around.model->mixture(dry_air()).enthalpy(temperature),
                .mass_fraction = dry_air()};
    }
    /// Gas of a fire with volatiles and an air ratio of about two, its flame 0.6 m long.
    GasState flame(double temperature) const {
        GasState gas{.enthalpy = 0,
                     .mass_fraction = {0.68, 0.19, 0.02, 0.035, 0.005, 0.07},
                     .flame = {.path = 0, .length = 0.6, .oxygen = 0.19}};
        gas.enthalpy = around.model->mixture(gas.mass_fraction).enthalpy(temperature);
        return gas;
    }
    double temperature(const GasState& gas) const {
        return around.model->mixture(gas.mass_fraction).temperature(gas.enthalpy, 600);
    }
    Crossed cross(double flow, const GasState& gas, const std::vector<double>& walls,
                  std::span<const double> settings = {}) const {
        return {law, flow, gas, walls, settings};
    }

    GasSurroundings around = surroundings();
    GasPassage law;
};

double density(double temperature) {
    return surroundings().model->mixture(dry_air()).density(temperature, pressure);
}

}  // namespace

TEST_SUITE("models/components/gas_passage") {
    TEST_CASE("what the gas loses is what the walls gain, flame and all, in every kind of film") {
        for (const Film film : {Film::duct, Film::annulus, Film::jet}) {
            GasPassageShape shape = duct(5, 0.9, 0.7);
            shape.film = film;
            shape.film_length = film == Film::annulus ? 0.7 : bore;
            shape.jet_gap = 0.05;
            shape.jet_area = shape.cells[0].area;
            const PassageBench bench(shape);
            for (const double flow : {0.008, -0.008, 1e-5})
                for (const GasState& gas : {bench.flame(1100), bench.air(900)}) {
                    const std::vector<double> walls{900, 700, 500, 400, 1000};
                    const Crossed crossed = bench.cross(flow, gas, walls);
                    const double lost =
                        std::abs(flow) * (gas.enthalpy - crossed.crossing.outlet.enthalpy);
                    CHECK(sum_of(crossed.heat) == near(lost, 1e-9));
                    double radiated = 0;  // over what walls radiate back
                    for (std::size_t i = 0; i < walls.size(); ++i)
                        radiated +=
                            0.25 * crossed.cells[i].burnt * (1 - std::pow(walls[i] / 1373.15, 4));
                    CHECK(sum_of(crossed.given) == doctest::Approx(radiated));
                }
        }
    }

    TEST_CASE("a stirred cell leaves as warm as it is: 1/(1 + NTU) of what it was over its wall") {
        GasPassageShape shape = duct(1, 0.9, 0);
        shape.cells[0].stirred = true;
        shape.cells[0].beam_length = 0;
        const PassageBench bench(shape);
        const GasState in = bench.air(700);
        const Crossed crossed = bench.cross(0.008, in, {400});
        const GasCell& cell = crossed.cells[0];
        CHECK(cell.mean_temperature == near(cell.outlet_temperature, 0.5));
        // By enthalpy, whose heat capacity is a mean; its temperature within a kelvin.
        const double strides = crossed.conductance[0] / cell.capacity_flow;
        CHECK(cell.outlet_temperature == near(400 + 300 / (1 + strides), 1));
        CHECK(sum_of(crossed.heat) ==
              near(0.008 * (in.enthalpy - crossed.crossing.outlet.enthalpy), 1e-9));
        // In plug flow it would leave colder, by the exponential.
        shape.cells[0].stirred = false;
        CHECK(PassageBench(shape).cross(0.008, in, {400}).cells[0].outlet_temperature <
              cell.outlet_temperature - 5);
    }

    TEST_CASE("gas in a chamber sinks along cold walls whichever way it is led") {
        GasPassageShape shape = duct(1, 0.9, 0.9);
        shape.film = Film::chamber;
        shape.film_length = 0.9;
        const PassageBench up(shape);
        shape.cells[0].rise = -0.9;
        const PassageBench down(shape);
        CHECK(up.cross(0.008, up.air(700), {400}).conductance[0] ==
              near(down.cross(0.008, down.air(700), {400}).conductance[0], 1e-9));
        shape.film = Film::annulus;  // there a stream that rises along a cold wall is held back
        shape.cells[0].rise = 0.9;
        const PassageBench against(shape);
        CHECK(against.cross(0.008, against.air(700), {400}).conductance[0] !=
              near(down.cross(0.008, down.air(700), {400}).conductance[0], 1e-3));
    }

    TEST_CASE("a flame gives its walls a share by what they take in, and none without walls") {
        GasPassageShape shape = duct(1, 0.3, 0);
        shape.cells[0].faces = {{0, 0.03, 0.9}, {1, 0.01, 0.9}, {2, 0.03, 0.3}};
        const PassageBench bench(shape);
        const Crossed crossed = bench.cross(0.008, bench.flame(1100), {800, 800, 800});
        CHECK(crossed.given[0] > 0);
        CHECK(crossed.given[0] == near(3 * crossed.given[1], 1e-12));
        CHECK(crossed.given[0] == near(3 * crossed.given[2], 1e-12));

        GasPassageShape open = shape;
        open.cells[0].faces.clear();
        const PassageBench bare(open);
        const GasState gas = bare.flame(1100);
        const Crossed free = bare.cross(0.008, gas, {});
        CHECK(free.cells[0].burnt > 0);
        CHECK(free.crossing.outlet.enthalpy == gas.enthalpy);
        // Its own heat warms it: no less than the heat over a generous heat capacity.
        CHECK(free.cells[0].outlet_temperature - 1100 > free.cells[0].burnt / 0.008 / 2000);
    }

    TEST_CASE("a flame heats no wall past itself") {
        const PassageBench bench(duct(1, 0.2, 0));
        const GasState gas = bench.flame(1200);
        CHECK(bench.cross(0.005, gas, {300}).given[0] > 0);
        CHECK(bench.cross(0.005, gas, {1300}).given[0] <
              bench.cross(0.005, gas, {600}).given[0] / 2);
        CHECK(bench.cross(0.005, gas, {1373.15}).given[0] == 0);
        CHECK(bench.cross(0.005, gas, {1800}).given[0] == 0);
    }

    TEST_CASE("cold gas that rushes past a hot wall has a mean between the two") {
        const PassageBench bench(duct(1, 0.02, 0));
        for (const double wall : {290.0, 600.0, 1200.0, 2400.0}) {
            const Crossed crossed = bench.cross(0.05, bench.air(250), {wall});
            CHECK(crossed.cells[0].mean_temperature >= 250);
            CHECK(crossed.cells[0].mean_temperature <= wall);
        }
    }

    TEST_CASE("gas that stands is as hot as its walls, and nothing becomes infinite") {
        GasPassageShape shape = duct(3, 0.6, 0.6);
        shape.losses.push_back({.area = 0.01, .forward = 1, .reverse = 2, .low_reynolds = 500});
        const PassageBench bench(shape);
        for (const double flow : {0.0, 1e-14, -1e-14}) {
            const Crossed air = bench.cross(flow, bench.air(300), {500, 600, 500});
            CHECK(bench.temperature(air.crossing.outlet) == near(500, 1e-6));
            CHECK(air.cells[1].mean_temperature == near(600, 1e-5));
            // Gas that burns as it stands keeps half of what it gained in its last cell.
            const Crossed lit = bench.cross(flow, bench.flame(1100), {500, 600, 500});
            CHECK(bench.temperature(lit.crossing.outlet) > 499);
            CHECK(bench.temperature(lit.crossing.outlet) < 600);
            for (const Crossed* crossed : {&air, &lit}) {
                CHECK(std::abs(crossed->crossing.loss) < 1e-6);
                CHECK(crossed->crossing.buoyancy > 0);
                // No more than a creeping flow brings along: 4 MJ/kg with all its volatiles.
                for (const double heat : crossed->heat) CHECK(std::abs(heat) < creeping_flow * 4e6);
                for (const GasCell& cell : crossed->cells) CHECK(std::isfinite(cell.velocity));
            }
        }
    }

    TEST_CASE("where nothing differs in temperature no heat goes over") {
        const PassageBench bench(duct(4, 0.8, 0.8));
        for (const double flow : {0.01, -0.01, 1e-6}) {
            const Crossed crossed = bench.cross(flow, bench.air(700), {700, 700, 700, 700});
            // 1e-10 of the temperature at about 10 W/K.
            for (const double heat : crossed.heat) CHECK(std::abs(heat) < 1e-5);
            CHECK(crossed.cells[0].outlet_temperature == near(700, 1e-9));
        }
    }

    TEST_CASE("twice the height pulls twice as much, but downward it pulls against the flow") {
        const PassageBench one(duct(4, 0.8, 0.4)), two(duct(4, 0.8, 0.8)), down(duct(4, 0.8, -0.4)),
            level(duct(4, 0.8, 0));
        const std::vector<double> walls{800, 700, 650, 600};
        const auto pull = [&](const PassageBench& bench) {
            return bench.cross(0.008, bench.air(1000), walls).crossing.buoyancy;
        };
        CHECK(pull(one) > 0);
        CHECK(pull(two) == near(2 * pull(one), 1e-12));
        CHECK(pull(down) == near(-pull(one), 1e-12));
        CHECK(pull(level) == 0);
        // Isothermal, it is the textbook column.
        const Crossed still = one.cross(0.008, one.air(800), {800, 800, 800, 800});
        CHECK(still.crossing.buoyancy ==
              near(constants::gravity * 0.4 * (1.25 - density(800)), 1e-9));
    }

    TEST_CASE("the column of smoke that hardly moves passes without a jump into that of air") {
        const PassageBench bench(duct(4, 0.8, 0.8));
        const std::vector<double> walls{500, 500, 500, 500};
        GasState damp{.enthalpy = 0, .mass_fraction = {0.6, 0.1, 0.0, 0.3, 0.0, 0.0}, .flame = {}};
        damp.enthalpy = bench.around.model->mixture(damp.mass_fraction).enthalpy(500);
        const auto pull = [&](double flow, const GasState& gas) {
            return bench.cross(flow, gas, walls).crossing.buoyancy;
        };
        const double air = pull(0, bench.air(500));
        CHECK(pull(1e-7, damp) == near(air, 1e-6));
        CHECK(pull(-1e-7, damp) == near(air, 1e-6));
        // Damp gas is lighter by a tenth and more: 0.08 kg/m3 over 0.8 m. At 8 g/s, half of what
        // its bore could carry by its own lightness, the duct is full of it.
        const double full = pull(8e-3, damp);
        CHECK(full > air + 0.4);
        CHECK(pull(16e-3, damp) == near(full, 1e-3));
        double before = air;
        for (double flow = 1e-5; flow < 8e-3; flow += 1e-5) {
            const double now = pull(flow, damp);
            REQUIRE(now >= before - 1e-9);
            REQUIRE(now - before < 0.02 * (full - air));
            before = now;
        }
    }

    TEST_CASE("reversed flow is the mirror image of forward flow") {
        const PassageBench bench(duct(4, 0.8, 0.0));
        const Crossed there = bench.cross(0.008, bench.air(1000), {800, 700, 650, 600});
        const Crossed back = bench.cross(-0.008, bench.air(1000), {600, 650, 700, 800});
        for (std::size_t i = 0; i < 4; ++i) {
            const GasCell &a = there.cells[i], &b = back.cells[3 - i];
            CHECK(a.outlet_temperature == near(b.outlet_temperature, 1e-12));
            CHECK(a.velocity == near(-b.velocity, 1e-12));
            CHECK(there.heat[i] == near(back.heat[3 - i], 1e-12));
        }
        CHECK(back.crossing.loss == near(-there.crossing.loss, 1e-12));
    }

    TEST_CASE(
        "pressure loss changes sign with the flow and runs smoothly through every Reynolds "
        "number") {
        GasPassageShape shape = duct(3, 3.0, 0);
        shape.losses.push_back(
            {.at_end = true, .area = 0.012, .forward = 1.3, .reverse = 1.3, .low_reynolds = 500});
        const PassageBench bench(shape);
        const auto loss = [&](double flow) {
            return bench.cross(flow, bench.air(600), {600, 600, 600}).crossing.loss;
        };
        for (const double flow : {1e-9, 1e-5, 1e-3, 7e-3, 0.02})
            CHECK(loss(-flow) == near(-loss(flow), 1e-9));
        // Near rest it is laminar: proportional to the flow, from either side.
        CHECK(loss(2e-8) == near(2 * loss(1e-8), 1e-3));
        CHECK(loss(0) <= loss(creeping_flow));
        CHECK(loss(0) < 1e-6);
        // Re 2300 to 4000 is 8 to 14 g/s here. A loss no steeper than the fifth power moves by
        // less than a half percent for a thousandth of the flow; a jump would not.
        for (double flow = 1e-3; flow < 0.03; flow *= 1.001) {
            const double step = loss(flow * 1.001) / loss(flow) - 1;
            REQUIRE(step > 0);
            REQUIRE(step < 5e-3);
        }
    }

    TEST_CASE("gas that is heated in a straight duct pays for its acceleration") {
        GasPassageShape shape = duct(6, 1.0, 0);
        shape.friction = false;
        const PassageBench bench(shape);
        const auto heads = [&](double gas, double wall) {
            const Crossed crossed = bench.cross(0.02, bench.air(gas), std::vector(6, wall));
            const double out = crossed.cells[5].outlet_temperature;
            const double area = shape.cells[0].area, speed = 0.02 / (density(out) * area);
            CHECK(
                crossed.crossing.loss ==
                near((1 - density(out) / density(gas)) * 0.5 * density(out) * speed * speed, 1e-9));
            return crossed.crossing.loss;
        };
        CHECK(heads(300, 1200) > 0);
        CHECK(heads(1200, 300) < 0);
    }

    TEST_CASE("burning moves elements about and makes none") {
        const PassageBench bench(duct(8, 1.2, 1.2));
        for (const double flow : {0.008, -0.008}) {
            const GasState gas = bench.flame(1100);
            const Crossed crossed = bench.cross(flow, gas, std::vector(8, 900.0));
            const auto before = bench.around.model->elements(gas.mass_fraction);
            const auto after = bench.around.model->elements(crossed.crossing.outlet.mass_fraction);
            for (std::size_t e = 0; e < before.size(); ++e)
                CHECK(after[e] == near(before[e], 1e-12));
            CHECK(sum_of(crossed.crossing.outlet.mass_fraction) == near(1, 1e-12));
            CHECK(crossed.crossing.outlet.mass_fraction[volatiles] <
                  0.5 * gas.mass_fraction[volatiles]);
        }
    }

    TEST_CASE("heat set free shows in every cell's account") {
        const PassageBench bench(duct(8, 1.2, 1.2));
        const GasState gas = bench.flame(1100);
        const Crossed crossed = bench.cross(0.008, gas, std::vector(8, 900.0));
        double burnt = 0;
        for (const GasCell& cell : crossed.cells) burnt += cell.burnt;
        const GasModel& model = *bench.around.model;
        CHECK(burnt ==
              near(0.008 * (model.higher_heating_value(gas.mass_fraction) -
                            model.higher_heating_value(crossed.crossing.outlet.mass_fraction)),
                   1e-9));
    }

    TEST_CASE("a local loss counts by the way the gas goes, at the end where it stands") {
        GasPassageShape shape = duct(2, 0.2, 0);
        shape.friction = false;
        for (GasCellShape& cell : shape.cells) cell.faces.clear();
        GasPassageShape cold = shape;
        cold.losses = {{.area = 0.01, .forward = 0.5, .reverse = 1.2}};
        const PassageBench bench(cold);
        const double head = 0.5 * 0.02 * 0.02 / (density(400) * 0.01 * 0.01);
        CHECK(bench.cross(0.02, bench.air(400), {}).crossing.loss == near(0.5 * head, 1e-9));
        CHECK(bench.cross(-0.02, bench.air(400), {}).crossing.loss == near(-1.2 * head, 1e-9));

        // Slow flow adds 500 over the Reynolds number on the opening's own diameter.
        cold.losses[0].low_reynolds = 500;
        const PassageBench slow(cold);
        const double extra = slow.cross(0.02, slow.air(400), {}).crossing.loss - 0.5 * head;
        const double viscosity = transport(dry_air(), 400, 1014).viscosity;
        const double reynolds = 0.02 * std::sqrt(4 * 0.01 / constants::pi) / (0.01 * viscosity);
        CHECK(extra == near(500 / reynolds * head, 1e-9));

        // A bend turns slow flow dearer, either way.
        cold.losses = {{.area = 0.01, .bend = 1.1}};
        const PassageBench bent(cold);
        CHECK(bent.cross(0.02, bent.air(400), {}).crossing.loss ==
              near(1.1 * slow_bend_factor(reynolds) * head, 1e-9));
        CHECK(bent.cross(-0.02, bent.air(400), {}).crossing.loss ==
              near(-1.1 * slow_bend_factor(reynolds) * head, 1e-9));

        // At an end, it is the gas of that end: heated gas is lighter where it leaves.
        GasPassageShape hot = duct(2, 2.0, 0);
        hot.friction = false;
        const auto loss = [&](bool at_end, double flow) {
            GasPassageShape with = hot;
            with.losses = {{.at_end = at_end, .area = 0.01, .forward = 1, .reverse = 1}};
            const PassageBench a(hot), b(with);
            return std::abs(b.cross(flow, b.air(300), {1000, 1000}).crossing.loss -
                            a.cross(flow, a.air(300), {1000, 1000}).crossing.loss);
        };
        const double cold_head = 0.5 * 0.02 * 0.02 / (density(300) * 0.01 * 0.01);
        CHECK(loss(false, 0.02) == near(cold_head, 1e-9));
        CHECK(loss(true, -0.02) == near(cold_head, 1e-9));
        CHECK(loss(true, 0.02) > 1.3 * cold_head);
        CHECK(loss(false, -0.02) == near(loss(true, 0.02), 1e-9));
    }

    TEST_CASE("what is left free sets the speed, and the loss at the mouth") {
        GasPassageShape shape = duct(2, 0.2, 0);
        shape.free_area = 1;
        shape.friction = false;
        shape.losses = {{.area = 0.5, .forward = 1, .reverse = 1, .follows_free_area = true}};
        const PassageBench bench(shape);
        const std::vector<double> wide{99, 0.01}, tight{99, 0.005};
        const Crossed a = bench.cross(0.01, bench.air(300), {300, 300}, wide);
        const Crossed b = bench.cross(0.01, bench.air(300), {300, 300}, tight);
        CHECK(b.cells[0].velocity == near(2 * a.cells[0].velocity, 1e-9));
        CHECK(b.crossing.loss == near(4 * a.crossing.loss, 1e-9));
        CHECK(a.cells[0].velocity == near(0.01 / (density(300) * 0.01), 1e-9));
    }

    TEST_CASE("volatiles make the gas glow brighter than its water and carbon dioxide do") {
        const PassageBench bench(duct(1, 0.3, 0));
        GasState lit = bench.flame(1100);
        lit.flame.oxygen = 0;  // too early to burn: only the glow differs
        GasState burnt = lit;
        burnt.mass_fraction[n2] += burnt.mass_fraction[volatiles];
        burnt.mass_fraction[volatiles] = 0;
        burnt.enthalpy = bench.around.model->mixture(burnt.mass_fraction).enthalpy(1100);
        CHECK(bench.cross(0.008, lit, {800}).conductance[0] >
              1.3 * bench.cross(0.008, burnt, {800}).conductance[0]);
    }
}
