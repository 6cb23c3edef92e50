#include "cli/read/keys/fields.h"

namespace drawwell {
namespace {

using Derived = std::optional<Value>;

const Bell* bell(const StoveDraft& draft, std::string_view name) {
    for (const Fitting& fitting : draft.stove.fittings)
        if (const Bell* held = std::get_if<Bell>(&fitting); held && held->name == name) return held;
    return nullptr;
}

Derived as_wide(const StoveDraft& draft, std::string_view name) {
    const Bell* held = bell(draft, name);
    return held ? Derived(held->width) : std::nullopt;
}
Derived as_bore(const StoveDraft& draft, std::string_view) {
    return equal_bore(draft.stove.riser);
}
Derived at_foot(const StoveDraft& draft, std::string_view) {
    return 0.05 + equal_bore(draft.stove.riser) / 2;
}

}  // namespace

std::vector<Key> bell_keys() {
    using namespace fields;
    using enum Quantity;
    return {
        {.name = "bell.NAME.diameter",
         .quantity = length,
         .fallback = "none",
         .most = 5,
         .help = "inner diameter of a round chamber between barrel and flue: a second barrel",
         .field = fitted<&Bell::diameter>},
        {.name = "bell.NAME.width",
         .quantity = length,
         .fallback = "none",
         .most = 5,
         .help = "inner width of a chamber of masonry between barrel and flue (bell)",
         .field = fitted<&Bell::width>},
        {.name = "bell.NAME.depth",
         .quantity = length,
         .fallback = "as its width",
         .derive = as_wide,
         .most = 5,
         .help = "inner depth of the bell",
         .field = fitted<&Bell::depth>},
        {.name = "bell.NAME.height",
         .quantity = length,
         .required = true,
         .least = 0.1,
         .most = 5,
         .help = "inner height of the bell",
         .field = fitted<&Bell::height>},
        {.name = "bell.NAME.opening",
         .quantity = length,
         .fallback = "as riser.bore",
         .derive = as_bore,
         .practice = true,
         .least = 0.02,
         .most = 2,
         .help =
             "diameter of the opening by which gas comes into the bell; a wide one lets it rise "
             "instead of stirring",
         .field = fitted<&Bell::opening>},
        {.name = "bell.NAME.inlet",
         .quantity = length,
         .fallback = "50 mm and half a riser's bore",
         .derive = at_foot,
         .practice = true,
         .most = 5,
         .help = "height of that opening's middle above the bell's floor; the flue outlet of the "
                 "barrel stands there",
         .field = fitted<&Bell::inlet>},
        {.name = "bell.NAME.outlet",
         .quantity = length,
         .fallback = "50 mm and half a riser's bore",
         .derive = at_foot,
         .practice = true,
         .most = 5,
         .help = "height above the bell's floor at which the flue leaves it",
         .field = fitted<&Bell::outlet>},
        {.name = "bell.NAME.wall",
         .kind = Kind::build_up,
         .quantity = length,
         .fallback = "64 mm firebrick",
         .practice = true,
         .help = "sides and top of the bell, from the gas outwards; its floor counts as none",
         .field = fitted<&Bell::wall>},
    };
}

}  // namespace drawwell
