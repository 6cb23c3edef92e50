#pragma once

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell plot RUN.h5 --columns A,B`: series of a result as a static figure.
void add_plot_command(CLI::App& app);

}  // namespace drawwell
