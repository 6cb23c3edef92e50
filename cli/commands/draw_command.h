#pragma once

namespace CLI {
class App;
}

namespace drawwell {

/// `drawwell draw STOVE.toml --at TIME`: the draw at an instant of the burn, in both directions, as
/// a page and a figure.
void add_draw_command(CLI::App& app);

}  // namespace drawwell
