// Integrates a stove by drawwell's own stepper and shows what the simulators' programs show of it.

#include <fmt/format.h>

#include <chrono>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <vector>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "models/stove_run.h"
#include "validation/simulators/right_hand_side/shown.h"

using namespace drawwell;

int main(int argc, char** argv) {
    if (argc != 5) {
        fmt::print(stderr, "use: {} STOVE.toml SECONDS EVERY TOLERANCE\n", argv[0]);
        return 2;
    }
    std::ifstream file(argv[1]);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    const Library library = read_library();
    Stove stove = read_stove(text, argv[1], {}, library);
    stove.burn.tolerance = std::atof(argv[4]);
    StoveRun run(stove, library);
    std::vector<double> times, rate(run.built.network.state_count());
    std::vector<std::vector<double>> all;
    const auto start = std::chrono::steady_clock::now();
    const Effort effort =
        run.burn(std::atof(argv[2]), std::atof(argv[3]),
                 [&](double time, std::span<const double> state, HeatBalance& balance) {
                     balance.rates(time, state, rate);
                     times.push_back(time);
                     all.push_back(shown(run, state, rate));
                     return true;
                 });
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - start;
    fmt::print(stderr, "{} s, {} right-hand sides, {} steps\n", spent.count(), effort.evaluations,
               effort.steps);
    fmt::print("# drawwell, relative tolerance {}\nquantity,{}", argv[4], fmt::join(times, ","));
    const auto names = shown_names(run);
    for (std::size_t q = 0; q < names.size(); ++q) {
        fmt::print("\n{}", names[q]);
        for (const auto& at : all) fmt::print(",{:.11g}", at[q]);
    }
    fmt::print("\n");
}
