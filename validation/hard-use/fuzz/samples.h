#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "models/burn.h"

namespace drawwell {

/// Texts of the repository's files in a folder, by their ending, in the order of their names.
std::vector<std::string> texts_in(const std::string& folder, const std::string& ending);

/// The first minutes of the allotment kitchen, burned once.
struct SampleBurn {
    Stove stove;
    std::string stove_text;
    BurnOutcome outcome;
};
const SampleBurn& sample_burn();

/// The tables of data/, read once.
const Library& sample_library();

std::string bytes_in(const std::filesystem::path& file);
void put_bytes(const std::filesystem::path& file, const std::string& bytes);

/// A number that depends on the bytes alone, to vary what is done with them.
std::size_t turn_of(const std::string& bytes, std::size_t turns);

}  // namespace drawwell
