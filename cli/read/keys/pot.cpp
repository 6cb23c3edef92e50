#include "cli/read/keys/fields.h"

namespace drawwell {

std::vector<Key> pot_keys() {
    using namespace fields;
    using enum Quantity;
    return {
        {.name = "pot.NAME.diameter",
         .quantity = length,
         .fallback = "200 mm",
         .practice = true,
         .least = 0.05,
         .most = 1,
         .help = "across the pot's bottom",
         .field = fitted<&Pot::diameter>},
        {.name = "pot.NAME.height",
         .quantity = length,
         .fallback = "120 mm",
         .practice = true,
         .least = 0.01,
         .most = 1,
         .help = "height of its side",
         .field = fitted<&Pot::height>},
        {.name = "pot.NAME.off_centre",
         .quantity = length,
         .fallback = "0 mm",
         .most = 2,
         .help = "distance of its centre from the plate's",
         .field = fitted<&Pot::off_centre>},
        {.name = "pot.NAME.water",
         .quantity = mass,
         .fallback = "2 kg",
         .least = 0.05,
         .most = 100,
         .help = "water in it, or food that is mostly water; what boils off is topped up",
         .field = fitted<&Pot::water>},
        {.name = "pot.NAME.metal",
         .quantity = mass,
         .fallback = "1 kg",
         .practice = true,
         .least = 0.05,
         .most = 50,
         .help = "what pot and lid weigh empty, of steel",
         .field = fitted<&Pot::metal>},
        {.name = "pot.NAME.bottom",
         .kind = Kind::choice,
         .fallback = "ordinary",
         .choices = {"flat", "ordinary", "dented"},
         .help = "how near its bottom comes to the plate (contact); a bowed plate counts as dented",
         .field = fitted<&Pot::bottom>},
        {.name = "pot.NAME.lid",
         .kind = Kind::choice,
         .fallback = "on",
         .choices = {"on", "off"},
         .help = "whether its lid is on",
         .field = fitted<&Pot::open>},
    };
}

}  // namespace drawwell
