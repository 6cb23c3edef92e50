#include "cli/commands/start_from.h"

#include <CLI/CLI.hpp>

#include "cli/report/page_text.h"
#include "models/carried_fire.h"

namespace drawwell {

void add_start_option(CLI::App& command, std::string& file) {
    command
        .add_option("--start-from", file,
                    "begin in the state in which an earlier run of this stove ended: its warm "
                    "walls, its draw, its embers")
        ->type_name("RUN.h5");
}

std::vector<std::string> begin_from(const EndState& start, Stove& stove) {
    std::vector<std::string> remarks;
    if (!start.complete) remarks.emplace_back("began from a burn that was stopped early");
    if (spare_kindling(stove, start.state))
        remarks.emplace_back(
            "no kindling was lit, since embers or burning wood were left; a stove file or --set "
            "that names kindling lights it all the same");
    return remarks;
}

std::string begun_from(const EndState& start, const std::string& file) {
    return "begun from " + file + " as it stood after " + show_duration(start.state.time);
}

}  // namespace drawwell
