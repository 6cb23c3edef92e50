#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>
#include <utility>

#include "cli/read/read_library.h"
#include "models/components/layered_wall.h"
#include "solver/constants.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/hot_plate";

/// Heat [W] that a bare level disc loses to a room of 20 degC, by the program's outer face.
double loses(double diameter, double emissivity, double celsius) {
    const Library library = read_library();
    Stove stove;
    stove.site.room = 20 + constants::ice_point;
    const SolidFuel fuel{.wood = library.woods.begin()->second,
                         .char_yield = library.bed.char_yield.value};
    StoveBuilder builder(stove, library, fuel);
    const SolidId disc = builder.add_solid("disc", "mild_steel", 1e-3, stove.site.room);
    const double area = constants::pi / 4 * diameter * diameter;
    add_outer_face(builder, {.name = "disc",
                             .solids = {disc},
                             .area = {area},
                             .emissivity = emissivity,
                             .facing = Facing::up,
                             .length = diameter});
    const std::vector<double> temperature{celsius + constants::ice_point};
    std::vector<double> flux(1);
    builder.network.outside.front().flux(0, temperature, flux);
    return flux[0] * area;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a bare lid loses what was worked out for it") {
        for (const auto& [celsius, watt] :
             {std::pair{150, 554}, {200, 891}, {250, 1310}, {300, 1825}, {400, 3216}, {500, 5235}})
            compare_beside({name, fmt::format("570 mm, emissivity 0.8, {} degC [W]", celsius),
                            static_cast<double>(watt), loses(0.57, 0.8, celsius), 0.05});
        // What leaves by radiation alone, from two emissivities.
        const double bright = loses(0.57, 0.3, 250), dull = loses(0.57, 0.8, 250);
        const double radiated = constants::stefan_boltzmann * constants::pi / 4 * 0.57 * 0.57 *
                                (std::pow(523.15, 4) - std::pow(293.15, 4));
        compare_beside({name, "a bright lid radiates less, at 250 degC [W]", 0.5 * radiated,
                        dull - bright, 1e-6});
    }
}
