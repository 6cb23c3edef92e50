#pragma once

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell find STOVE.toml --smallest KEY --where CONDITION`: the dimension that does it.
void add_find_command(CLI::App& app);

}  // namespace drawwell
