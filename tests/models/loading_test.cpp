#include "models/loading.h"

#include <doctest/doctest.h>

#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Load load(const char* name, double time, int pieces) {
    return {.name = name,
            .times = {time},
            .kind = "wood",
            .pieces = pieces,
            .side = 0.05,  // 2500 mm2 each, in a feed of 125 x 110 mm
            .length = 0.3,
            .mass = 0.5 * pieces};
}

struct Loaded {
    explicit Loaded(std::vector<Load> loads)
        : built(build(std::move(loads))), loading(built), fuel(built.bed->state_count()) {}
    static BuiltStove build(std::vector<Load> loads) {
        Stove stove = plain_stove();
        stove.loads = std::move(loads);
        return build_network(stove, plain_library());
    }
    double wood(std::size_t lot) const { return built.bed->wood_of(lot, fuel); }

    BuiltStove built;
    Loading loading;
    std::vector<double> fuel;
};

}  // namespace

TEST_SUITE("models/loading") {
    TEST_CASE("a load goes in at its time and not before") {
        Loaded run({load("one", 600, 1)});
        CHECK(run.loading.at_stop(0, run.fuel) == 0);
        CHECK(run.wood(0) == 0);
        CHECK(run.loading.at_stop(600, run.fuel) == 0);
        CHECK(run.wood(0) == near(0.5 * 0.995, 1e-12));
        CHECK(run.loading.put_wood() == near(0.5 * 0.995, 1e-12));
        CHECK(run.loading.put_value() == near(0.5 * 0.995 * 19.8e6, 1e-12));
        CHECK(run.loading.remarks().empty());
    }

    TEST_CASE("a load that is too big for the feed lets later ones that fit go in") {
        Loaded run({load("log", 0, 6), load("stick", 60, 1)});
        CHECK(run.loading.at_stop(0, run.fuel) == 60);  // tries again a minute later
        CHECK(run.loading.at_stop(60, run.fuel) == 120);
        CHECK(run.wood(0) == 0);
        CHECK(run.wood(1) > 0);
        CHECK(run.loading.remarks() ==
              std::vector<std::string>{"load log due at 0 min never fitted into the feed"});
    }

    TEST_CASE("loads that wait go in by the order of their times, and the remarks say when") {
        Loaded run({load("first", 0, 4), load("second", 60, 2), load("third", 120, 2)});
        run.loading.at_stop(0, run.fuel);
        run.loading.at_stop(60, run.fuel);
        run.loading.at_stop(120, run.fuel);
        CHECK(run.wood(1) + run.wood(2) == 0);
        run.fuel[1] = 0.1 * run.wood(0);  // burnt down to a quarter of its feet: room for two more
        CHECK(run.loading.at_stop(600, run.fuel) == 660);
        CHECK(run.wood(1) > 0);
        CHECK(run.wood(2) == 0);
        run.fuel[1] = 0;
        CHECK(run.loading.at_stop(660, run.fuel) == 0);
        CHECK(run.wood(2) > 0);
        CHECK(
            run.loading.remarks() ==
            std::vector<std::string>{"load second due at 1 min did not fit and went in at 10 min",
                                     "load third due at 2 min did not fit and went in at 11 min"});
    }
}
