#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "solver/enthalpy_curve.h"
#include "solver/fire.h"
#include "solver/passage.h"
#include "solver/table.h"

namespace drawwell {

class March;

enum class SolidId : std::size_t {};
enum class JunctionId : std::size_t {};
constexpr std::size_t index(SolidId id) {
    return static_cast<std::size_t>(id);
}
constexpr std::size_t index(JunctionId id) {
    return static_cast<std::size_t>(id);
}

/// A piece of wall. Its temperature follows from its enthalpy, which is the state.
struct Solid {
    std::string name;  // `riser.wall.3.0`
    std::shared_ptr<const EnthalpyCurve> curve;
    std::shared_ptr<const Table> conductivity;  // [W/(m K)] against temperature
    double mass = 0;                            // [kg]
    double initial_temperature = 0;             // [K]
    bool held = false;                          // keeps its temperature, whatever heat it takes
};

/// Conduction between two solids: 1/(1/(k_a shape_a) + 1/(k_b shape_b) + contact) [W/K].
struct ConductionLink {
    SolidId a{}, b{};
    double shape_a = 0, shape_b = 0;  // [m] area over the way from the cell's node to the boundary
    double contact = 0;               // [K/W] resistance between them
    /// Share [-] of it that holds at a time [s] and the solids' temperatures [K]; empty: all. Pure.
    std::function<double(double time, std::span<const double> temperature)> share = {};
};

/// Heat from solids to the surroundings, one call for all cells of a face.
struct OutsideFace {
    std::string name;
    bool outdoors = false;  // else the heat goes to the room
    std::vector<SolidId> solids;
    std::vector<double> area;  // [m2]
    std::size_t gauges = 0;    // of the solids, the last: their loss hangs on the others alone
    /// Flux [W/m2] leaving a face of that temperature [K] at a time [s].
    std::function<void(double time, std::span<const double> temperature, std::span<double> flux)>
        flux;
};

/// Gray surfaces that see each other. Patches are fixed in number; each spreads over solids.
struct RadiationEnclosure {
    struct Share {
        SolidId solid{};
        double weight = 0;  // [-] of the patch; the weights of a patch sum to one
    };
    std::string name;
    std::vector<std::vector<Share>> patches;
    std::vector<double> exchange_area;  // [m2] row-major; heat from i: sigma G_ij (T_i^4 - T_j^4)
};

/// Where passages meet, or where the network ends.
struct Junction {
    std::string name;
    bool boundary = false;
    double pressure = 0;  // [Pa] boundary: over the outdoor column at the same height
    GasState gas{};       // boundary: what enters there
};

/// What the network finds round it at an instant; it begins as the junctions and settings say.
struct Surroundings {
    std::vector<double> pressure;  // [Pa] of each junction that is a boundary
    std::vector<GasState> gas;     // that enters at each
    std::vector<double> settings;  // what is set from outside, unless the fire sets it
};

/// A stretch of the gas path between two junctions.
struct Passage {
    std::string name;
    JunctionId from{}, to{};
    bool inlet = false;  // its flow is one of the unknowns rather than a consequence
    std::unique_ptr<PassageLaw> law;
    std::size_t first_cell = 0;   // of its gas cells among all
    std::size_t first_touch = 0;  // of its touches among all
};

/// The stove as the solver sees it. Whole and immutable once built.
struct Network {
    std::vector<Solid> solids;
    std::vector<ConductionLink> links;
    std::vector<OutsideFace> outside;
    std::vector<RadiationEnclosure> enclosures;
    std::vector<Junction> junctions;
    std::vector<Passage> passages;
    std::unique_ptr<Fire> fire;
    std::vector<JunctionId> fire_sites;
    std::vector<double> settings;  // what is set from outside, unless the fire sets it
    /// Writes what differs at a time [s] into the surroundings; empty: nothing changes. Pure.
    std::function<void(double time, Surroundings& around)> change;
    std::vector<double> initial_fuel;
    /// Where cold gas falls too slowly onto hot while the first inlet's flow runs backward: the
    /// flow [kg/s] that the hot gas then sets up by itself; else 0. The march holds the instant.
    /// Empty: never. Pure.
    std::function<double(const March& march)> overturning;
    /// Enthalpy [J/kg] to temperature [K]; kept here because what gas is made of is not ours.
    std::function<double(const GasState&)> gas_temperature;
    /// Manufactured heat [W] added to each solid at a time [s]; empty but in verification.
    std::function<void(double time, std::span<double> heat)> extra_heat;

    std::size_t gas_cell_count = 0;
    std::size_t touch_count = 0;

    std::size_t state_count() const { return solids.size() + initial_fuel.size(); }
    /// Enthalpies [J] of the solids at their first temperature, then the fuel.
    std::vector<double> initial_state() const;
    /// Temperature [K] of each solid in that state; what stands there before is a guess.
    void temperatures(std::span<const double> state, std::span<double> temperature) const;
};

/// Numbers the gas cells and touches and checks that every part is joined and every index exists.
/// InputError names the part that is not.
Network finish(Network network);

}  // namespace drawwell
