#pragma once

#include "models/library.h"

namespace drawwell {

/// The tables of data/ as compiled in: materials, woods, fuel bed.
/// InputError names the file and the key, if a table is damaged.
Library read_library();

}  // namespace drawwell
