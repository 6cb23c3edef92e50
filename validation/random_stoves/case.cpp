#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <numeric>
#include <sstream>
#include <thread>
#include <vector>

#include "cli/read/read_library.h"
#include "validation/compare.h"
#include "validation/random_stoves/random_burn.h"

using namespace drawwell;

namespace {

constexpr std::uint32_t stoves = 1000;

/// Those that the environment variable DRAWWELL_RANDOM_STOVES names, `104,139`.
std::vector<std::uint32_t> chosen_stoves() {
    std::vector<std::uint32_t> chosen;
    const char* named = std::getenv("DRAWWELL_RANDOM_STOVES");
    std::istringstream text(named ? named : "");
    for (std::string index; std::getline(text, index, ',');)
        chosen.push_back(static_cast<std::uint32_t>(std::stoul(index)));
    return chosen;
}

/// Burns them, two at a time.
std::vector<RandomBurn> burn_all(const std::vector<std::uint32_t>& indices,
                                 const Library& library) {
    std::vector<RandomBurn> burns(indices.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < indices.size(); i = next++)
            burns[i] = burn_random_stove(indices[i], {}, library);
    };
    const std::jthread second(work);
    work();
    return burns;
}

/// What a refusal says, without where and without its figures.
std::string kind_of(const std::string& refusal) {
    const std::string line = refusal.substr(0, refusal.find('\n'));
    const std::size_t reason = line.rfind(": ");
    return line.substr(reason == std::string::npos ? 0 : reason + 2, 48);
}

/// One that was chosen: how it fared, and the file to look at it with.
void print(const RandomBurn& burn) {
    const auto file =
        std::filesystem::temp_directory_path() / fmt::format("random-stove-{}.toml", burn.index);
    std::ofstream(file) << random_stove(stove_seed, burn.index);
    fmt::print("{}: {} steps in {:.2f} s; books of heat {:.2e}, gas {:.2e}, elements {:.2e} {}\n",
               file.string(), burn.steps, burn.seconds, burn.worst.energy, burn.worst.mass,
               burn.worst.elements, burn.reason);
    for (const std::string& complaint : burn.complaints) fmt::print("    {}\n", complaint);
    CHECK(burn.reason.empty());
    CHECK(burn.complaints.empty());
}

void print_failures(const std::vector<RandomBurn>& burns) {
    std::map<std::string, int> refusals;
    for (const RandomBurn& burn : burns) {
        if (burn.fate == RandomBurn::Fate::refused) ++refusals[kind_of(burn.reason)];
        if (burn.fate == RandomBurn::Fate::failed)
            fmt::print("stove {} failed: {}\n", burn.index, burn.reason);
        for (const std::string& complaint : burn.complaints)
            fmt::print("stove {}: {}\n", burn.index, complaint);
    }
    for (const auto& [reason, count] : refusals) fmt::print("refused {}: {}\n", count, reason);
}

void print_effort(const std::vector<RandomBurn>& burns) {
    std::vector<double> seconds;
    for (const RandomBurn& burn : burns)
        if (burn.fate == RandomBurn::Fate::run) seconds.push_back(burn.seconds);
    std::sort(seconds.begin(), seconds.end());
    if (seconds.empty()) return;
    const auto slowest = std::max_element(
        burns.begin(), burns.end(),
        [](const RandomBurn& a, const RandomBurn& b) { return a.seconds < b.seconds; });
    fmt::print(
        "solving took {:.2f} s in the middle, {:.2f} s for nine in ten, at most {:.2f} s "
        "(stove {}, {} steps)\n",
        seconds[seconds.size() / 2], seconds[seconds.size() * 9 / 10], seconds.back(),
        slowest->index, slowest->steps);
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("a thousand random stoves burn to the end within what nature allows") {
        const Library library = read_library();
        if (const auto chosen = chosen_stoves(); !chosen.empty()) {
            for (const RandomBurn& burn : burn_all(chosen, library)) print(burn);
            return;
        }
        std::vector<std::uint32_t> indices(stoves);
        std::iota(indices.begin(), indices.end(), 0U);
        const std::vector<RandomBurn> burns = burn_all(indices, library);
        std::array<int, 3> fates{};
        for (const RandomBurn& burn : burns) ++fates[static_cast<std::size_t>(burn.fate)];
        const auto [run, refused, failed] = fates;
        fmt::print("{} random stoves: {} run, {} refused, {} failed\n", stoves, run, refused,
                   failed);
        print_failures(burns);
        print_effort(burns);

        const std::string name = "random_stoves";
        compare({name, "refused, share [-]", static_cast<double>(refused) / stoves, 0.05});
        compare({name, "failed [-]", static_cast<double>(failed), 0});
        const auto broken = std::count_if(burns.begin(), burns.end(), [](const RandomBurn& burn) {
            return !burn.complaints.empty();
        });
        compare({name, "that broke a bound [-]", static_cast<double>(broken), 0});
        const auto worst = [&](const char* metric, double BurnChecks::Worst::*figure,
                               double limit) {
            const RandomBurn* most = nullptr;
            for (const RandomBurn& burn : burns)
                if (burn.fate == RandomBurn::Fate::run &&
                    (!most || burn.worst.*figure > most->worst.*figure))
                    most = &burn;
            REQUIRE(most != nullptr);
            fmt::print("worst in {}: stove {}\n", metric, most->index);
            compare({name, metric, most->worst.*figure, limit});
        };
        worst("gas over its hottest, worst [K]", &BurnChecks::Worst::gas, 0.1);
        worst("wall over what could heat it, worst [K]", &BurnChecks::Worst::wall, 2);
        worst("books of heat, worst [-]", &BurnChecks::Worst::energy, 1e-3);
        worst("books of gas, worst [-]", &BurnChecks::Worst::mass, 1e-3);
        worst("books of elements, worst [-]", &BurnChecks::Worst::elements, 1e-3);
    }
}
