#include "tests/models/sample_burn.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "cli/read/embedded_data.h"
#include "cli/read/overrides.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"

namespace drawwell::testing {

BurnOutcome burn_sample(std::initializer_list<std::string> overrides) {
    static const Library library = read_library();
    std::vector<Override> parsed{parse_override("burn.reserve_every=0 s")};
    for (const std::string& text : overrides) parsed.push_back(parse_override(text));
    const Stove stove = read_stove(embedded_data("stoves/allotment-kitchen.toml"),
                                   "allotment-kitchen.toml", parsed, library);
    return run_burn(stove, library);
}

double value_at(const Results& results, const char* column, double time, std::size_t cell) {
    const Column* found = results.find(column);
    REQUIRE(found != nullptr);
    const auto at = std::find_if(results.time.begin(), results.time.end(),
                                 [&](double t) { return std::abs(t - time) < 1e-6; });
    REQUIRE(at != results.time.end());
    const auto row = static_cast<std::size_t>(at - results.time.begin());
    return found->values[row * found->width + cell];
}

double mean_between(const Results& results, const char* column, double from, double to,
                    std::size_t cell) {
    const Column* found = results.find(column);
    REQUIRE(found != nullptr);
    double sum = 0;
    int count = 0;
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (results.time[i] >= from && results.time[i] <= to) {
            sum += found->values[i * found->width + cell];
            ++count;
        }
    REQUIRE(count > 0);
    return sum / count;
}

double least(const Results& results, const char* column) {
    const auto& values = results.find(column)->values;
    return *std::min_element(values.begin(), values.end());
}

double largest(const Results& results, const char* column) {
    const auto& values = results.find(column)->values;
    return *std::max_element(values.begin(), values.end());
}

}  // namespace drawwell::testing
