#pragma once

#include <string_view>

#include "models/library.h"

namespace drawwell {

/// One item of a wall as a stove file writes it: "25 mm aes_board" is a layer, "board" every layer
/// of the library's build-up of that name. InputError says what it could have been.
BuildUp parse_layers(std::string_view said, const Library& library);

}  // namespace drawwell
