#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "models/burn.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

BurnOutcome burn(bool clamped, double thickness, bool expansion_known = true) {
    Library library = plain_library();
    if (expansion_known) library.materials["sheet"].expansion = Table(1.2e-5);
    Stove stove = plain_stove();
    stove.plate->clamped = clamped;
    stove.plate->thickness = thickness;
    stove.heat_source = Table(12e3);
    stove.burn.duration = 3600;
    return run_burn(stove, library);
}

}  // namespace

TEST_SUITE("models/components/bowing") {
    TEST_CASE("a plate over a fire dishes towards it, a thin one further than a thick one") {
        const BurnOutcome thin = burn(false, 0.002), thick = burn(false, 0.02);
        for (const BurnOutcome* outcome : {&thin, &thick}) {
            const auto& low = outcome->results.find("plate_bow_low")->values;
            const auto& high = outcome->results.find("plate_bow_high")->values;
            REQUIRE(low.size() == outcome->results.time.size());
            for (std::size_t i = 0; i < low.size(); ++i)
                CHECK(std::abs(low[i]) <= std::abs(high[i]) + 1e-12);
            CHECK(*outcome->summary.plate_bow_high < 0);
            CHECK(*outcome->summary.plate_bow_high == *std::min_element(high.begin(), high.end()));
        }
        CHECK(*thin.summary.plate_bow_high < 2 * *thick.summary.plate_bow_high);
    }

    TEST_CASE("a thick free plate bows as the heat through it says, by hand") {
        // Steady, 20 mm thick: flux over 50 W/(m K) is the slope through it, times 1.2e-5 x
        // 0.21^2/2. The flux is what the plate's whole top gives off; a tenth for the squeeze of
        // its rings.
        const BurnOutcome outcome = burn(false, 0.02);
        const Column& plate = *outcome.results.find("plate_temperature");
        const std::size_t last = (outcome.results.time.size() - 1) * plate.width;
        const double t = plate.values[last + plate.width / 2];
        const double flux = 9 * (t - 293) + 0.8 * 5.67e-8 * (std::pow(t, 4) - std::pow(293, 4));
        CHECK(-outcome.results.find("plate_bow_low")->values.back() ==
              near(flux / 50 * 1.2e-5 * 0.21 * 0.21 / 2, 0.25));
    }

    TEST_CASE("a clamped rim holds a thick plate flat") {
        CHECK(*burn(true, 0.03).summary.plate_bow_high == 0);
    }

    TEST_CASE("where the metal's expansion is not known, no bow is told") {
        const BurnOutcome outcome = burn(false, 0.006, false);
        CHECK_FALSE(outcome.results.find("plate_bow_low"));
        CHECK_FALSE(outcome.summary.plate_bow_high);
        CHECK(std::count_if(outcome.summary.remarks.begin(), outcome.summary.remarks.end(),
                            [](const std::string& remark) {
                                return remark.find("bow") != std::string::npos;
                            }) == 1);
        CHECK(burn(false, 0.006).summary.remarks.empty());
    }
}
