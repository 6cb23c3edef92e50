#pragma once

#include <filesystem>

#include "validation/hard-use/fuzz/text_mutator.h"

namespace drawwell {

/// Changes a sound HDF5 file into another sound one: attributes and data sets get other values,
/// types and shapes, vanish, or change their names. `change` is for texts.
void change_hdf5(const std::filesystem::path& file, Dice& dice, const TextMutator& change);

}  // namespace drawwell
