#include "cli/commands/watched_run.h"

#include <unistd.h>

#include <cstdlib>
#include <iostream>
#include <string_view>

namespace drawwell {

WatchedRun::WatchedRun(double duration, bool quiet)
    : progress_(std::cerr, duration, is_terminal(STDERR_FILENO)) {
    watch_.stop = &interrupt_.raised();
    if (!quiet) watch_.progress = [this](double time) { progress_.reached(time); };
}

bool is_terminal(int stream) {
    const char* kind = std::getenv("TERM");
    return isatty(stream) != 0 && !(kind && std::string_view(kind) == "dumb");
}

bool terminal_with_colour() {
    const char* refused = std::getenv("NO_COLOR");
    return is_terminal(STDOUT_FILENO) && !(refused && *refused != '\0');
}

}  // namespace drawwell
