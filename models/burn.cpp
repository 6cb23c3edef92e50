#include "models/burn.h"

#include <algorithm>
#include <chrono>
#include <limits>
#include <set>
#include <string>

#include "models/build_network.h"
#include "models/recorder.h"
#include "models/summarise.h"
#include "solver/simulate.h"

namespace drawwell {
namespace {

/// Puts loads in at their times; what does not fit is tried again each minute.
class Loading {
  public:
    explicit Loading(const BuiltStove& built) : built_(built) {}

    /// Time of the next try of a load that waits, or zero.
    double at_stop(double time, std::span<double> state) {
        const auto fuel = state.subspan(built_.network.solids.size());
        while (next_ < built_.load_times.size() && built_.load_times[next_].time <= time + 1e-6)
            waiting_.push_back(built_.load_times[next_++]);
        while (!waiting_.empty()) {
            const auto load = waiting_.front();
            const double before_value = built_.bed->heating_value(fuel);
            const double before_wood = built_.bed->dry_wood(fuel);
            if (!built_.bed->put_in(load.lot, fuel)) break;
            put_value_ += built_.bed->heating_value(fuel) - before_value;
            put_wood_ += built_.bed->dry_wood(fuel) - before_wood;
            if (time > load.time + 1)
                remarks_.push_back("load " + built_.bed->lots()[load.lot].name + " due at " +
                                   minutes(load.time) + " did not fit and went in at " +
                                   minutes(time));
            waiting_.erase(waiting_.begin());
        }
        return waiting_.empty() ? 0 : time + try_again;
    }

    /// What never went in, for the report.
    std::vector<std::string> remarks() const {
        std::vector<std::string> all = remarks_;
        for (const auto& load : waiting_)
            all.push_back("load " + built_.bed->lots()[load.lot].name + " due at " +
                          minutes(load.time) + " never fitted into the feed");
        return all;
    }
    double put_value() const { return put_value_; }
    double put_wood() const { return put_wood_; }

  private:
    static constexpr double try_again = 60;  // [s]
    static std::string minutes(double seconds) {
        return std::to_string(static_cast<int>(seconds / 60 + 0.5)) + " min";
    }

    const BuiltStove& built_;
    std::size_t next_ = 0;
    std::vector<BuiltStove::LoadTime> waiting_;
    std::vector<std::string> remarks_;
    double put_value_ = 0, put_wood_ = 0;
};

/// Instants at which a table bends or a load goes in.
std::vector<double> stops_of(const Stove& stove, const BuiltStove& built) {
    std::set<double> stops;
    for (const auto& load : built.load_times) stops.insert(load.time);
    for (const auto& table : {stove.heat_source, stove.burn_rate})
        if (table) stops.insert(table->x().begin(), table->x().end());
    return {stops.begin(), stops.end()};
}

}  // namespace

BurnOutcome run_burn(const Stove& stove, const Library& library, const BurnWatch& watch) {
    const BuiltStove built = build_network(stove, library);
    const Topology topology = find_topology(built.network);
    HeatBalance balance(built.network, topology);
    Audit audit(built.network);
    Recorder recorder(stove, built);
    Loading loading(built);
    std::vector<double> last_state = built.network.initial_state();
    const std::vector<double> first_state = last_state;

    Simulation simulation;
    simulation.end = stove.burn.duration;
    simulation.tolerance = stove.burn.tolerance;
    simulation.sample_every = stove.burn.output_every;
    simulation.stops = stops_of(stove, built);
    if (built.bed)
        simulation.at_stop = [&](double time, std::span<double> state) {
            return loading.at_stop(time, state);
        };
    simulation.sample = [&](double time, std::span<const double> state, HeatBalance& at) {
        if (watch.observe) watch.observe(time, state, at);  // before the recorder tries other flows
        recorder.sample(time, state, at);
        std::copy(state.begin(), state.end(), last_state.begin());
        if (watch.progress) watch.progress(time);
        return watch.stop == nullptr || !watch.stop->load();
    };

    const auto start = std::chrono::steady_clock::now();
    const Effort effort = simulate(simulation, balance, audit);
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - start;

    FuelStock stock;
    if (built.fire) {
        const auto fuel = [&](const std::vector<double>& state) {
            return std::span(state).subspan(built.network.solids.size());
        };
        stock.heating_value_lost = built.fire->heating_value(fuel(first_state)) +
                                   loading.put_value() -
                                   built.fire->heating_value(fuel(last_state));
        stock.dry_wood_lost = built.fire->dry_wood(fuel(first_state)) + loading.put_wood() -
                              built.fire->dry_wood(fuel(last_state));
    }
    BurnOutcome outcome;
    outcome.summary = summarise(stove, built, recorder, audit, stock);
    outcome.summary.steps = effort.steps;
    outcome.summary.rhs_evaluations = effort.evaluations;
    outcome.summary.wall_clock = spent.count();
    outcome.summary.remarks = loading.remarks();
    outcome.results = recorder.take();
    outcome.complete = effort.complete;
    return outcome;
}

}  // namespace drawwell
