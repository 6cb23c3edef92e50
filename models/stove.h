#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "models/components/build_up.h"
#include "models/fittings/fitting.h"
#include "solver/steps.h"
#include "solver/table.h"

namespace drawwell {

// Every height is measured from the tunnel floor [m]. Lengths [m], temperatures [K], unless said.

struct Feed {
    double mouth = 0;  // height of the opening
    double width = 0, depth = 0;
    double free_share = 0;  // [-] share of the feed free of wood; 0: follows from the loads
    BuildUp lining;         // above the tunnel roof
    BuildUp foot_lining;    // below it, round the fire
};

struct Tunnel {
    double width = 0, height = 0;
    double length = 0;  // from the feed's centre to the riser's
    BuildUp lining;     // floor and sides
    BuildUp roof;
    // Where the fire lies it may be larger, from the feed's centre to a ledge; length 0: it is not.
    double firebox_width = 0, firebox_height = 0, firebox_length = 0;
    double ash = 0;  // depth of ash under the fire at lighting

    /// Section where the fire lies.
    double fire_width() const { return firebox_length > 0 ? firebox_width : width; }
    double fire_height() const { return firebox_length > 0 ? firebox_height : height; }
    /// Side [m] of a square as large.
    double fire_size() const { return std::sqrt(fire_width() * fire_height()); }
};

/// The throttle between tunnel and riser; with no tunnel, an orifice at the riser's foot.
struct Port {
    double width = 0, height = 0;
};

/// A row of holes or a slot that lets room air to the fire.
struct SideAir {
    double area = 0;    // [m2] of the whole opening
    double height = 0;  // of its centre
    std::string name;
    double slot_width = 0, slot_height = 0;  // of a slot
    int holes = 0;                           // of a row of holes, in place of a slot
    double hole_diameter = 0;
    bool outdoors = false;   // ducted: takes its air from outdoors, else from the room
    double duct_length = 0;  // of the duct from there, of the opening's area; 0: none
};

enum class LeakPlace { under_plate, flue_outlet, tunnel };

/// A joint that is not tight: room air that gets into the gas's way, or gas that gets out.
struct Leak {
    std::string name;
    double area = 0;  // [m2] open
    LeakPlace place = LeakPlace::under_plate;
};

struct Riser {
    double bore = 0;              // inner diameter; 0: a slot of width and depth
    bool octagonal = false;       // bore is then from flat to flat
    double width = 0, depth = 0;  // inner section of a slot or square riser
    double foot = 0;              // height of its foot; the tunnel's axis if there is a tunnel
    double top = 0;               // height of its upper end
    BuildUp lining;
    std::optional<double> wall_temperature;  // [K] inner faces held at this (bench tests)
    double soot = 0;                         // thickness of it on the inner faces
};

struct Barrel {
    double diameter = 0;
    double height = 0;  // hangs from the plate's underside
    BuildUp shell;
    BuildUp jacket = {};                    // round a part of the shell, from it outwards
    double jacket_from = 0, jacket_to = 0;  // heights of that part
    double soot = 0;                        // thickness on its inside, riser's skin and bypass
};

struct Plate {
    double diameter = 0;
    double thickness = 0;
    double underside = 0;  // height
    std::string material;
    double cover_resistance = 0.5;          // [m2 K/W] of a cover laid on it (schedule.plate_cover)
    bool clamped = false;                   // its rim can't turn; else it lies free
    std::optional<double> hole = {};        // diameter of a round hole in its middle
    std::optional<double> hole_cover = {};  // thickness of a loose cover of the plate's metal in it
};

/// A short cut from under the plate to the flue, with a damper of its own.
struct Bypass {
    double bore = 0;
    double length = 0;
    std::string into = {};  // flue section at whose start it joins; empty: at the flue outlet
};

struct FlueSection {
    std::string name;  // `stack`
    double length = 0;
    double rise = 0;  // [m] of its end over its start, positive upward; at most length
    double bore = 0;
    BuildUp wall;
    bool outdoors = false;
    double entry_angle = 0;  // [rad] of the bend before it
    bool tee = false;        // it begins at a tee's side, not at a bend
    double soot = 0;         // thickness on its inside
};

struct Flue {
    double outlet = 0;                  // height of its centre above the barrel's foot
    std::vector<FlueSection> sections;  // in the order the gas meets them
    double cap_loss = 0;                // [-] velocity heads lost in a cap, besides the exit
    std::string damper;                 // section at whose start a damper sits; empty: the first
};

/// How the pieces of a load stand, which decides how much of them is lit: apart, every side of
/// each; bundled, the outside of the bundle.
enum class Standing { apart, bundled };

/// Wood that is put in together; a load repeats at each of its times.
struct Load {
    std::string name;
    std::vector<double> times;  // [s] after lighting
    std::string kind;           // of wood
    int pieces = 1;
    double side = 0, length = 0;    // [m] of a square piece
    double moisture_wet_basis = 0;  // [-]
    double mass = 0;                // [kg] as fired, all pieces together
    Standing standing = Standing::apart;
};

enum class KindlingPlace { riser_foot, feed, flue };

struct Kindling {
    double mass = 0;  // [kg] as fired
    double side = 0.012;
    std::string kind;
    double moisture_wet_basis = 0.12;
    KindlingPlace place = KindlingPlace::riser_foot;
    bool by_default = false;  // nobody asked for it: it is there because loads are
};

/// Where the stove stands.
struct Site {
    double room = 293.15;            // [K]
    Table outdoor{278.15};           // [K] over time [s] after lighting
    double pressure = 101325;        // [Pa] of the outdoor air at the tunnel floor
    Table wind{0.0};                 // [m/s] at the flue's top, over time
    double wind_factor = 0;          // [-] share of the wind's pressure pushing into the flue's top
    Table gust{0.0};                 // [m/s] of gusts there, over time; 0: none
    double gust_factor = 0.3;        // [-] share of a gust's pressure that pushes in at worst
    double wind_at_stove = 0;        // [m/s]
    Table room_suction{0.0};         // [Pa] by which the room is below outdoors, over time
    double room_suction_height = 0;  // where that holds
    double room_loss = 0;            // [W/K] the room loses to outdoors; 0: not given
    double room_volume = 0;          // [m3] of the room; 0: not given, it stays as warm as it is
};

/// What is moved by hand during a burn, over time [s] after lighting. Of dampers and openings the
/// share [-] that is left open, of covers the share that they cover.
struct Schedule {
    Steps damper{1.0};
    Steps bypass{0.0};
    Steps port{1.0};  // an insert narrows it
    Steps side_air{1.0};
    Steps feed_cover{0.0};
    Steps plate_cover{0.0};
};

struct Burn {
    std::optional<double> lit_at;  // [s] after midnight, by the clock
    double duration = 3 * 3600.0;  // [s]
    double output_every = 30;      // [s]
    double reserve_every = 60;     // [s]; 0: reserve draw is not computed
    double sustained_every = 900;  // [s]; 0: the sustained push is not computed
    double tolerance = 2e-4;       // [-] relative, of each step
    double refine = 1;             // [-] multiplies the number of cells everywhere
};

/// What a stove file says, in SI. Parts that are absent are not in the gas's way.
struct Stove {
    std::string title;
    std::optional<Feed> feed;
    std::optional<Tunnel> tunnel;
    std::optional<Port> port;
    std::vector<SideAir> side_air;
    std::vector<Leak> leaks;
    Riser riser;
    std::optional<Barrel> barrel;
    std::optional<Plate> plate;
    std::optional<Bypass> bypass;
    std::vector<Fitting> fittings;
    Flue flue;  // without sections, the gas leaves where the part before it ends
    std::vector<Load> loads;
    std::optional<Kindling> kindling;
    std::optional<Table> heat_source;  // [W] against time [s]: plain heat instead of wood
    std::optional<Table> burn_rate;    // [kg/s] of wood as fired against time [s], instead of loads
    std::string wood_kind = "ash";     // for the burn-rate table
    double wood_moisture_wet_basis = 0.16;
    Site site;
    Schedule schedule;
    Burn burn;

    /// Height of the barrel's foot [m]; needs barrel and plate.
    double barrel_foot() const { return plate->underside - barrel->height; }
    /// Height [m] of the axis along which the gas goes from the hearth to the riser.
    double axis_height() const { return tunnel ? tunnel->height / 2 : riser.foot; }
    /// Length [m] of the fire along the tunnel, which must be there. Without a feed it lies at the
    /// tunnel's mouth, as deep as it is wide: our choice.
    double fire_depth() const { return feed ? feed->depth : tunnel->fire_width(); }
    /// Where the fire ends towards the riser [m], from the feed's centre.
    double fire_front() const {
        return std::min(feed ? fire_depth() / 2 : fire_depth(), tunnel->length);
    }
    /// Floor [m2] under the fire.
    double fire_floor() const {
        return tunnel->fire_width() * (fire_front() + (feed ? fire_depth() / 2 : 0));
    }
    /// Height [m] at which the gas leaves for the flue.
    double outlet_height() const { return barrel ? barrel_foot() + flue.outlet : riser.top; }
};

}  // namespace drawwell
