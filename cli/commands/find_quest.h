#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "cli/commands/study_options.h"
#include "cli/read/keys.h"
#include "cli/read/units.h"
#include "cli/report/shown_unit.h"
#include "cli/study/find_value.h"

namespace drawwell {

/// What `find` was asked.
struct FindOptions {
    std::string file, smallest, largest, target, by, between;
    std::vector<std::string> where;
    std::size_t days = 0;  // on which what was found is burned; 0: none
    std::uint64_t seed = 1;
    StudyOptions study;
    UnitSystem units = UnitSystem::metric;
};

/// What is sought, and in which key.
struct Quest {
    Search search;
    std::string key;
    const Key* found = nullptr;
    UnitSystem units = UnitSystem::metric;

    std::string text(double value) const { return show_quantity(value, found->quantity, 12); }
    std::string shown(double value) const { return show_setting(value, found->quantity, units); }
    std::string shift(double by) const { return show_shift(by, found->quantity, units); }
};

/// What the options seek, without its span. InputError: they contradict each other, or no such key.
Quest quest_of(const FindOptions& options);

/// Where to look: --between, else half to twice what the stove has. InputError: it has no figure.
void set_span(const FindOptions& options, const Stove& stove, Quest& quest);

}  // namespace drawwell
