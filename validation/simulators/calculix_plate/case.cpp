#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "solver/constants.h"
#include "validation/compare.h"
#include "validation/plate_rings.h"
#include "validation/simulators/reference.h"

using namespace drawwell;

namespace {

const std::string name = "simulators/calculix_plate";
constexpr double room = 293, hottest = 1100, coldest = 700;  // [K]
constexpr double jet = 60, film = 12, emissivity = 0.8;      // [W/(m2 K)], [-]

/// Differences [K] from the finely resolved plate, worst of all times.
struct Off {
    double centre = 0, over_bore = 0, beyond = 0;
};

Off computed(double refine, const Reference& reference) {
    PlateRings shape;
    shape.refine = refine;
    LaidPlate laid = lay_plate(shape, room);
    for (std::size_t i = 0; i < laid.rings.size(); ++i) {
        const double r = laid.node[i], bore = shape.bore_radius;
        const bool over_bore = i < laid.over_bore;
        const double below = over_bore ? jet : jet * bore / r;
        const double gas = over_bore
                               ? hottest
                               : hottest + (coldest - hottest) * (r - bore) / (shape.radius - bore);
        laid.bench.add_face(laid.rings[i], laid.area(i), [=](double t) {
            return below * (t - gas) + film * (t - room) +
                   emissivity * constants::stefan_boltzmann * (std::pow(t, 4) - std::pow(room, 4));
        });
    }
    const auto own = laid.bench.run(reference.at, 1e-6);
    REQUIRE(own.size() == reference.at.size());
    Off off;
    for (std::size_t t = 0; t < own.size(); ++t) {
        const double centre = own[t][0] - reference.between(0, t);
        double over_bore = 0, beyond = 0;
        for (std::size_t i = 0; i < laid.rings.size(); ++i) {
            double& worst = i < laid.over_bore ? over_bore : beyond;
            worst = std::max(worst, std::abs(own[t][i] - reference.between(laid.node[i], t)));
        }
        fmt::print(
            "{}  rings times {:.0f}, after {:.0f} s: innermost ring {:+.2f} K beside the centre; "
            "rings at their middles {:.2f} K over the bore, {:.2f} K beyond\n",
            name, refine, reference.at[t], centre, over_bore, beyond);
        off.centre = std::max(off.centre, std::abs(centre));
        off.over_bore = std::max(off.over_bore, over_bore);
        off.beyond = std::max(off.beyond, beyond);
    }
    return off;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a plate over a jet warms up as finely cut elements of CalculiX do") {
        const Reference reference = read_reference(name);
        const Off usual = computed(1, reference), fine = computed(4, reference);
        compare({name, "8 rings, shown for the centre [K]", usual.centre, 8});
        compare({name, "8 rings, worst over the bore, at its middle [K]", usual.over_bore, 8});
        compare({name, "8 rings, worst beyond the bore, at its middle [K]", usual.beyond, 8});
        compare(
            {name, "32 rings, worst at its middle [K]", std::max(fine.over_bore, fine.beyond), 1});
    }
}
