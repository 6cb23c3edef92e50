#pragma once

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell export RUN.h5`: series of a result as a table for other programs.
void add_export_command(CLI::App& app);

}  // namespace drawwell
