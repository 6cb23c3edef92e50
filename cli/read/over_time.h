#pragma once

#include <functional>
#include <string>

#include "cli/read/checker.h"

namespace drawwell {

/// Gives the text of a file that a stove file names. InputError: it can't be read.
using FileReader = std::function<std::string(const std::string& name)>;

/// Puts the columns of site.weather's file into the site's tables, and counts them as said by it.
/// A problem for whatever is wrong in the file, and for a key said beside its column; only an
/// override of the one beats the other.
void take_weather(StoveDraft& draft, Said& said, const FileReader& read_file, Problems& problems);

/// Adds a problem for each load that schedule.load names and is none, or that goes in by
/// load.NAME.at as well; and for each load that goes in at no time.
void check_load_times(const StoveDraft& draft, const Said& said, Problems& problems);

/// Adds a problem for each thing moved by [schedule] that the stove does not have, and for a damper
/// in a section that is none.
void check_moved(const StoveDraft& draft, const Said& said, Checker& check);

}  // namespace drawwell
