#include <doctest/doctest.h>
#include <fmt/format.h>

#include "models/fire/burnout.h"
#include "solver/constants.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/co_burnout";

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("carbon monoxide burns out in the time that Howard's rate gives") {
        for (const auto& [celsius, seconds] :
             {std::pair{500.0, 1.5}, {600.0, 0.18}, {700.0, 0.034}, {800.0, 0.009}, {900.0, 0.003}})
            compare_beside(
                {name, fmt::format("Howard, {:.0f} degC, 9 % oxygen, 11 % vapour [s]", celsius),
                 seconds,
                 carbon_monoxide_time({celsius + constants::ice_point, 101325, 0.09, 0.11}), 0.1});
    }
}
