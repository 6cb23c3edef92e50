#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "models/components/gas_passage.h"
#include "models/fire/solid_fuel.h"
#include "models/fittings/reading.h"
#include "models/library.h"
#include "models/stove.h"
#include "solver/network.h"

namespace drawwell {

/// Solids along a part, and where each stands [m]: height, or distance from the plate's axis.
struct SolidRow {
    std::vector<SolidId> solids;
    std::vector<double> position;

    /// Where the cells of a row that begins at `from` end [m], that first.
    std::vector<double> ends(double from) const;
};

/// Where a section of the flue begins.
struct FlueStart {
    JunctionId junction{};
    double height = 0;  // [m]
};

/// Glass that stands in place of a share [-] of what is left of a wall.
struct Pane {
    SolidId glass{}, wall{};
    double share = 0;
};

/// Where something lies on a ring of the plate.
struct PlateContact {
    std::size_t ring = 0;
    SolidId body{};
    double conductance = 0;  // [W/K]
    Steps there{1.0};        // [-] 0 while it is off the plate
};

/// Where the parts of a stove went in its network; absent parts are empty.
struct Layout {
    std::optional<std::size_t> feed, tunnel, riser, turn, annulus;  // passages
    std::optional<std::size_t> bypass;                              // passage
    std::vector<std::size_t> side_air, flue, leaks;                 // passages
    std::vector<JunctionId> room_air;                               // boundaries in the room
    JunctionId hearth{}, riser_foot{}, riser_end{}, under_plate{}, flue_outlet{}, outlet{},
        terminal{};

    std::optional<std::size_t> feed_free_area;  // setting [m2]
    std::optional<std::size_t> ash_depth;       // setting [m] of ash under the fire
    std::optional<std::size_t> feed_open;       // setting [-] that a cover leaves
    double riser_area = 0, flue_area = 0;       // [m2] for the gas, at their feet
    bool flue_rises = false;                    // from its outlet on
    double flue_height = 0;                     // [m] at which the flue begins
    double flue_way = 0;                        // [m] gas has gone from the flue outlet to there
    JunctionId flue_foot{};                     // where it begins
    std::vector<FlueStart> flue_starts;         // of its sections

    SolidRow feed_wall, tunnel_wall, tunnel_roof, hearth_wall, riser_inside, riser_skin, barrel,
        plate, flue_wall;
    std::vector<Pane> panes;
    std::vector<Reading> readings;       // of fittings
    std::vector<double> plate_edge;      // [m] radii of the rings' edges, one more than rings
    std::size_t hole_rings = 0;          // rings that lie in the plate's hole
    std::string hole_pot;                // pot whose bottom they are; empty: a cover
    std::vector<PlateContact> on_plate;  // of all that lies on it
    bool bow_told = false;               // how far heat bows the plate is among the readings
    std::vector<std::string> material;   // of each solid
    std::vector<double> riser_gas_height, annulus_gas_height, flue_gas_way;  // [m] of gas cells
};

/// Whether something is ever anywhere but at rest [-]; what is not needs no handle.
bool is_moved(const Steps& steps, double rest);

/// Pressure [Pa] of the room's air at a time [s] and height [m], over the outdoor column there.
using RoomPressure = std::function<double(double time, double height)>;

/// Collects a stove's network. Parts add themselves through it; it knows the site, the materials
/// and how finely to divide.
class StoveBuilder {
  public:
    /// Writes what is different at a time [s] of the burn.
    using Change = std::function<void(double time, Surroundings& around)>;

    StoveBuilder(const Stove& stove, const Library& library, const SolidFuel& fuel);

    const Stove& stove;
    const Library& library;
    Network network;
    Layout layout;
    GasSurroundings gas;

    double room_density = 0;                         // [kg/m3]
    std::function<double(double time)> outdoor_air;  // its density [kg/m3] at a time [s]
    RoomPressure room_pressure;

    /// Number of cells for a part that has `usual` of them by default.
    std::size_t cells(double usual) const;
    /// The material of that name. InputError: there is none.
    const Material& material(const std::string& name) const;

    SolidId add_solid(const std::string& name, const std::string& material, double volume,
                      double temperature);
    JunctionId add_junction(const std::string& name);
    /// A boundary that holds room air at a height [m].
    JunctionId add_room_air(const std::string& name, double height);
    /// A boundary that holds outdoor air, at a pressure [Pa] over time.
    JunctionId add_outdoors(const std::string& name, std::function<double(double time)> pressure);
    /// Air for the fire, from outdoors (at rest there) or from the room at the axis's height.
    JunctionId add_air_for_fire(const std::string& inlet, bool outdoors);
    std::size_t add_passage(const std::string& name, JunctionId from, JunctionId to,
                            GasPassageShape shape, bool inlet = false);
    /// Makes a passage anew from its shape as changed.
    void amend(std::size_t passage, const std::function<void(GasPassageShape& shape)>& change);
    /// A quantity that passages look up at each crossing; the fire may set it anew.
    std::size_t add_setting(double value);
    /// Something else that differs over the burn. Pure.
    void add_change(Change change);
    /// A setting over time: the share [-] that a damper or insert leaves open. Nothing shuts tight.
    std::size_t add_open_share(const Steps& open);

  private:
    struct Made {
        std::shared_ptr<const EnthalpyCurve> curve;
        std::shared_ptr<const Table> conductivity;
    };
    std::map<std::string, Made> made_;
    JunctionId add_end(const std::string& name, const Table& temperature,
                       std::function<double(double time)> pressure, bool steady);

    std::shared_ptr<std::vector<Change>> changes_ = std::make_shared<std::vector<Change>>();
};

}  // namespace drawwell
