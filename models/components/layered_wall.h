#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "models/components/stove_builder.h"

namespace drawwell {

/// A stretch of wall to be divided into cells.
struct WallShape {
    std::string name;
    BuildUp layers;                   // from the gas outwards
    double face_area = 0;             // [m2] at the gas
    double face_radius = 0;           // [m] of curvature at the gas; 0: flat
    double temperature = 293.15;      // [K] at first
    std::optional<double> held_face;  // [K] face kept at this temperature
};

/// Emissivity of faces that flue gas has sooted: lampblack 0.95 to 0.97 in thermographic tables.
inline constexpr double sooted_emissivity = 0.95;

/// Its two faces. A face cell is half as thick as its neighbours and its node stands on the face,
/// so that its temperature is the surface's; a metal sheet is one cell with both faces.
struct Wall {
    SolidId face{}, back{};
    std::vector<SolidId> layer_backs;  // outermost cell of each layer
    double back_area = 0;              // [m2]
    double face_emissivity = 0, back_emissivity = 0;
};

Wall add_wall(StoveBuilder& builder, const WallShape& shape);

/// Which way an outer face looks, for the air that cools it.
enum class Facing { upright, upright_pipe, level_pipe, up };

/// An outer face that loses heat to room or outdoors.
struct OuterFace {
    std::string name;
    std::vector<SolidId> solids;
    std::vector<double> area;  // [m2]
    double emissivity = 0.9;
    Facing facing = Facing::upright;
    double length = 1;    // [m] height, or diameter of a level pipe or plate
    double diameter = 0;  // [m] of an upright pipe
    bool outdoors = false;
    Steps cover{0.0};             // [-] share covered over time [s]
    double cover_resistance = 0;  // [m2 K/W] of that cover
};

void add_outer_face(StoveBuilder& builder, OuterFace face);

/// The outer face of that name, which must be there; what a fitting covers, it takes from its area.
OutsideFace& outer_face(StoveBuilder& builder, std::string_view name);

}  // namespace drawwell
