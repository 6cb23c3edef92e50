#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "cli/read/read_library.h"
#include "models/components/layered_wall.h"
#include "solver/constants.h"
#include "validation/bench.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr double hot = 900, room = 300, film = 12;  // [K], [K], [W/(m2 K)]
constexpr double radius = 0.06, height = 1;         // [m] of the gas's face, where it is round
struct Part {
    double thickness, conductivity;  // [m], [W/(m K)]
};
// Thick enough for the five cells that a stove's layers have.
constexpr std::array<Part, 3> parts{{{0.032, 1.1}, {0.025, 0.15}, {0.040, 0.6}}};
constexpr std::size_t cells = 5;

/// What heat crosses at equal rate [m]: the depth itself, or its logarithm where the wall is round.
double way(double depth, bool round) {
    return round ? radius * std::log1p(depth / radius) : depth;
}

struct Wall3 {
    double flow = 0;                  // [W]
    std::array<double, 2> interface;  // [K] between the layers
    double back = 0;                  // [K]
};

Wall3 closed_form(bool round) {
    const double face = 2 * constants::pi * radius * height;
    double depth = 0, before = 0;
    std::array<double, 4> sum{};  // [K/W] up to each interface, the back, the room
    for (std::size_t l = 0; l < 3; ++l) {
        depth += parts[l].thickness;
        const double resistance =
            (way(depth, round) - way(before, round)) / (parts[l].conductivity * face);
        sum[l] = (l > 0 ? sum[l - 1] : 0) + resistance;
        before = depth;
    }
    const double back_area = round ? face * (1 + depth / radius) : face;
    sum[3] = sum[2] + 1 / (film * back_area);
    const double flow = (hot - room) / sum[3];
    return {flow, {hot - flow * sum[0], hot - flow * sum[1]}, hot - flow * sum[2]};
}

/// The stove's own wall, run until nothing changes any more.
Wall3 computed(bool round) {
    Stove stove;
    Library library = read_library();
    WallShape shape{.name = "wall",
                    .layers = {},
                    .face_area = 2 * constants::pi * radius * height,
                    .face_radius = round ? radius : 0,
                    .temperature = room,
                    .held_face = hot};
    for (std::size_t l = 0; l < 3; ++l) {
        const std::string name = "part " + std::to_string(l);
        library.materials[name] = {.name = name,
                                   .meaning = "",
                                   .density = 500,
                                   .conductivity = Table(parts[l].conductivity),
                                   .heat_capacity = Table(800.0),
                                   .hazard = "",
                                   .source = ""};
        shape.layers.push_back({name, parts[l].thickness});
    }
    const SolidFuel fuel{.wood = library.woods.begin()->second,
                         .char_yield = library.bed.char_yield.value};
    StoveBuilder builder(stove, library, fuel);
    Bench bench;
    builder.network = std::move(bench.network);
    const Wall wall = add_wall(builder, shape);
    bench.network = std::move(builder.network);
    REQUIRE(bench.network.solids.size() == 3 * cells);
    bench.add_face(wall.back, wall.back_area, [](double t) { return film * (t - room); });
    // Fifty hours: some twenty of the wall's time constants.
    const auto at = bench.run({180000}, 1e-6).back();

    // The first layer's nodes begin on its face, 4.5 widths from its end; the middle one's stand in
    // the middle of five. What the last two show is carried on to the interface.
    const double w0 = parts[0].thickness / 4.5, w1 = parts[1].thickness / 5;
    const auto carried_on = [&](std::size_t last, double from, double to, double end) {
        return at[last] + (at[last] - at[last - 1]) / (way(to, round) - way(from, round)) *
                              (way(end, round) - way(to, round));
    };
    const double first = parts[0].thickness, second = first + parts[1].thickness;
    return {film * wall.back_area * (at[index(wall.back)] - room),
            {carried_on(cells - 1, 3 * w0, 4 * w0, first),
             carried_on(2 * cells - 1, second - 1.5 * w1, second - 0.5 * w1, second)},
            at[index(wall.back)]};
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a wall of three layers lets through what their resistances in series do") {
        for (const bool round : {false, true}) {
            const std::string kind = round ? "round" : "flat";
            const Wall3 exact = closed_form(round), seen = computed(round);
            compare({"analytic/composite_wall", kind + " wall, heat, share off [-]",
                     share_off(seen.flow, exact.flow), 1e-4});
            compare({"analytic/composite_wall", kind + " wall, worst of interfaces and back [K]",
                     std::max({std::abs(seen.interface[0] - exact.interface[0]),
                               std::abs(seen.interface[1] - exact.interface[1]),
                               std::abs(seen.back - exact.back)}),
                     0.05});
        }
    }
}
