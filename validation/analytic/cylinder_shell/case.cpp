#include <doctest/doctest.h>

#include <cmath>
#include <utility>

#include "cli/read/read_library.h"
#include "models/components/layered_wall.h"
#include "solver/constants.h"
#include "validation/bench.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr double inner = 0.04, outer = 0.07, length = 1;  // [m]
constexpr double conductivity = 0.1;                      // [W/(m K)]
constexpr double hot = 600, room = 300, film = 10;        // [K], [K], [W/(m2 K)]

/// Resistance [K/W] that the stove's own wall offers between its two faces.
double computed() {
    Stove stove;
    Library library = read_library();
    library.materials["shell"] = {.name = "shell",
                                  .meaning = "",
                                  .density = 500,
                                  .conductivity = Table(conductivity),
                                  .heat_capacity = Table(800.0),
                                  .emissivity = 0.9,
                                  .hazard = "",
                                  .source = ""};
    const SolidFuel fuel{.wood = library.woods.begin()->second,
                         .char_yield = library.bed.char_yield.value};
    StoveBuilder builder(stove, library, fuel);
    Bench bench;
    builder.network = std::move(bench.network);
    const Wall wall = add_wall(builder, {.name = "shell",
                                         .layers = {{"shell", outer - inner}},
                                         .face_area = 2 * constants::pi * inner * length,
                                         .face_radius = inner,
                                         .temperature = room,
                                         .held_face = hot});
    bench.network = std::move(builder.network);
    const double area = wall.back_area;
    bench.add_face(wall.back, area, [](double t) { return film * (t - room); });
    // Forty hours: thirty time constants of the shell.
    const double back = bench.run({144000}, 1e-6).back()[index(wall.back)];
    return (hot - back) / (film * area * (back - room));
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a round wall conducts as its radii's logarithm says") {
        const double exact = std::log(outer / inner) / (2 * constants::pi * conductivity * length);
        compare({"analytic/cylinder_shell", "closed form against 0.8907 K/W [K/W]",
                 std::abs(exact - 0.8907), 1e-4});
        compare({"analytic/cylinder_shell", "resistance of the shell, share off [-]",
                 std::abs(computed() / exact - 1), 1e-4});
    }
}
