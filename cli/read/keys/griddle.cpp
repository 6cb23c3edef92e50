#include "cli/read/keys/fields.h"

namespace drawwell {

std::vector<Key> griddle_keys() {
    using namespace fields;
    using enum Quantity;
    return {
        {.name = "griddle.NAME.diameter",
         .quantity = length,
         .required = true,
         .least = 0.05,
         .most = 2,
         .help = "across a round griddle (slab of metal laid on the plate); of a square one, 1.13 "
                 "of its side",
         .field = fitted<&Griddle::diameter>},
        {.name = "griddle.NAME.thickness",
         .quantity = length,
         .fallback = "12 mm",
         .practice = true,
         .least = 0.002,
         .most = 0.1,
         .help = "thickness of the slab",
         .field = fitted<&Griddle::thickness>},
        {.name = "griddle.NAME.off_centre",
         .quantity = length,
         .fallback = "0 mm",
         .most = 2,
         .help = "distance of its centre from the plate's",
         .field = fitted<&Griddle::off_centre>},
        {.name = "griddle.NAME.material",
         .kind = Kind::material,
         .fallback = "mild_steel",
         .practice = true,
         .help = "what the griddle is made of",
         .field = fitted<&Griddle::material>},
        {.name = "griddle.NAME.bottom",
         .kind = Kind::choice,
         .fallback = "ordinary",
         .choices = {"flat", "ordinary", "dented"},
         .help = "how near its underside comes to the plate (contact)",
         .field = fitted<&Griddle::bottom>},
    };
}

}  // namespace drawwell
