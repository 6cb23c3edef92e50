#pragma once

#include <map>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "models/burn.h"
#include "models/gas/gas_model.h"

namespace drawwell {

/// One instant of a burn as the checks see it.
struct Instant {
    /// Gas between two junctions; burning changes what it is made of, but not its elements.
    struct Stretch {
        std::string name;
        Composition mass_fraction{};      // [-] where it enters
        std::vector<double> temperature;  // [K] in its cells: entering, mean, leaving
    };
    double time = 0;            // [s]
    std::vector<double> state;  // the solver's
    std::vector<double> wall;   // [K]
    std::vector<Stretch> stretches;
};

Instant instant_of(double time, std::span<const double> state, const HeatBalance& balance);

/// Holds a burn against what no stove can do, whatever its shape:
///  - every number is finite, every temperature is above zero
///  - no gas is hotter than its own mixture burnt without loss, made of parts as hot as the hottest
///    wall (not asked of plain heat, which may make gas as hot as it likes)
///  - no wall is hotter than what could have heated it so far: gas, fire, held walls, its start
///  - the books of heat, gas and elements balance to a thousandth
class BurnChecks {
  public:
    /// What the walls may be heated by besides gas, and what the gas is.
    struct Bounds {
        std::shared_ptr<const GasModel> gas;  // none: plain heat, no bound on the gas
        double fuel_surface = 0;              // [K] of wood that gives off its gas
        double air = 0;                       // [K] of room or outdoors, whichever is warmer
        double sources = 0;                   // [K] hottest of air, flame, embers, held walls
    };
    static Bounds bounds_of(const Stove& stove, const Library& library);

    explicit BurnChecks(Bounds bounds);

    void see(const Instant& instant);
    void see(const BurnOutcome& outcome);

    /// What was broken, each kind where it first was; empty if nothing.
    std::vector<std::string> complaints() const;

    /// By how much each figure came near its bound or passed it.
    struct Worst {
        double gas = -1e9;   // [K] gas over what it could be
        double wall = -1e9;  // [K] wall over the hottest that could have heated it
        double energy = 0, mass = 0, elements = 0;  // [-]
    };
    const Worst& worst() const { return worst_; }

  private:
    void complain(const std::string& kind, const std::string& text);
    void require_finite(std::string_view what, double value, std::string_view when = {});
    void require_temperature(std::string_view what, double value, std::string_view when = {});

    Bounds bounds_;
    double hottest_ = 0;  // [K] that any wall could have been heated by
    Worst worst_;
    std::map<std::string, std::string> complaints_;
};

}  // namespace drawwell
