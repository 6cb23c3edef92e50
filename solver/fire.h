#pragma once

#include <array>
#include <cstddef>
#include <span>

#include "solver/gas_state.h"
#include "solver/passage.h"

namespace drawwell {

/// The gas that reaches a fire before the fire adds to it.
struct Arriving {
    double mass_flow = 0;      // [kg/s]
    Composition species{};     // [kg/s]
    double enthalpy_flow = 0;  // [W]
    GasState gas;              // the same, per kilogram, with its flame
};

/// What a fire adds to the gas of its junction.
struct Emission {
    Composition species{};     // [kg/s]; oxygen burnt by embers is negative
    double enthalpy_flow = 0;  // [W]
    Flame flame;               // of the gas that leaves
};

/// The fuel: its states, what it adds to the gas and how it changes. Pure, like all laws.
class Fire {
  public:
    Fire() = default;
    Fire(const Fire&) = delete;
    Fire& operator=(const Fire&) = delete;
    virtual ~Fire() = default;

    struct View {
        double time = 0;                            // [s]
        std::span<const double> fuel;               // the fire's states
        std::span<const double> solid_temperature;  // [K]
    };

    virtual std::size_t state_count() const = 0;
    /// Size of one unit of each state that the error control compares with.
    virtual std::span<const double> state_scale() const = 0;
    /// Places at which the fire meets the gas; the network names a junction for each.
    virtual std::size_t site_count() const = 0;
    /// Writes what the fuel sets from outside: the free area of the feed.
    virtual void set(const View& view, std::span<double> settings) const = 0;
    virtual Emission emission(std::size_t site, const View& view, const Arriving& air) const = 0;
    /// Rate of change of each state [1/s], heat taken from each solid [W] (negative), given the
    /// gas that arrived at each site and the gas cells of the whole network.
    virtual void rates(const View& view, std::span<const Arriving> arrived,
                       std::span<const GasCell> gas, std::span<double> rate,
                       std::span<double> solid_heat) const = 0;
    /// Enthalpy [J] held by the fuel in the sense of GasState::enthalpy, up to a constant.
    virtual double enthalpy(std::span<const double> fuel) const = 0;
    /// Mass [kg] of the fuel's carbon, hydrogen, oxygen and nitrogen, up to a constant.
    virtual std::array<double, 4> elements(std::span<const double> fuel) const = 0;
    /// Diagonal of the states' Jacobian [1/s]. Rough will do, but not a slope where there is none:
    /// a rate that does not relax would be damped without the error control seeing it.
    virtual void rate_slopes(const View& view, std::span<const Arriving> arrived,
                             std::span<double> slope) const = 0;
};

}  // namespace drawwell
