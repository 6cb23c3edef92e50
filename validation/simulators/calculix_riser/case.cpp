#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "cli/read/read_library.h"
#include "models/components/layered_wall.h"
#include "solver/constants.h"
#include "validation/bench.h"
#include "validation/compare.h"
#include "validation/simulators/reference.h"

using namespace drawwell;

namespace {

const std::string name = "simulators/calculix_riser";
constexpr double first = 291, gas = 1100, room = 291;          // [K]
constexpr double inside = 40, outside = 6, emissivity = 0.65;  // [W/(m2 K)], [-]
constexpr double inner = 0.1, fibre = 0.025, sheet = 0.001;    // [m]

Material material(double density, Table conductivity, Table heat_capacity) {
    return {.name = "",
            .meaning = "",
            .density = density,
            .conductivity = std::move(conductivity),
            .heat_capacity = std::move(heat_capacity),
            .hazard = "",
            .source = ""};
}

/// Differences [K] from the finely resolved wall, worst of all times.
struct Off {
    double face = 0, within = 0, back = 0;
};

Off computed(double refine, const Reference& reference) {
    Stove stove;
    stove.burn.refine = refine;
    Library library = read_library();
    library.materials["board"] =
        material(280, Table({293, 473, 673, 873, 1073}, {0.06, 0.07, 0.1, 0.14, 0.19}),
                 Table({293, 1073}, {850, 1130}));
    library.materials["blanket"] =
        material(128, Table({293, 473, 673, 873, 1073}, {0.036, 0.06, 0.1, 0.15, 0.22}),
                 Table({293, 1073}, {800, 1130}));
    library.materials["sheet"] = material(7900, Table(15.0), Table(500.0));
    const SolidFuel fuel{.wood = library.woods.begin()->second,
                         .char_yield = library.bed.char_yield.value};
    StoveBuilder builder(stove, library, fuel);
    Bench bench;
    builder.network = std::move(bench.network);
    const double area = 2 * constants::pi * inner;  // of a metre
    const Wall wall =
        add_wall(builder, {.name = "riser",
                           .layers = {{"board", fibre}, {"blanket", fibre}, {"sheet", sheet}},
                           .face_area = area,
                           .face_radius = inner,
                           .temperature = first,
                           .held_face = {}});
    bench.network = std::move(builder.network);
    bench.add_face(wall.face, area, [](double t) { return inside * (t - gas); });
    bench.add_face(wall.back, wall.back_area, [](double t) {
        return outside * (t - room) +
               emissivity * constants::stefan_boltzmann * (std::pow(t, 4) - std::pow(room, 4));
    });
    const auto own = bench.run(reference.at, 1e-6);
    REQUIRE(own.size() == reference.at.size());

    // Outermost cells of the layers of fibre, by how many share their thickness.
    const double cells = 5 * refine;
    const std::array<std::pair<SolidId, double>, 4> nodes{
        {{wall.face, 0},
         {wall.layer_backs[0], fibre * (1 - 0.5 / (cells - 0.5))},
         {wall.layer_backs[1], fibre * (2 - 0.5 / cells)},
         {wall.back, 2 * fibre + sheet / 2}}};
    Off off;
    for (std::size_t t = 0; t < own.size(); ++t) {
        std::array<double, nodes.size()> apart{};
        for (std::size_t i = 0; i < nodes.size(); ++i)
            apart[i] = own[t][index(nodes[i].first)] - reference.between(nodes[i].second, t);
        fmt::print(
            "{}  cells times {:.0f}, after {:.0f} s: face {:+.2f} K, board's back {:+.2f} K, "
            "blanket's back {:+.2f} K, sheet {:+.2f} K\n",
            name, refine, reference.at[t], apart[0], apart[1], apart[2], apart[3]);
        off.face = std::max(off.face, std::abs(apart[0]));
        off.within = std::max({off.within, std::abs(apart[1]), std::abs(apart[2])});
        off.back = std::max(off.back, std::abs(apart[3]));
    }
    return off;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a riser's wall warms up as finely cut elements of CalculiX do") {
        const Reference reference = read_reference(name);
        const Off usual = computed(1, reference), fine = computed(4, reference);
        compare({name, "usual cells, gas face, worst of five times [K]", usual.face, 8});
        compare({name, "usual cells, between and behind the fibres [K]", usual.within, 8});
        compare({name, "usual cells, steel outside [K]", usual.back, 8});
        compare({name, "four times the cells, worst of all [K]",
                 std::max({fine.face, fine.within, fine.back}), 0.5});
    }
}
