#pragma once

#include <filesystem>
#include <functional>

namespace drawwell {

/// Whether a folder takes two names for one: its file system folds letters or their composition.
/// Tries it with empty files of these names in a passing folder; false if it can't.
bool takes_for_one(const std::filesystem::path& folder, const std::filesystem::path& a,
                   const std::filesystem::path& b);

using NameJudge =
    std::function<bool(const std::filesystem::path& folder, const std::filesystem::path& a,
                       const std::filesystem::path& b)>;

/// Whether two paths lead to one file, or would once both were written: by their spelling, by
/// symbolic or hard links, or because `one_name` holds for their names. FileError: links go round
/// in a circle.
bool same_file(const std::filesystem::path& a, const std::filesystem::path& b,
               const NameJudge& one_name = takes_for_one);

}  // namespace drawwell
