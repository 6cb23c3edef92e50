#include "cli/read/keys/fields.h"

namespace drawwell {

std::vector<Key> window_keys() {
    using namespace fields;
    using enum Quantity;
    return {
        {.name = "window.NAME.width",
         .quantity = length,
         .required = true,
         .least = 0.01,
         .most = 1,
         .help = "width of the pane, along the tunnel from the feed's centre on",
         .field = fitted<&Window::width>},
        {.name = "window.NAME.height",
         .quantity = length,
         .required = true,
         .least = 0.01,
         .most = 1,
         .help = "height of the pane",
         .field = fitted<&Window::height>},
        {.name = "window.NAME.thickness",
         .quantity = length,
         .fallback = "4 mm",
         .practice = true,
         .least = 1e-3,
         .most = 0.02,
         .help = "thickness of the ceramic glass",
         .field = fitted<&Window::thickness>},
    };
}

}  // namespace drawwell
