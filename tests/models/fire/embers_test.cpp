#include "models/fire/embers.h"

#include <doctest/doctest.h>

#include "tests/models/fire/bed_bench.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

TEST_SUITE("models/fire/embers") {
    TEST_CASE("embers linger: alone in plenty of air they last about twenty minutes") {
        const double lasting = 0.1 / char_rate(0.1, air(0.05), plain_bed());
        // 15 to 25 minutes: a modelling choice of ours.
        CHECK(lasting > 15 * 60);
        CHECK(lasting < 25 * 60);
        CHECK(char_rate(0, air(0.05), plain_bed()) == 0);
    }

    TEST_CASE("embers take no more oxygen than arrives, and none where none does") {
        const BedConstants bed = plain_bed();
        const Arriving little = air(1e-4);
        const double taken = char_rate(1.5, little, bed) * oxygen_per_char(bed);
        CHECK(taken <= little.species[o2]);
        CHECK(taken > 0.99 * little.species[o2]);
        CHECK(char_rate(1.5, air(0), bed) == 0);
    }

    TEST_CASE("carbon that leaves as monoxide takes half the oxygen") {
        BedConstants bed = plain_bed();
        bed.char_to_co.value = 0;
        CHECK(oxygen_per_char(bed) == near(32.0 / 12.011, 1e-3));  // one molecule to an atom
        const double whole = oxygen_per_char(bed);
        bed.char_to_co.value = 1;
        CHECK(oxygen_per_char(bed) == near(whole / 2, 1e-12));
    }

    TEST_CASE("the slope given for implicit steps is that of the rate") {
        for (const double flow : {0.05, 2e-4})
            for (const double held : {0.08, 1e-3}) {
                const BedConstants bed = plain_bed();
                const double step = 1e-5 * held;
                const double change =
                    char_rate(held + step, air(flow), bed) - char_rate(held, air(flow), bed);
                CHECK(char_rate_slope(held, air(flow), bed) == near(change / step, 1e-4));
            }
    }
}
