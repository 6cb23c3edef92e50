#pragma once

#include <functional>
#include <memory>
#include <vector>

#include "models/components/stove_builder.h"
#include "models/fire/fuel_bed.h"
#include "models/fire/wood_fire.h"
#include "models/library.h"
#include "models/stove.h"
#include "solver/network.h"

namespace drawwell {

/// A stove turned into a network, and where its parts went.
struct BuiltStove {
    Network network;
    Layout layout;
    std::shared_ptr<const GasModel> gas;
    SolidFuel fuel;
    const WoodFire* fire = nullptr;  // owned by the network
    const FuelBed* bed = nullptr;    // the same, where wood is put in as loads

    struct LoadTime {
        double time = 0;  // [s]
        std::size_t lot = 0;
    };
    std::vector<LoadTime> load_times;                // increasing
    double pressure = 0;                             // [Pa] of the air
    std::function<double(double time)> outdoor_air;  // its density [kg/m3] at a time [s]
};

/// InputError: a part that the network needs is missing, or a material or wood is unknown.
BuiltStove build_network(const Stove& stove, const Library& library);

}  // namespace drawwell
