#include "cli/read/keys/fields.h"

namespace drawwell {

std::vector<Key> damp_keys() {
    using namespace fields;
    using enum Quantity;
    return {
        {.name = "damp.NAME.wall",
         .kind = Kind::text,
         .required = true,
         .help = "the part that must dry first: riser, feed, tunnel, flue.NAME or bell.NAME",
         .field = fitted<&Damp::wall>},
        {.name = "damp.NAME.water",
         .quantity = share,
         .fallback = "8 %",
         .practice = true,
         .least = 0.001,
         .most = 0.5,
         .help = "water in it at lighting, over the dry mass of each of its layers but metal",
         .field = fitted<&Damp::water>},
    };
}

}  // namespace drawwell
