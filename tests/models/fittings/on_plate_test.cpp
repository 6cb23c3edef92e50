#include "models/fittings/on_plate.h"

#include <doctest/doctest.h>

#include "tests/models/fittings/fitted_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;
using constants::pi;

namespace {

Pot pot(const char* name, double diameter, double off_centre) {
    Pot made;
    made.name = name;
    made.diameter = diameter;
    made.height = 0.1;
    made.off_centre = off_centre;
    made.water = 1;
    made.metal = 0.5;
    return made;
}

/// Problems of the last of these, on a plate of 420 mm.
std::size_t problems_of_last(const std::vector<Pot>& pots) {
    const Stove stove = fitted_stove<Pot>(pots);
    return problems(pots.back(), stove).size();
}

}  // namespace

TEST_SUITE("models/fittings/on_plate") {
    TEST_CASE("a disc covers of all rings together its own area, wherever it stands") {
        const std::vector<double> edge{0, 0.03, 0.06, 0.1, 0.14, 0.2, 0.3};
        for (const double off_centre : {0.0, 0.05, 0.1, 0.19}) {
            double area = 0;
            for (std::size_t i = 0; i + 1 < edge.size(); ++i)
                area += share_under(edge[i], edge[i + 1], 0.1, off_centre) * pi *
                        (edge[i + 1] * edge[i + 1] - edge[i] * edge[i]);
            CHECK(area == near(pi * 0.01, 0.01));  // the midpoint rule at the arcs' ends
        }
        CHECK(share_under(0, 0.05, 0.1, 0) == 1);
        CHECK(share_under(0.11, 0.2, 0.1, 0) == 0);
    }

    TEST_CASE("two things beside each other need room between their centres") {
        // 90 and 60 mm of radius: 150 mm apart, across the plate's centre if need be.
        CHECK(problems_of_last({pot("a", 0.18, 0), pot("b", 0.12, 0.14)}) == 1);
        CHECK(problems_of_last({pot("a", 0.18, 0), pot("b", 0.12, 0.15)}) == 0);
        CHECK(problems_of_last({pot("a", 0.18, 0.05), pot("b", 0.12, 0.1)}) == 0);
        CHECK(problems_of_last({pot("a", 0.18, 0.05), pot("b", 0.12, 0.09)}) == 1);
        // The first of the two has nothing to answer for.
        const Stove stove = fitted_stove<Pot>({pot("a", 0.18, 0), pot("b", 0.12, 0.14)});
        CHECK(problems(std::get<Pot>(stove.fittings.front()), stove).empty());
    }

    TEST_CASE("what is there at different times may stand in one place") {
        Pot first = pot("a", 0.18, 0), second = pot("b", 0.2, 0);
        first.taken_off = {600};
        second.put_on = {600};
        CHECK(problems_of_last({first, second}) == 0);
        second.put_on = {599};
        CHECK(problems_of_last({first, second}) == 1);
    }

    TEST_CASE("as many fit round the centre as their angles leave room for") {
        // Discs on a circle about a centre each take 2 asin(r/d) of it: at 60 degrees six fit.
        const Disc sixth{.radius = 0.05, .off_centre = 0.1};
        CHECK(fit_side_by_side(std::vector(6, sixth)));
        CHECK_FALSE(fit_side_by_side(std::vector(7, sixth)));
        CHECK_FALSE(fit_side_by_side(std::vector(6, Disc{.radius = 0.052, .off_centre = 0.1})));
        // A disc in the middle that just touches them takes no room away, a larger one does.
        std::vector<Disc> ringed(6, sixth);
        ringed.push_back({.radius = 0.05, .off_centre = 0});
        CHECK(fit_side_by_side(ringed));
        ringed.back().radius = 0.051;
        CHECK_FALSE(fit_side_by_side(ringed));
        // Two large and two small ones fit only if they take turns; any order will be found.
        const Disc large{.radius = 0.06, .off_centre = 0.08},
            small{.radius = 0.035, .off_centre = 0.1};
        CHECK(fit_side_by_side({large, large, small, small}));
    }

    TEST_CASE("moves in turns become steps, from the plate or onto it") {
        CHECK(on_and_off({}, {})(1e6) == 1);
        const Steps later = on_and_off({600}, {900});
        CHECK(later(0) == 0);
        CHECK(later(600) == 1);
        CHECK(later(900) == 0);
        const Steps leaves = on_and_off({900}, {600});
        CHECK(leaves(0) == 1);
        CHECK(leaves(600) == 0);
        CHECK(leaves(900) == 1);
        CHECK(take_turns({900}, {600}));
        CHECK(take_turns({0, 900}, {600, 1000}));
        CHECK_FALSE(take_turns({600, 900}, {}));
        CHECK_FALSE(take_turns({600}, {600}));
    }
}
