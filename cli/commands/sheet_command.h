#pragma once

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell sheet STOVE.toml`: pages to build the stove from.
void add_sheet_command(CLI::App& app);

}  // namespace drawwell
