#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
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

constexpr double first = 293, gas = 1100, room = 293;  // [K]

Material material(double density, Table conductivity, double heat_capacity, double slope) {
    return {.name = "",
            .meaning = "",
            .density = density,
            .conductivity = std::move(conductivity),
            .heat_capacity = Table({first, 1293}, {heat_capacity, heat_capacity + 1000 * slope}),
            .hazard = "",
            .source = ""};
}

std::function<double(double)> loss(double film, double emissivity, double around) {
    return [=](double t) {
        return film * (t - around) +
               emissivity * constants::stefan_boltzmann * (std::pow(t, 4) - std::pow(around, 4));
    };
}

/// Every cell of a square metre of the wall at each time, from the hot face on.
std::vector<std::vector<double>> computed(double refine, const std::vector<double>& times) {
    Stove stove;
    stove.burn.refine = refine;
    Library library = read_library();
    library.materials["brick"] = material(2050, Table({293, 1273}, {1.0, 1.2}), 840, 0.26);
    library.materials["fibre"] =
        material(128, Table({293, 473, 673, 873, 1073}, {0.036, 0.06, 0.1, 0.15, 0.22}), 740, 0.4);
    library.materials["sheet"] = material(7850, Table(15.0), 500, 0);
    const SolidFuel fuel{.wood = library.woods.begin()->second,
                         .char_yield = library.bed.char_yield.value};
    StoveBuilder builder(stove, library, fuel);
    Bench bench;
    builder.network = std::move(bench.network);
    const Wall wall =
        add_wall(builder, {.name = "wall",
                           .layers = {{"brick", 0.06}, {"fibre", 0.025}, {"sheet", 0.001}},
                           .face_area = 1,
                           .temperature = first,
                           .held_face = {}});
    bench.network = std::move(builder.network);
    bench.add_face(wall.face, 1, loss(30, 0.9, gas));
    bench.add_face(wall.back, 1, loss(8, 0.8, room));
    return bench.run(times, 1e-7);
}

/// Largest difference [K] of any cell at any time.
double worst(const Reference& reference, const std::string& kind,
             const std::vector<std::vector<double>>& own) {
    double most = 0;
    for (std::size_t t = 0; t < own.size(); ++t)
        for (std::size_t i = 0; i < own[t].size(); ++i)
            most = std::max(
                most, std::abs(own[t][i] - reference.of(kind + "." + std::to_string(i)).at(t)));
    return most;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a wall of three layers warms up as the same network does in ngspice") {
        const std::string name = "simulators/ngspice_wall";
        const Reference reference = read_reference(name);
        const auto usual = computed(1, reference.at), fine = computed(8, reference.at);
        REQUIRE(usual.size() == reference.at.size());
        compare({name, "11 cells, worst of all at five times [K]", worst(reference, "usual", usual),
                 0.01});
        compare({name, "81 cells, worst of all at five times [K]", worst(reference, "fine", fine),
                 0.01});
        const auto& face = reference.of("fine.0");
        const auto& back = reference.of("fine.80");
        double early = 0, face_off = 0, back_off = 0;
        for (std::size_t t = 0; t < usual.size(); ++t) {
            const double at_face = usual[t].front() - face[t], at_back = usual[t].back() - back[t];
            fmt::print(
                "{}  after {:.0f} s 11 cells instead of 81: face {:+.2f} K, back {:+.2f} K\n", name,
                reference.at[t], at_face, at_back);
            double& worst_face = reference.at[t] < 600 ? early : face_off;
            worst_face = std::max(worst_face, std::abs(at_face));
            back_off = std::max(back_off, std::abs(at_back));
        }
        show({name, "11 cells beside ngspice's 81, hot face after two minutes [K]", early, 8},
             "the half cell at the face is warmed as one before heat has come through it");
        compare(
            {name, "11 cells beside ngspice's 81, hot face from ten minutes on [K]", face_off, 8});
        compare({name, "11 cells beside ngspice's 81, back [K]", back_off, 8});
    }
}
