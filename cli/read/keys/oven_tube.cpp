#include "cli/read/keys/fields.h"

namespace drawwell {

std::vector<Key> oven_tube_keys() {
    using namespace fields;
    using enum Quantity;
    return {
        {.name = "oven_tube.NAME.bore",
         .quantity = length,
         .required = true,
         .least = 0.03,
         .most = 1,
         .help = "inner diameter of the tube, which lies level between riser and barrel",
         .field = fitted<&OvenTube::bore>},
        {.name = "oven_tube.NAME.height",
         .quantity = length,
         .required = true,
         .least = 0.02,
         .most = 5,
         .help = "height of its axis above the tunnel floor",
         .field = fitted<&OvenTube::height>},
        {.name = "oven_tube.NAME.wall",
         .kind = Kind::build_up,
         .quantity = length,
         .fallback = "1.5 mm mild_steel",
         .practice = true,
         .help = "its wall, from the oven outwards",
         .field = fitted<&OvenTube::wall>},
        {.name = "oven_tube.NAME.food",
         .quantity = mass,
         .fallback = "0.5 kg",
         .practice = true,
         .least = 0.05,
         .most = 50,
         .help = "what is baked in it, tins included",
         .field = fitted<&OvenTube::food>},
        {.name = "oven_tube.NAME.food_water",
         .quantity = share,
         .fallback = "40 %",
         .practice = true,
         .most = 1,
         .help = "share of the food that is water",
         .field = fitted<&OvenTube::food_water>},
        {.name = "oven_tube.NAME.door_gap",
         .quantity = area,
         .fallback = "200 mm2",
         .practice = true,
         .most = 0.01,
         .help = "gap left open round each door (leak)",
         .field = fitted<&OvenTube::door_gap>},
    };
}

}  // namespace drawwell
