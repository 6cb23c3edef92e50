#pragma once

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell burn STOVE.toml`: computes a burn, prints its page and writes its result files.
void add_burn_command(CLI::App& app);

}  // namespace drawwell
