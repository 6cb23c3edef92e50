#pragma once

namespace CLI {
class App;
}

namespace drawwell {

/// Adds `drawwell fit`.
void add_fit_command(CLI::App& app);

}  // namespace drawwell
