#include "cli/read/keys/fields.h"

namespace drawwell {

std::vector<Key> grid_keys() {
    using namespace fields;
    using enum Quantity;
    return {
        {.name = "grid.NAME.wire",
         .quantity = length,
         .fallback = "3 mm",
         .practice = true,
         .least = 3e-4,
         .most = 0.02,
         .help = "diameter of the wires of a grid across the tunnel's mouth",
         .field = fitted<&Grid::wire>},
        {.name = "grid.NAME.pitch",
         .quantity = length,
         .fallback = "15 mm",
         .practice = true,
         .least = 1e-3,
         .most = 0.2,
         .help = "from wire to wire, centre to centre",
         .field = fitted<&Grid::pitch>},
    };
}

}  // namespace drawwell
