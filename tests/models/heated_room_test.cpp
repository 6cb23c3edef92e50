#include "models/heated_room.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/near.h"

using namespace drawwell;

namespace {

Site cottage() {
    Site site;
    site.room = 293.15;
    site.outdoor = Table(278.15);
    site.room_loss = 150;
    site.room_volume = 60;
    return site;
}

}  // namespace

TEST_SUITE("models/heated_room") {
    TEST_CASE("a cold stove leaves the room to decay to outdoors with its time constant") {
        HeatedRoom room(cottage());
        const double constant = room.heat_capacity() / 150;
        room.at(0, 0);
        double t = 0;
        for (int i = 1; i <= 40; ++i) t = room.at(i * constant / 20, 0);
        CHECK(t == near(278.15 + 15 * std::exp(-2.0), 1e-9));  // exact step by step
        CHECK(room.at(60 * constant, 0) == near(278.15, 1e-9));
    }

    TEST_CASE("steady heat settles at outdoors and heat over loss, whatever the steps") {
        HeatedRoom coarse(cottage()), fine(cottage());
        const double constant = coarse.heat_capacity() / 150;
        coarse.at(0, 3000);
        fine.at(0, 3000);
        const double once = coarse.at(constant, 3000);
        double often = 0;
        for (int i = 1; i <= 100; ++i) often = fine.at(i * constant / 100, 3000);
        CHECK(once == near(278.15 + 20 - 5 * std::exp(-1.0), 1e-9));
        CHECK(often == near(once, 1e-9));
        CHECK(coarse.at(100 * constant, 3000) == near(298.15, 1e-9));
    }

    TEST_CASE("a tight room that loses nothing keeps every joule") {
        Site site = cottage();
        site.room_loss = 0;
        HeatedRoom room(site);
        room.at(0, 0);
        room.at(600, 1000);  // rising straight: half of it on average
        const double t = room.at(1200, 1000);
        CHECK((t - 293.15) * room.heat_capacity() == near(900e3, 1e-6));
    }

    TEST_CASE("outdoors that gets colder is followed by its mean") {
        Site site = cottage();
        site.outdoor = Table({0, 7200}, {288.15, 268.15});
        HeatedRoom steps(site), held(cottage());
        steps.at(0, 0);
        held.at(0, 0);
        CHECK(steps.at(7200, 0) == near(held.at(7200, 0), 1e-9));  // 5 degC on average
    }

    TEST_CASE("the room holds five times what its air does, and none where no volume is given") {
        // 60 m3 of dry air at 20 degC and one atmosphere, 1.204 kg/m3 (handbook figure, from
        // memory).
        CHECK(HeatedRoom(cottage()).heat_capacity() ==
              doctest::Approx(5 * 60 * 1.204 * 1006).epsilon(2e-3));
        Site site = cottage();
        site.room_volume = 0;
        HeatedRoom fixed(site);
        fixed.at(0, 5000);
        CHECK(fixed.heat_capacity() == 0);
        CHECK(fixed.at(3600, 5000) == 293.15);
    }
}
