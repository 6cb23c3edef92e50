// How long things take, by Google Benchmark; `validation/bench/run` writes the tables.
#include <benchmark/benchmark.h>

#include <atomic>
#include <cmath>
#include <string>
#include <thread>
#include <vector>

#include "cli/read/embedded_data.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "cli/report/write_csv.h"
#include "models/burn.h"
#include "models/stove_run.h"

namespace drawwell {
namespace {

const char* const samples[] = {"allotment-kitchen",   "workshop",           "workshop-kitchen",
                               "kitchen-window",      "workshop-bench",     "workshop-bell",
                               "workshop-damp-bench", "workshop-level-run", "workshop-ducted",
                               "market-griddle"};

const Library& library() {
    static const Library read = read_library();
    return read;
}

Stove sample(const std::string& name, double hours) {
    Stove stove = read_stove(embedded_data("stoves/" + name + ".toml"), name, {}, library());
    stove.burn.duration = hours * 3600;
    return stove;
}

Stove without_reserve(Stove stove) {
    stove.burn.reserve_every = stove.burn.sustained_every = 0;
    return stove;
}

void count(benchmark::State& state, const Stove& stove) {
    const BurnOutcome outcome = run_burn(stove, library());
    const StoveRun run(stove, library());
    state.counters["steps"] = static_cast<double>(outcome.summary.steps);
    state.counters["rhs"] = static_cast<double>(outcome.summary.rhs_evaluations);
    state.counters["cells"] =
        static_cast<double>(run.built.network.solids.size() + run.built.network.gas_cell_count);
}

void burn(benchmark::State& state, const Stove& stove) {
    for (auto _ : state) benchmark::DoNotOptimize(run_burn(stove, library()));
    count(state, stove);
}

/// A run an hour into the sample's burn, ready to be asked for rates.
struct Warm {
    explicit Warm(double refine = 1) : stove(make(refine)), run(stove, library()) {
        run.burn(3600, 600, [&](double, std::span<const double> at, HeatBalance&) {
            state.assign(at.begin(), at.end());
            return true;
        });
        rate.resize(state.size());
    }
    static Stove make(double refine) {
        Stove made = without_reserve(sample("allotment-kitchen", 1));
        made.burn.refine = refine;
        return made;
    }
    Stove stove;
    StoveRun run;
    std::vector<double> state, rate;
};

void right_hand_side(benchmark::State& state) {
    Warm warm;
    for (auto _ : state) {
        warm.run.balance.rates(3600, warm.state, warm.rate);
        benchmark::DoNotOptimize(warm.rate.data());
    }
}
BENCHMARK(right_hand_side)->Unit(benchmark::kMicrosecond);

void gas_march(benchmark::State& state) {
    Warm warm;
    warm.run.balance.rates(3600, warm.state, warm.rate);
    const double flow = warm.run.balance.flow().inlet_flow(0);
    const auto conditions = warm.run.balance.conditions(3600, warm.state);
    const std::size_t before = warm.run.balance.flow().marches();
    for (auto _ : state)
        benchmark::DoNotOptimize(warm.run.balance.flow().adverse_pressure(conditions, flow));
    state.counters["marches"] = static_cast<double>(warm.run.balance.flow().marches() - before) /
                                static_cast<double>(state.iterations());
}
BENCHMARK(gas_march)->Unit(benchmark::kMicrosecond);

void linearise_and_factor(benchmark::State& state) {
    Warm warm;
    warm.run.balance.rates(3600, warm.state, warm.rate);
    for (auto _ : state) {
        warm.run.balance.linearise();
        warm.run.balance.factor(10);
    }
}
BENCHMARK(linearise_and_factor)->Unit(benchmark::kMicrosecond);

void gas_properties(benchmark::State& state) {
    const StoveRun run(sample("allotment-kitchen", 1), library());
    const Mixture mixture = run.built.gas->mixture(dry_air());
    double temperature = 400;
    for (auto _ : state) {
        temperature = temperature < 1400 ? temperature + 1 : 400;
        const double capacity = mixture.heat_capacity(temperature);
        benchmark::DoNotOptimize(transport(dry_air(), temperature, capacity));
    }
}
BENCHMARK(gas_properties)->Unit(benchmark::kNanosecond);

void reading_data(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(read_library());
}
BENCHMARK(reading_data)->Unit(benchmark::kMillisecond);

void reading_a_stove(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(sample("allotment-kitchen", 1));
}
BENCHMARK(reading_a_stove)->Unit(benchmark::kMillisecond);

void building_a_network(benchmark::State& state) {
    const Stove stove = sample("allotment-kitchen", 1);
    for (auto _ : state) benchmark::DoNotOptimize(build_network(stove, library()));
}
BENCHMARK(building_a_network)->Unit(benchmark::kMillisecond);

void writing_csv(benchmark::State& state) {
    const BurnOutcome outcome = run_burn(sample("allotment-kitchen", 3), library());
    for (auto _ : state) benchmark::DoNotOptimize(csv_text(outcome.results));
}
BENCHMARK(writing_csv)->Unit(benchmark::kMillisecond);

/// Cost against cells, of an hour without loads: 8 kW of plain heat.
void cells(benchmark::State& state) {
    Stove stove = without_reserve(sample("allotment-kitchen", 1));
    stove.loads.clear();
    stove.kindling.reset();
    stove.heat_source = Table(8e3);
    stove.burn.refine = static_cast<double>(state.range(0)) / 4;
    burn(state, stove);
}
BENCHMARK(cells)->Arg(1)->Arg(2)->Arg(4)->Arg(8)->Arg(16)->Arg(32)->Unit(benchmark::kMillisecond);

/// Cost against length: the sample, a load each 24 minutes.
void hours(benchmark::State& state) {
    const auto length = static_cast<double>(state.range(0));
    Stove stove = without_reserve(sample("allotment-kitchen", length));
    for (Load& load : stove.loads)
        if (load.name == "main") {
            load.times.clear();
            for (double t = 16 * 60; t < (length - 0.5) * 3600; t += 24 * 60)
                load.times.push_back(t);
        }
    burn(state, stove);
}
BENCHMARK(hours)->RangeMultiplier(2)->Range(1, 24)->Unit(benchmark::kMillisecond);

/// Two hundred three-hour burns, each of another stove, on so many threads.
void many_burns(benchmark::State& state) {
    constexpr std::size_t many = 200;
    std::vector<Stove> stoves(many, without_reserve(sample("allotment-kitchen", 3)));
    for (std::size_t i = 0; i < many; ++i) stoves[i].riser.top += 1e-4 * static_cast<double>(i);
    for (auto _ : state) {
        std::atomic<std::size_t> next = 0;
        std::vector<std::jthread> threads;
        for (std::int64_t t = 0; t < state.range(0); ++t)
            threads.emplace_back([&] {
                for (std::size_t i = next++; i < many; i = next++)
                    benchmark::DoNotOptimize(run_burn(stoves[i], library()));
            });
    }
}
BENCHMARK(many_burns)->Arg(1)->Arg(2)->Iterations(1)->UseRealTime()->Unit(benchmark::kSecond);

}  // namespace
}  // namespace drawwell

int main(int argc, char** argv) {
    using namespace drawwell;
    for (const char* name : samples) {
        const Stove whole = sample(name, 6), bare = without_reserve(whole);
        const auto add = [&](const std::string& what, const Stove& stove) {
            benchmark::RegisterBenchmark((what + "/" + name).c_str(), [stove](
                                                                          benchmark::State& state) {
                burn(state, stove);
            })->Unit(benchmark::kMillisecond);
        };
        add("burn", whole);
        add("burn_without_reserve", bare);
    }
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
