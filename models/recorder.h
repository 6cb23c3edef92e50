#pragma once

#include <span>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "models/build_network.h"
#include "models/columns.h"
#include "models/heated_room.h"
#include "models/spare_draw.h"
#include "solver/heat_balance.h"
#include "solver/results.h"

namespace drawwell {

/// Turns the solver's states into columns, the spare draw among them.
class Recorder {
  public:
    Recorder(const Stove& stove, const BuiltStove& built);

    /// Adds a row; `balance` holds this state.
    void sample(double time, std::span<const double> state, HeatBalance& balance);

    Results take() { return std::move(results_); }
    const Results& results() const { return results_; }
    /// Oxygen needed [kg/s] by what the fuel gives off, at each sample.
    const std::vector<double>& oxygen_needed() const { return oxygen_needed_; }
    const std::vector<double>& oxygen_in() const { return oxygen_in_; }

    const std::vector<SpareDraw::Refined>& refined() const { return spare_.refined(); }

  private:
    void put(std::string_view name, double value);
    void put_solids(std::string_view name, const SolidRow& row, const HeatBalance& balance);
    void put_gas(std::string_view name, std::span<const std::size_t> passages,
                 const HeatBalance& balance);
    void put_draw(double time, const HeatBalance& balance);
    void put_fire(double time, std::span<const double> fuel, const HeatBalance& balance);
    void put_spare(double time, std::span<const double> state, HeatBalance& balance);
    /// Water, wood and embers of each load, and the ash of what has burned.
    void put_loads(std::span<const double> fuel);
    double burnout(const HeatBalance& balance) const;
    /// Buoyancy, or losses, of several passages together [Pa].
    double share(const HeatBalance& balance, const std::vector<std::size_t>& passages,
                 bool losses) const;

    const Stove& stove_;
    const BuiltStove& built_;
    Results results_;
    std::unordered_map<std::string_view, std::size_t> place_;  // of each column, by its name
    std::vector<double> oxygen_needed_, oxygen_in_;
    std::vector<BuiltStove::LoadTime> lots_;  // in order of time
    SpareDraw spare_;
    HeatedRoom room_;
    double first_wood_ = 0;  // [kg] on the book of a fire without loads
};

}  // namespace drawwell
