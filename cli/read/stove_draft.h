#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "models/library.h"
#include "models/stove.h"

namespace drawwell {

/// A load, by its name, at one of its times [s] after lighting.
struct LoadTime {
    double time = 0;
    std::string load;
};

/// A stove being written down, with what its keys may say besides: other ways of saying a thing,
/// and what all loads share.
/// What a file says of the sheet drawn from it; no part of the stove.
struct SheetNote {
    std::string author = {}, date = {};  // as written; empty: not said
    std::string mark = "drawn";          // drawn, built or measured: what its dimensions are worth
};

struct StoveDraft {
    Stove stove;
    const Library* library = nullptr;
    double altitude = 0;                    // [m] of the site
    double wood_side = 0, wood_length = 0;  // [m] of a load's pieces, unless it says otherwise
    std::string wood_standing;              // of a load's pieces, the same
    std::vector<LoadTime> load_times;       // in the order of the file
    std::string weather;                    // name of a file
    std::vector<std::string> flue_order;    // names of the sections
    std::map<std::string, std::string> direction;  // of a flue section: up, level, down
    std::optional<SheetNote> sheet;
};

/// The draft that would have become this stove.
StoveDraft draft_of(const Stove& stove);

/// Fills what follows from other things said: opening areas, the sections' rises, no kindling of 0
/// kg.
void complete(StoveDraft& draft);

/// The riser's inner section [m2]; 0 if the draft does not say.
double riser_area(const Riser& riser);
/// Diameter of a round duct of the riser's inner section [m].
double equal_bore(const Riser& riser);

}  // namespace drawwell
