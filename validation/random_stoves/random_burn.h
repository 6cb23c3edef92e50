#pragma once

#include <cstdint>
#include <string>

#include "models/library.h"
#include "validation/random_stoves/burn_checks.h"
#include "validation/random_stoves/random_stove.h"

namespace drawwell {

/// How a random stove fared.
struct RandomBurn {
    enum class Fate {
        run,      // to its end
        refused,  // before it ran, by an InputError that says why
        failed    // anything else
    };
    std::uint32_t index = 0;
    Fate fate = Fate::failed;
    std::string reason;                   // of what was refused or failed
    std::vector<std::string> complaints;  // of one that ran: what it broke
    BurnChecks::Worst worst;
    double seconds = 0;  // spent solving
    std::size_t steps = 0;
};

/// Reads that stove as a user's file is read, burns it and checks the burn. One that takes more
/// than a minute is given up as failed at its next sample: as a diagnosis, for most take a tenth of
/// a second.
RandomBurn burn_random_stove(std::uint32_t index, const BurnLength& length, const Library& library);

}  // namespace drawwell
