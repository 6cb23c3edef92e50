#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

#include "models/fire/flame.h"
#include "models/gas/gas_model.h"
#include "solver/passage.h"

namespace drawwell {

/// A wall that a gas cell touches.
struct WallFace {
    std::size_t solid = 0;
    double area = 0;        // [m2]
    double emissivity = 0;  // [-]
};

/// The shape of one gas cell, from the passage's start to its end.
struct GasCellShape {
    double length = 0;              // [m] along the gas
    double rise = 0;                // [m] of its end over its start
    double area = 0;                // [m2] for the gas
    double hydraulic_diameter = 0;  // [m]
    double beam_length = 0;         // [m] mean, for gas radiation
    double radius = 0;              // [m] from the axis of the jet; only under the plate
    double floor = 0;               // [m] width of it on which ash lies
    bool stirred = false;           // mixed all through, else in plug flow
    std::vector<WallFace> faces;
};

/// Pressure lost at an end of a passage, in velocity heads of `area`.
struct LocalLoss {
    bool at_end = false;
    double area = 0;                  // [m2]
    double forward = 0, reverse = 0;  // [-] coefficient with and against the passage's direction
    double bend = 0;                  // [-] of a mitre bend in fast flow, either way
    double low_reynolds = 0;          // [-] over the Reynolds number, added
    double opens_into = 0;            // [m2] duct that `area` widens into, abruptly; 0: none
    bool follows_free_area = false;   // `area` is a share [-] of the passage's free area setting
    /// Setting [-]: share of `area` left open by a damper, insert or cover. The opening is then a
    /// sharp one (port_loss) in place of `forward` and `reverse`.
    std::optional<std::size_t> open = {};
    double share_before = 1, share_after = 1;  // [-] fully open, of the ducts before and after it
    std::optional<std::size_t> after_cell =
        {};  // where it sits within the passage, if not at an end
};

/// How the film on the walls is worked out.
enum class Film { duct, annulus, jet, chamber };

/// Everything that a passage is made from.
struct GasPassageShape {
    std::vector<GasCellShape> cells;
    std::vector<LocalLoss> losses;
    Film film = Film::duct;
    double laminar_constant = 64;  // [-] friction factor times Reynolds number
    double roughness = 1e-3;       // [m] sand roughness
    bool friction = true;
    double film_length = 0;  // [m] annulus, chamber: height of its walls; jet: bore of the riser
    double jet_gap = 0;      // [m] between the riser's top and the plate
    double jet_area = 0;     // [m2] of the riser
    std::optional<std::size_t> free_area;  // setting [m2] in place of the cells' area
    std::optional<std::size_t> ash;        // setting [m] depth of ash on the cells' floor
};

/// The air around and the gas model, the same for every passage of a stove.
struct GasSurroundings {
    std::shared_ptr<const GasModel> model;
    double pressure = 0;                                      // [Pa]
    double outdoor_density = 0;                               // [kg/m3] at first
    std::optional<std::size_t> outdoor_density_setting = {};  // [kg/m3] where it changes
    FlameLimits flame;
    double radiant_fraction = 0;  // [-] of the heat set free, radiated to the walls by the flame
    double flame_absorption = 0;  // [1/m] of luminous flame
    double flame_temperature = 1400;  // [K] that walls round a flame can reach by its radiation
};

/// Any stretch of gas: burning, cooling, rising, losing pressure. Plug flow, cell by cell.
class GasPassage final : public PassageLaw {
  public:
    GasPassage(GasPassageShape shape, GasSurroundings surroundings);

    std::size_t cell_count() const override { return shape_.cells.size(); }
    const std::vector<Touch>& touches() const override { return touches_; }
    Crossing cross(const PassageInput& input, PassageRecord record) const override;
    const GasPassageShape& shape() const { return shape_; }

  private:
    template <class FilmLaw>
    Crossing march(const PassageInput& input, PassageRecord record, FilmLaw film) const;

    GasPassageShape shape_;
    GasSurroundings surroundings_;
    Mixture air_;
    std::vector<Touch> touches_;
    std::vector<std::size_t> first_touch_;  // of each cell
    std::vector<double> rough_;             // [-] haaland_roughness of each cell
};

}  // namespace drawwell
