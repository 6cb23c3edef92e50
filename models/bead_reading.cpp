#include "models/bead_reading.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>

#include "models/components/duct_shape.h"
#include "models/series.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double finest = 2;  // [s] over which what surrounds the bead counts as constant

/// A cell of a wall's column, and by how much it counts in what the bead sees.
struct SeenWall {
    Series wall;
    double share;
};

struct Surroundings {
    double area = 0;  // [m2] of the duct
    std::vector<SeenWall> walls;
};

std::span<const double> positions(const Results& results, std::string_view axis) {
    for (const Axis& each : results.axes)
        if (each.name == axis) return each.positions;
    return {};
}

std::size_t nearest(std::span<const double> all, double position) {
    const auto found = std::min_element(all.begin(), all.end(), [&](double a, double b) {
        return std::abs(a - position) < std::abs(b - position);
    });
    return static_cast<std::size_t>(found - all.begin());
}

double round_area(double bore) {
    return constants::pi * bore * bore / 4;
}

/// Section [m2] of the flue at a way from its outlet; the last one's beyond.
double flue_area(const Stove& stove, double way) {
    double end = 0;
    for (const FlueSection& section : stove.flue.sections) {
        end += section.length;
        if (way <= end) return round_area(section.bore);
    }
    return stove.flue.sections.empty() ? riser_section(stove.riser).area
                                       : round_area(stove.flue.sections.back().bore);
}

void add_wall(const Results& results, std::string_view name, std::size_t cell, double share,
              Surroundings& around) {
    const Series wall(results, name, cell);
    if (wall && cell < wall.width()) around.walls.push_back({wall, share});
}

Surroundings surroundings(const Results& results, const Stove& stove, std::string_view column,
                          std::size_t cell) {
    Surroundings around;
    around.area = riser_section(stove.riser).area;
    if (column == "tunnel_gas_temperature") {
        if (stove.tunnel) around.area = stove.tunnel->width * stove.tunnel->height;
        add_wall(results, "tunnel_wall_temperature", cell, 1, around);
    } else if (column == "riser_gas_temperature") {
        add_wall(results, "riser_wall_temperature", cell, 1, around);
    } else if (column == "annulus_gas_temperature") {
        const auto annulus = positions(results, "annulus_cell");
        const double height = cell < annulus.size() ? annulus[cell] : 0;
        double outer = riser_section(stove.riser).equal_bore();
        for (const Layer& layer : stove.riser.lining) outer += 2 * layer.thickness;
        if (stove.barrel)
            around.area = std::max(round_area(stove.barrel->diameter) - round_area(outer), 1e-4);
        for (const auto& [name, axis] : {std::pair{"riser_skin_temperature", "riser_cell"},
                                         std::pair{"barrel_temperature", "barrel_cell"}})
            if (const auto all = positions(results, axis); !all.empty())
                add_wall(results, name, nearest(all, height), 0.5, around);
    } else {
        const auto ways = positions(results, "flue_cell");
        std::size_t at = cell;
        if (column == "outlet_gas_temperature") at = 0;
        if (column == "flue_top_temperature") at = ways.empty() ? 0 : ways.size() - 1;
        around.area = flue_area(stove, at < ways.size() ? ways[at] : 0);
        add_wall(results, "flue_wall_temperature", at, 1, around);
    }
    return around;
}

/// Of walls that are seen in shares, the one temperature [K] that radiates as much.
double seen_temperature(const Surroundings& around, std::size_t i, double gas) {
    double sum = 0, shares = 0;
    for (const SeenWall& each : around.walls) {
        sum += each.share * std::pow(each.wall[i], 4);
        shares += each.share;
    }
    return shares > 0 ? std::pow(sum / shares, 0.25) : gas;
}

}  // namespace

bool is_gas_temperature(std::string_view column) {
    return column == "tunnel_gas_temperature" || column == "riser_gas_temperature" ||
           column == "annulus_gas_temperature" || column == "flue_gas_temperature" ||
           column == "flue_top_temperature" || column == "outlet_gas_temperature";
}

std::vector<double> bead_readings(const Results& results, const Stove& stove,
                                  std::string_view column, std::size_t cell, const Bead& bead) {
    const Series gas(results, column, cell), flow(results, "flue_gas_flow");
    std::vector<double> reading;
    if (!gas) return reading;
    const Surroundings around = surroundings(results, stove, column, cell);
    double temperature = gas[0];
    reading.push_back(temperature);
    for (std::size_t i = 1; i < results.time.size(); ++i) {
        const double span = results.time[i] - results.time[i - 1];
        const double from = seen_temperature(around, i - 1, gas[i - 1]),
                     to = seen_temperature(around, i, gas[i]);
        const int parts = std::max(1, static_cast<int>(std::ceil(span / finest)));
        for (int k = 0; k < parts; ++k) {
            const double share = (k + 0.5) / parts;
            const auto between = [share](double a, double b) { return a + share * (b - a); };
            BeadPlace place{between(gas[i - 1], gas[i]), between(from, to), 0};
            const double stream = flow ? between(flow[i - 1], flow[i]) : 0;
            if (bead.diameter > 0)
                place.film = bead_film(bead.diameter, stream / around.area, place.gas);
            temperature = later_bead(bead, place, temperature, span / parts);
        }
        reading.push_back(bead.diameter > 0 ? temperature : gas[i]);
    }
    return reading;
}

}  // namespace drawwell
