#include "models/components/layered_wall.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "models/laws/outside.h"
#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double metal_from = 10;      // [W/(m K)] conducts well enough for one cell
constexpr double usual_cells = 5;      // of a layer
constexpr double least_cell = 2.5e-3;  // [m] thinner layers get fewer cells

std::size_t cells_of(const StoveBuilder& builder, const Layer& layer) {
    if (builder.material(layer.material).conductivity.y().front() > metal_from) return 1;
    const double fitting = std::floor(layer.thickness / least_cell);
    return builder.cells(std::min(usual_cells, std::max(2.0, fitting)));
}

/// Conduction shape [m] between two depths behind the gas face.
double shape_between(const WallShape& wall, double from, double to) {
    if (wall.face_radius <= 0) return wall.face_area / (to - from);
    const double ratio = (wall.face_radius + to) / (wall.face_radius + from);
    return wall.face_area / wall.face_radius / std::log(ratio);
}

double area_at(const WallShape& wall, double depth) {
    return wall.face_radius > 0 ? wall.face_area * (1 + depth / wall.face_radius) : wall.face_area;
}

}  // namespace

Wall add_wall(StoveBuilder& builder, const WallShape& shape) {
    if (shape.layers.empty()) throw InputError(shape.name + ": a wall needs at least one layer");
    Wall wall;
    double depth = 0, node_before = 0;
    bool any = false;
    for (std::size_t l = 0; l < shape.layers.size(); ++l) {
        const Layer& layer = shape.layers[l];
        const std::size_t count = cells_of(builder, layer);
        const double halves =
            count > 1 ? (l == 0 ? 0.5 : 0.0) + (l + 1 == shape.layers.size() ? 0.5 : 0.0) : 0.0;
        const double usual = layer.thickness / (static_cast<double>(count) - halves);
        for (std::size_t c = 0; c < count; ++c) {
            const bool on_face = count > 1 && l == 0 && c == 0;
            const bool on_back = count > 1 && l + 1 == shape.layers.size() && c + 1 == count;
            const double width = on_face || on_back ? usual / 2 : usual;
            const double node = depth + (on_face ? 0 : on_back ? width : width / 2);
            const SolidId id = builder.add_solid(
                shape.name + "." + std::to_string(l) + "." + std::to_string(c), layer.material,
                width * area_at(shape, depth + width / 2), shape.temperature);
            if (any)
                builder.network.links.push_back(
                    {.a = wall.back,
                     .b = id,
                     .shape_a = depth > node_before ? shape_between(shape, node_before, depth)
                                                    : 1e9,  // node and boundary coincide
                     .shape_b = node > depth ? shape_between(shape, depth, node) : 1e9});
            else
                wall.face = id;
            any = true;
            wall.back = id;
            node_before = node;
            depth += width;
        }
        wall.layer_backs.push_back(wall.back);
    }
    wall.back_area = area_at(shape, depth);
    wall.face_emissivity = builder.material(shape.layers.front().material).emissivity;
    wall.back_emissivity = builder.material(shape.layers.back().material).emissivity;
    if (shape.held_face) {
        Solid& face = builder.network.solids[index(wall.face)];
        face.held = true;
        face.initial_temperature = *shape.held_face;
    }
    return wall;
}

void add_outer_face(StoveBuilder& builder, OuterFace face) {
    const Site& site = builder.stove.site;
    const auto film = [facing = face.facing, length = face.length, diameter = face.diameter](
                          double t, double air, double wind) {
        switch (facing) {
            case Facing::upright_pipe:
                return upright_pipe_outside(t, air, {length, diameter}, wind);
            case Facing::level_pipe:
                return cylinder_outside(t, air, length, wind);
            case Facing::up:
                return horizontal_up_outside(t, air, length, wind);
            case Facing::upright:
                break;
        }
        return vertical_outside(t, air, length, wind);
    };
    const Table air = face.outdoors ? site.outdoor : Table(site.room);
    const Table wind = face.outdoors ? site.wind : Table(site.wind_at_stove);
    const auto bare = [film, emissivity = face.emissivity](double t, double around, double blow) {
        const double cold = around * around * around * around;
        return film(t, around, blow) * (t - around) +
               emissivity * constants::stefan_boltzmann * (t * t * t * t - cold);
    };
    // Under a cover the heat first crosses it; its top loses what arrives there.
    const auto covered = [bare, resistance = face.cover_resistance](double t, double around,
                                                                    double blow) {
        double low = std::min(t, around), high = std::max(t, around);
        for (int i = 0; i < 30; ++i) {
            const double middle = (low + high) / 2;
            (bare(middle, around, blow) > (t - middle) / resistance ? high : low) = middle;
        }
        return (t - low) / resistance;
    };
    builder.network.outside.push_back(
        {.name = face.name,
         .outdoors = face.outdoors,
         .solids = std::move(face.solids),
         .area = std::move(face.area),
         .flux = [bare, covered, air, wind, cover = face.cover](
                     double time, std::span<const double> temperature, std::span<double> flux) {
             const double around = air(time), blow = wind(time);
             const double share = cover(time);
             for (std::size_t i = 0; i < temperature.size(); ++i) {
                 flux[i] = share < 1 ? (1 - share) * bare(temperature[i], around, blow) : 0;
                 if (share > 0) flux[i] += share * covered(temperature[i], around, blow);
             }
         }});
}

OutsideFace& outer_face(StoveBuilder& builder, std::string_view name) {
    auto& faces = builder.network.outside;
    const auto found = std::find_if(faces.begin(), faces.end(),
                                    [&](const OutsideFace& face) { return face.name == name; });
    if (found == faces.end()) throw InputError("no outer face is called " + std::string(name));
    return *found;
}

}  // namespace drawwell
