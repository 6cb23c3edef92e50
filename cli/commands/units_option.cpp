#include "cli/commands/units_option.h"

#include <CLI/CLI.hpp>
#include <map>
#include <string>

namespace drawwell {

void add_units_option(CLI::App& command, UnitSystem& system) {
    static const std::map<std::string, UnitSystem> names{{"metric", UnitSystem::metric},
                                                         {"us", UnitSystem::us}};
    command
        .add_option("--units", system,
                    "what the page is written in: metric, or us for inches, °F and pounds; draw "
                    "stays in pascals, heat in MJ; default: metric")
        ->transform(CLI::CheckedTransformer(names, CLI::ignore_case).description(""))
        ->type_name("SYSTEM");
}

}  // namespace drawwell
