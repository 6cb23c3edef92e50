#pragma once

#include <map>
#include <set>
#include <string>

#include "cli/read/raw_value.h"

namespace drawwell {

/// What was said, to blame it.
struct Said {
    std::map<std::string, Entry> entries;  // by full key
    std::set<std::string> unsure;  // keys without a value to rely on: checks of them are skipped
    std::map<std::string, Place> tables;  // where each table begins

    /// Whether a key was said, and understood.
    bool is_sure(const std::string& key) const {
        return entries.contains(key) && !unsure.contains(key);
    }
};

}  // namespace drawwell
