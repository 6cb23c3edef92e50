#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "solver/constants.h"
#include "validation/compare.h"
#include "validation/plate_rings.h"
#include "validation/simulators/reference.h"

using namespace drawwell;

namespace {

constexpr double room = 300, fire = 1000;      // [K]
constexpr double jet = 20e3;                   // [W/m2] onto the plate over the bore
constexpr double seen = 0.5;                   // [-] of black radiation from the fire
constexpr double film = 10, emissivity = 0.8;  // [W/(m2 K)], [-] of the upper face

double fourth(double t) {
    return t * t * t * t;
}

std::vector<std::vector<double>> computed(const std::vector<double>& times) {
    LaidPlate laid = lay_plate({.overhang = true}, room);
    const SolidId body = laid.bench.add(1, 500, 40, fire);
    laid.bench.network.solids[index(body)].held = true;
    const std::size_t rings = laid.rings.size();
    RadiationEnclosure below{.name = "below", .patches = {{{body, 1}}}, .exchange_area = {}};
    for (std::size_t i = 0; i + 1 < rings; ++i) below.patches.push_back({{laid.rings[i], 1}});
    below.exchange_area.resize(rings * rings);
    for (std::size_t i = 0; i < rings; ++i) {
        if (i + 1 < rings)
            below.exchange_area[i + 1] = below.exchange_area[(i + 1) * rings] = seen * laid.area(i);
        const bool over_bore = i < laid.over_bore;
        laid.bench.add_face(laid.rings[i], laid.area(i), [over_bore](double t) {
            return film * (t - room) +
                   emissivity * constants::stefan_boltzmann * (fourth(t) - fourth(room)) -
                   (over_bore ? jet : 0);
        });
    }
    laid.bench.network.enclosures.push_back(std::move(below));
    return laid.bench.run(times, 1e-7);
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a plate over a fire warms up and settles as the same rings do in ngspice") {
        const std::string name = "simulators/ngspice_plate";
        const Reference reference = read_reference(name);
        const auto own = computed(reference.at);
        REQUIRE(own.size() == reference.at.size());
        REQUIRE(own[0].size() == reference.names.size() + 1);  // with the fire
        double warming = 0, settled = 0;
        for (std::size_t t = 0; t < own.size(); ++t) {
            double& worst = t + 1 < own.size() ? warming : settled;
            for (std::size_t i = 0; i < reference.values.size(); ++i)
                worst = std::max(worst, std::abs(own[t][i] - reference.values[i][t]));
        }
        compare({name, "warming up, worst ring at three times [K]", warming, 0.01});
        compare({name, "after an hour, worst ring [K]", settled, 0.01});
    }
}
