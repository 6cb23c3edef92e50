#include "models/range_tally.h"

#include <doctest/doctest.h>

#include "tests/near.h"

using namespace drawwell;

namespace {

constexpr Range made_up{"law", "quantity", "", 1, 2, 0.5};
constexpr double rounding = 1e-12;  // sums of a few round figures

}  // namespace

TEST_SUITE("models/range_tally") {
    TEST_CASE("an effect's grade: nothing below 1 %, small below 5 %, else judge with care") {
        CHECK(effect_of(0) == Effect::nothing);
        CHECK(effect_of(0.0099) == Effect::nothing);
        CHECK(effect_of(0.01) == Effect::small);
        CHECK(effect_of(0.0499) == Effect::small);
        CHECK(effect_of(0.05) == Effect::judge_with_care);
        CHECK(effect_of(3) == Effect::judge_with_care);
    }

    TEST_CASE("the weight is what hung on a law outside its range, times its uncertainty") {
        RangeTally tally;
        for (const double time : {0.0, 10.0, 20.0}) {
            tally.carry(Answer::draw, 10);
            tally.use(made_up, time < 15 ? 3 : 2, Answer::draw, 4);
            tally.advance(time);
        }
        const auto stretched = tally.stretched();
        REQUIRE(stretched.size() == 1);
        // Of 200 carried, 40 and then 20 while the line falls to nothing.
        CHECK(stretched[0].weight == near(0.5 * 60 / 200, rounding));
        CHECK(stretched[0].share_of_burn == near(0.75, rounding));
        CHECK(stretched[0].on == "draw");
        CHECK(stretched[0].effect == Effect::judge_with_care);
        CHECK(tally.stretched({600, 0, 0, 0})[0].weight == near(0.5 * 60 / 800, rounding));
    }

    TEST_CASE("a law within its range, or on which nothing hangs, is not reported") {
        RangeTally tally;
        for (const double time : {0.0, 10.0}) {
            tally.use(made_up, 1, Answer::draw, 4);
            tally.use(made_up, 2, Answer::draw, 4);
            tally.use(made_up, 3, Answer::draw, 0);
            tally.advance(time);
        }
        CHECK(tally.stretched().empty());
    }

    TEST_CASE("the worst value is one on which something hung") {
        RangeTally tally;
        for (const double time : {0.0, 10.0}) {
            tally.use(made_up, 4, Answer::plate, 100);
            tally.use(made_up, 6, Answer::plate, 100);
            tally.use(made_up, 0.01, Answer::plate, 1);
            tally.use(made_up, 0, Answer::plate, 1);
            tally.advance(time);
        }
        CHECK(tally.stretched()[0].worst == 6);
    }

    TEST_CASE("the answer named is the one a law bears on most, the heaviest law comes first") {
        constexpr Range other{"other", "quantity", "", 1, 2, 0.5};
        RangeTally tally;
        for (const double time : {0.0, 10.0}) {
            tally.carry(Answer::plate, 100);
            tally.carry(Answer::exit_gas, 100);
            tally.use(made_up, 3, Answer::plate, 5);
            tally.use(made_up, 3, Answer::exit_gas, 10);
            tally.use(other, 3, Answer::plate, 20);
            tally.advance(time);
        }
        const auto stretched = tally.stretched();
        REQUIRE(stretched.size() == 2);
        CHECK(stretched[0].law == "other");
        CHECK(stretched[1].on == "exit gas");
        CHECK(stretched[1].weight == near(0.05, rounding));
    }

    TEST_CASE("parts of one material are told apart, and a law without uncertainty bears on none") {
        constexpr Range index_only{"index", "temperature", "K", 1, 2, 0};
        RangeTally tally;
        for (const double time : {0.0, 10.0}) {
            tally.carry(Answer::wear, 1);
            tally.use(made_up, 3, Answer::wear, 1, "riser lining");
            tally.use(made_up, 4, Answer::wear, 1, "tunnel roof");
            tally.use(index_only, 3, Answer::wear, 1);
            tally.advance(time);
        }
        const auto stretched = tally.stretched();
        REQUIRE(stretched.size() == 3);
        CHECK(stretched[0].where == "riser lining");
        CHECK(stretched[1].where == "tunnel roof");
        CHECK(stretched[2].on.empty());
        CHECK(stretched[2].effect == Effect::nothing);
    }
}
