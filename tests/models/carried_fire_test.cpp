#include "models/carried_fire.h"

#include <doctest/doctest.h>

namespace drawwell {
namespace {

SavedState left(double rate, double wood, double embers) {
    SavedState state;
    LeftLot lot;
    lot.state = {rate, wood, embers};
    state.left = {lot};
    return state;
}

Stove kindled(bool by_default) {
    Stove stove;
    stove.kindling.emplace().by_default = by_default;
    return stove;
}

}  // namespace

TEST_SUITE("models/carried_fire") {
    TEST_CASE("kindling that nobody asked for stays unlit where a fire was left") {
        Stove stove = kindled(true);
        CHECK(spare_kindling(stove, left(0, 0, 0.02)));
        CHECK_FALSE(stove.kindling);
        stove = kindled(true);
        CHECK(spare_kindling(stove, left(1e-4, 0.3, 0)));
    }

    TEST_CASE("a few crumbs of embers or a splinter are no fire") {
        Stove stove = kindled(true);
        CHECK_FALSE(spare_kindling(stove, left(0, 0.5, 0.002)));
        CHECK_FALSE(spare_kindling(stove, left(1e-4, 1e-5, 0)));
        CHECK_FALSE(spare_kindling(stove, SavedState{}));
        CHECK(stove.kindling);
    }

    TEST_CASE("kindling that was asked for is lit all the same") {
        Stove stove = kindled(false);
        CHECK_FALSE(spare_kindling(stove, left(1e-4, 0.3, 0.1)));
        CHECK(stove.kindling);
    }

    TEST_CASE("it is said what becomes of wood and embers") {
        const SavedState fire = left(1e-4, 0.3, 0.05);
        Stove stove;
        auto remarks = carried_fire_remarks(stove, fire);
        REQUIRE(remarks.size() == 2);
        CHECK(remarks[0].starts_with("0.30 kg of dry wood was left over and burns on"));
        CHECK(remarks[1].starts_with("0.050 kg of embers was left over and burns on"));
        stove.burn_rate = Table(1e-3);
        remarks = carried_fire_remarks(stove, fire);
        REQUIRE(remarks.size() == 2);
        CHECK(remarks[0].find("taken out") != std::string::npos);
        CHECK(remarks[1].find("burns on") != std::string::npos);
        stove.burn_rate.reset();
        stove.heat_source = Table(1000.0);
        remarks = carried_fire_remarks(stove, fire);
        REQUIRE(remarks.size() == 2);
        CHECK(remarks[1].find("taken out") != std::string::npos);
        CHECK(carried_fire_remarks(stove, SavedState{}).empty());
    }
}

}  // namespace drawwell
