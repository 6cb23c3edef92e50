#pragma once

#include <string>
#include <vector>

#include "cli/read/problems.h"
#include "cli/read/said.h"
#include "cli/read/stove_draft.h"

namespace drawwell {

/// Blames one of several keys for what they say together.
class Checker {
  public:
    Checker(const StoveDraft& draft, const Said& said, Problems& problems)
        : draft_(draft), said_(said), problems_(problems) {}

    /// Unless `good`, a problem at the first of the keys that an override set, else the first that
    /// the file set, else the table of the first. Skipped while one of them has no sure value.
    void require(bool good, const std::vector<std::string>& keys, const std::string& reason);

    /// A problem of a whole part.
    void require_part(bool good, const std::string& table, const std::string& reason);

  private:
    Place place_of(const std::string& name) const;
    std::string by_default(const std::string& name) const;

    const StoveDraft& draft_;
    const Said& said_;
    Problems& problems_;
};

}  // namespace drawwell
