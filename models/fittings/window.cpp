#include "models/fittings/window.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "models/components/layered_wall.h"
#include "models/components/stove_builder.h"
#include "models/fittings/reading.h"
#include "models/series.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double clear_until = 2.7e-6, dim_until = 4.2e-6;  // [m]
constexpr double clear = 0.85, dim = 0.3;                   // [-]
constexpr std::string_view glass = "ceramic_glass";

/// What shines from a wall at a temperature [K] into the room [W/m2].
double shining(double wall, double room) {
    const auto sent = [](double t) {
        return let_through(t) * constants::stefan_boltzmann * t * t * t * t;
    };
    return sent(wall) - sent(room);
}

}  // namespace

std::span<const ColumnInfo> Window::columns() {
    static constexpr std::array columns{
        ColumnInfo{"window_temperature", "K", table, "pane of each window, towards the fire"},
        ColumnInfo{"window_light", "W", table, "what shines through each window"},
    };
    return columns;
}

double black_share_below(double wavelength, double temperature) {
    const double x = 1.438777e-2 / (wavelength * temperature);
    double sum = 0;
    for (int n = 1; n <= 30; ++n)
        sum += std::exp(-n * x) / n *
               (x * x * x + 3 * x * x / n + 6 * x / (n * n) + 6.0 / (n * n * n));
    return 15 / std::pow(constants::pi, 4) * sum;
}

double let_through(double temperature) {
    const double below = black_share_below(clear_until, temperature);
    return clear * below + dim * (black_share_below(dim_until, temperature) - below);
}

std::vector<FittingProblem> problems(const Window& window, const Stove& stove) {
    if (!stove.tunnel) return {{{"width"}, "a window stands in a tunnel's side: add [tunnel]"}};
    if (window.height > stove.tunnel->fire_height())
        return {{{"height"}, "the window is higher than the firebox"}};
    if (window.width > stove.tunnel->length / 2)
        return {
            {{"width"}, "the window is wider than half the tunnel is long: it stands by the fire"}};
    return {};
}

void add_fitting(StoveBuilder& builder, const Window& window) {
    Network& network = builder.network;
    Layout& layout = builder.layout;
    const std::string name = "window." + window.name;
    const double area = window.width * window.height;
    const double emissivity = builder.material(std::string(glass)).emissivity;
    const Wall pane = add_wall(builder, {.name = name,
                                         .layers = {{std::string(glass), window.thickness}},
                                         .face_area = area,
                                         .temperature = builder.stove.site.room,
                                         .held_face = {}});
    add_outer_face(builder, {.name = name,
                             .solids = {pane.back},
                             .area = {area},
                             .emissivity = emissivity,
                             .length = window.height});

    // It takes the place of lining, from the mouth on.
    OutsideFace& sides = outer_face(builder, "tunnel");
    builder.amend(*layout.tunnel, [&](GasPassageShape& shape) {
        double left = window.width;
        for (std::size_t i = 0; i < shape.cells.size() && left > 0; ++i) {
            const double width = std::min(left, shape.cells[i].length);
            const double here = width * window.height;
            const SolidId wall = layout.tunnel_wall.solids[i];
            for (WallFace& face : shape.cells[i].faces)
                if (face.solid == index(wall)) {
                    layout.panes.push_back({pane.face, wall, here / face.area});
                    face.area -= here;
                }
            sides.area[i] -= here;
            shape.cells[i].faces.push_back({index(pane.face), here, emissivity});
            left -= width;
        }
    });

    // The wall across from it warms the pane, and shines through it into the room.
    const SolidId across = layout.tunnel_wall.solids.front();
    const double exchange = area * emissivity;
    network.enclosures.push_back({.name = name,
                                  .patches = {{{pane.face, 1}}, {{across, 1}}},
                                  .exchange_area = {0, exchange, exchange, 0}});
    const double room = builder.stove.site.room;
    network.outside.push_back(
        {.name = name + ".light",
         .outdoors = false,
         .solids = {across},
         .area = {area},
         .flux = [room](double, std::span<const double> temperature, std::span<double> flux) {
             flux[0] = shining(temperature[0], room);
         }});

    layout.readings.push_back(
        {"window_temperature",
         [face = index(pane.face)](const HeatBalance& at) { return at.temperature()[face]; }});
    layout.readings.push_back(
        {"window_light", [wall = index(across), area, room](const HeatBalance& at) {
             return area * shining(at.temperature()[wall], room);
         }});
}

std::vector<FittingAnswer> answers(const Window&, const Stove&, std::size_t at,
                                   const Results& results) {
    const Series light(results, "window_light", at);
    return {
        {"most", "pane, at most", "K", peak(results, {results, "window_temperature", at}).value},
        {"light", "shone through", "J", integrate(results, light)}};
}

}  // namespace drawwell
