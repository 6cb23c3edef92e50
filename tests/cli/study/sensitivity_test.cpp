#include "cli/study/sensitivity.h"

#include <doctest/doctest.h>

#include "cli/read/read_library.h"
#include "cli/study/cure.h"
#include "tests/cli/read/small_stove.h"
#include "tests/cli/study/made_row.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Row with_spare(double pascals) {
    return row_with("reserve_draw_min_pa", pascals);
}

}  // namespace

TEST_SUITE("cli/study/sensitivity") {
    TEST_CASE("a change is half of what lies between less and more, or all of the one there is") {
        const Row base = with_spare(5);
        CHECK(*change({"a", false, with_spare(4), with_spare(8)}, base, "reserve_draw_min_pa") ==
              near(2, 1e-12));
        CHECK(*change({"a", false, failed_row(), with_spare(8)}, base, "reserve_draw_min_pa") ==
              near(3, 1e-12));
        CHECK(*change({"a", false, with_spare(4), failed_row()}, base, "reserve_draw_min_pa") ==
              near(1, 1e-12));
        CHECK_FALSE(change({"a", false, failed_row(), failed_row()}, base, "reserve_draw_min_pa"));
    }

    TEST_CASE("influences are ranked by size, whatever their sign, those of no effect left out") {
        const std::vector<Influence> all{{"none", false, with_spare(5), with_spare(5)},
                                         {"some", false, with_spare(4), with_spare(6)},
                                         {"most", true, with_spare(9), with_spare(1)}};
        const auto order = ranked(all, with_spare(5), "reserve_draw_min_pa");
        REQUIRE(order.size() == 2);
        CHECK(order[0]->input == "most");
        CHECK(order[1]->input == "some");
    }

    TEST_CASE("every dimension of a stove is tried both ways, and all that is uncertain") {
        Study study;
        study.files = {{"small.toml", std::string(small_stove), {}}};
        const Library library = read_library();
        std::size_t asked = 0;
        const auto all = influences_on(study, library, [&](const Study& both) {
            asked = both.size();
            return std::vector<Row>(both.size());
        });
        CHECK(asked == 2 * all.size());
        const auto has = [&](const std::string& name) {
            return std::any_of(all.begin(), all.end(),
                               [&](const Influence& each) { return each.input == name; });
        };
        CHECK(has("riser.top"));
        CHECK(has("flue.stack.length"));
        CHECK(has("fuel_bed.surface_rate"));
        CHECK(has("day.outdoor"));
    }

    TEST_CASE("cures are changes that the stove has a part for, cheapest first") {
        const auto whole = remedies_for(plain_stove());
        REQUIRE(whole.size() >= 6);
        CHECK(whole.front().what.find("opening under the plate") == 0);
        CHECK(whole.back().what.find("insulated") != std::string::npos);
        Stove bare = plain_stove();
        bare.flue.sections.clear();
        bare.port.reset();
        bare.barrel.reset();
        bare.plate.reset();
        CHECK(remedies_for(bare).empty());
    }
}
