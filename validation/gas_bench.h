#pragma once

#include <string>
#include <vector>

#include "models/components/gas_passage.h"
#include "models/gas/gas_model.h"
#include "solver/network.h"

namespace drawwell {

/// Gas passages without a stove round them: room at one end, outdoors at the other, held walls.
struct GasBench {
    explicit GasBench(double air_temperature);

    /// A wall that keeps its temperature [K].
    std::size_t add_wall(double temperature);
    JunctionId add_junction(const std::string& name);
    void add_passage(JunctionId from, JunctionId to, GasPassageShape shape, bool inlet = false);

    GasState air(double temperature) const;
    double temperature(const GasState& gas) const { return network.gas_temperature(gas); }

    Network network;
    GasSurroundings surroundings;
    JunctionId room{}, outdoors{};
};

/// A duct of equal cells, without friction or losses, its walls those given or none.
GasPassageShape plain_duct(double bore, double length, double rise, std::size_t cells);

}  // namespace drawwell
