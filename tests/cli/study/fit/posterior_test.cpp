#include "cli/study/fit/posterior.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

/// Readings that are sums of slope times parameter.
Inference straight_model(const std::vector<Numbers>& slope, const Numbers& measured,
                         const Numbers& noise) {
    Inference inference;
    inference.parameters = slope.size();
    inference.step.assign(slope.size(), 0.25);
    inference.measured = measured;
    inference.noise = noise;
    inference.predict = [slope](const std::vector<Numbers>& points) {
        std::vector<Numbers> all;
        for (const Numbers& point : points) {
            Numbers& rows = all.emplace_back(slope.front().size());
            for (std::size_t k = 0; k < slope.size(); ++k)
                for (std::size_t i = 0; i < rows.size(); ++i) rows[i] += point[k] * slope[k][i];
        }
        return all;
    };
    return inference;
}

}  // namespace

TEST_SUITE("cli/study/fit/posterior") {
    TEST_CASE("one reading and what was known are weighed by their spreads") {
        // Known to 0 +- 1, read as 2 with noise 0.5 and slope 1: 2/(1 + 0.25), 0.25/(1 + 0.25).
        const Posterior posterior = infer(straight_model({{1}}, {2}, {0.5}));
        CHECK(posterior.estimate[0] == near(1.6, 1e-6));
        CHECK(posterior.covariance[0][0] == near(0.2, 1e-9));
        CHECK(posterior.settled);
    }

    TEST_CASE("a parameter that no reading moves stays as it was known") {
        const Posterior posterior = infer(straight_model({{1, 1}, {0, 0}}, {2, 2}, {0.1, 0.1}));
        CHECK(std::abs(posterior.estimate[1]) < 1e-9);
        CHECK(posterior.covariance[1][1] == near(1, 1e-9));
    }

    TEST_CASE("a crooked model is followed to where it meets the readings") {
        Inference inference =
            straight_model({{1, 1}}, {std::exp(1.5), std::exp(3.0)}, {1e-3, 1e-3});
        inference.predict = [](const std::vector<Numbers>& points) {
            std::vector<Numbers> all;
            for (const Numbers& point : points)
                all.push_back({std::exp(point[0]), std::exp(2 * point[0])});
            return all;
        };
        // The noise of a thousandth leaves what was known no say; differences a quarter aside err
        // by a hundredth in slope, which the iteration corrects.
        CHECK(infer(inference).estimate[0] == near(1.5, 1e-3));
    }

    TEST_CASE("where nothing can be computed the search turns back, and at the start it refuses") {
        Inference inference = straight_model({{1}}, {0.9}, {0.01});
        const auto whole = inference.predict;
        inference.predict = [whole](const std::vector<Numbers>& points) {
            auto all = whole(points);
            for (std::size_t i = 0; i < points.size(); ++i)
                if (points[i][0] > 1) all[i].clear();
            return all;
        };
        CHECK(infer(inference).estimate[0] == near(0.9, 1e-3));
        inference.start = {1.5};
        CHECK_THROWS_AS(infer(inference), InputError);
    }

    TEST_CASE("straight parameters are fitted beside the others and widen them") {
        Inference inference = straight_model({{1, 1}}, {1, 1}, {0.1, 0.1});
        const double alone = infer(inference).covariance[0][0];
        inference.straight = {{1, 1}};
        const Posterior both = infer(inference);
        CHECK(both.estimate[0] == near(both.estimate[1], 1e-6));
        CHECK(both.covariance[0][0] > 50 * alone);  // one half in place of 0.005
    }

    TEST_CASE("more readings narrow as if they had been there from the beginning") {
        const std::vector<Numbers> first{{1, 2}, {1, -1}};
        const std::vector<Numbers> both{{1, 2, 3}, {1, -1, 0.5}};
        const auto wide = straight_covariance(first, {0.5, 0.5});
        const auto at_once = straight_covariance(both, {0.5, 0.5, 0.2});
        const auto later = narrowed(wide, {{{3}, {0.5}}, {0.2}, {0}});
        for (std::size_t i = 0; i < 2; ++i)
            for (std::size_t k = 0; k < 2; ++k) CHECK(later[i][k] == near(at_once[i][k], 1e-9));
        // What all readings are off alike, boundless, leaves only their differences: none.
        const auto blind = narrowed(wide, {{{3}, {0.5}}, {0.2}, {1e6}});
        CHECK(blind[0][0] == near(wide[0][0], 1e-6));
    }

    TEST_CASE("two that are read only as their sum are told as not apart, a third is not") {
        const auto covariance = straight_covariance({{1, 0}, {1, 0}, {0, 1}}, {0.1, 0.1});
        const auto blurred = blurred_directions(covariance, 3);
        REQUIRE(blurred.size() == 1);
        CHECK(blurred[0].share[0] == near(-blurred[0].share[1], 1e-6));
        CHECK(std::abs(blurred[0].share[2]) < 1e-9);
        CHECK(blurred[0].deviation == near(1, 1e-6));  // of their difference nothing is learnt
        CHECK(blurred_directions(straight_covariance({{1, 0}, {0, 1}}, {0.1, 0.1}), 2).empty());
    }
}
