#include "cli/commands/watched_run.h"

#include <unistd.h>

#include <cstdlib>
#include <iostream>

namespace drawwell {

WatchedRun::WatchedRun(double duration, bool quiet)
    : progress_(std::cerr, duration, isatty(STDERR_FILENO) != 0) {
    watch_.stop = &interrupt_.raised();
    if (!quiet) watch_.progress = [this](double time) { progress_.reached(time); };
}

bool terminal_with_colour() {
    return isatty(STDOUT_FILENO) != 0 && std::getenv("NO_COLOR") == nullptr;
}

}  // namespace drawwell
