#pragma once

#include <cmath>
#include <numeric>
#include <string>
#include <utility>
#include <vector>

#include "models/build_network.h"
#include "models/components/gas_passage.h"
#include "solver/constants.h"
#include "tests/cli/report/sheet/sheet_stoves.h"

namespace drawwell::tests {

inline double disc(double diameter) {
    return constants::pi / 4 * diameter * diameter;
}

/// A stove beside the network that a burn of it is computed with.
class Built {
  public:
    explicit Built(Stove stove)
        : stove_(clean(std::move(stove))), built_(build_network(stove_, sheet_library())) {}

    const Stove& stove() const { return stove_; }
    const Layout& layout() const { return built_.layout; }

    /// The shape of a passage; null: the network has none of that name.
    const GasPassageShape* passage(const std::string& name) const {
        for (const Passage& each : built_.network.passages)
            if (each.name == name) return &dynamic_cast<const GasPassage&>(*each.law).shape();
        return nullptr;
    }
    std::vector<std::string> passages() const {
        std::vector<std::string> names;
        for (const Passage& each : built_.network.passages) names.push_back(each.name);
        return names;
    }
    /// Of all solids whose names begin so [kg].
    double mass(const std::string& begin) const {
        double sum = 0;
        for (const Solid& solid : built_.network.solids)
            if (solid.name.starts_with(begin)) sum += solid.mass;
        return sum;
    }

  private:
    /// Soot narrows the gas's way, and a sheet shows the stove swept.
    static Stove clean(Stove stove) {
        stove.riser.soot = 0;
        if (stove.barrel) stove.barrel->soot = 0;
        for (FlueSection& section : stove.flue.sections) section.soot = 0;
        return stove;
    }

    Stove stove_;
    BuiltStove built_;
};

inline double length_of(const GasPassageShape& shape) {
    return std::accumulate(shape.cells.begin(), shape.cells.end(), 0.0,
                           [](double sum, const GasCellShape& cell) { return sum + cell.length; });
}
inline double rise_of(const GasPassageShape& shape) {
    return std::accumulate(shape.cells.begin(), shape.cells.end(), 0.0,
                           [](double sum, const GasCellShape& cell) { return sum + cell.rise; });
}
inline double volume_of(const GasPassageShape& shape) {
    return std::accumulate(
        shape.cells.begin(), shape.cells.end(), 0.0,
        [](double sum, const GasCellShape& cell) { return sum + cell.length * cell.area; });
}

/// "flue, stack" -> "stack".
inline std::string after_comma(const std::string& name) {
    const std::size_t comma = name.find(", ");
    return comma == std::string::npos ? "" : name.substr(comma + 2);
}

/// The sides of a rectangle of which a passage's cell has area and hydraulic diameter: the smaller,
/// the larger.
inline std::pair<double, double> sides_of(const GasCellShape& cell) {
    const double half = 2 * cell.area / cell.hydraulic_diameter;  // of the perimeter
    const double root = std::sqrt(std::max(half * half / 4 - cell.area, 0.0));
    return {half / 2 - root, half / 2 + root};
}

/// Whether two lengths are what such a rectangle measures, in either order; near squares lose
/// digits to the root.
inline bool are_sides(double a, double b, const GasCellShape& cell) {
    const auto [least, most] = sides_of(cell);
    return std::abs(std::min(a, b) - least) < 1e-6 && std::abs(std::max(a, b) - most) < 1e-6;
}

}  // namespace drawwell::tests
