#pragma once

#include <string>

#include "solver/results.h"

namespace drawwell {

/// A burn's columns as bytes, to be handed on or kept.
std::string series_bytes(const Results& results);

/// The columns again. FileError: the bytes are cut short, or something else.
Results results_of(const std::string& bytes);

}  // namespace drawwell
