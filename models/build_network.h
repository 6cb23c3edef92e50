#pragma once

#include <functional>
#include <memory>
#include <vector>

#include "models/components/stove_builder.h"
#include "models/fire/fuel_bed.h"
#include "models/fire/wood_fire.h"
#include "models/library.h"
#include "models/saved_state.h"
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
    RoomPressure room_pressure;
};

/// The stove cold, or as an earlier run of it ended. The wood that run left becomes lots of this
/// one, made of this burn's mean fuel; what a burn-rate table or plain heat cannot burn is left
/// out. InputError: a part that the network needs is missing, a material or wood is unknown, or
/// that run was of another stove.
BuiltStove build_network(const Stove& stove, const Library& library,
                         const SavedState* from = nullptr);

}  // namespace drawwell
