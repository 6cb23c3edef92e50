#include "models/fittings/lump.h"

#include <memory>

namespace drawwell {

SolidId add_lump(StoveBuilder& builder, const Lump& lump) {
    std::vector<Solid>& solids = builder.network.solids;
    solids.push_back({.name = lump.name,
                      .curve = std::make_shared<EnthalpyCurve>(Table(lump.heat_capacity)),
                      .conductivity = std::make_shared<Table>(1.0),
                      .mass = lump.mass,
                      .initial_temperature = builder.stove.site.room});
    builder.layout.material.emplace_back();  // none that wears
    return SolidId{solids.size() - 1};
}

}  // namespace drawwell
