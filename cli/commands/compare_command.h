#pragma once

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell compare STOVE.toml... --vary KEY=VALUES`: many stoves beside each other, one table.
void add_compare_command(CLI::App& app);

}  // namespace drawwell
