#include "models/spare_draw.h"

#include <doctest/doctest.h>

#include <functional>
#include <map>
#include <vector>

#include "models/stove_run.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

constexpr double minute = 60;

/// A stove with a steady fire of some 5 kW, the spare draw at these paces [s].
Stove burning(double reserve_every, double sustained_every) {
    Stove stove = plain_stove();
    stove.burn_rate = Table(3e-4);
    stove.burn.reserve_every = reserve_every;
    stove.burn.sustained_every = sustained_every;
    return stove;
}

/// Burns for so long [s], showing each minute.
void burn(const Stove& stove, double duration,
          const std::function<void(double time, std::span<const double> state, HeatBalance& balance,
                                   SpareDraw& spare)>& show) {
    StoveRun run(stove, plain_library());
    SpareDraw spare(run.stove, run.built);
    run.burn(duration, minute, [&](double time, auto state, HeatBalance& balance) {
        show(time, state, balance, spare);
        return true;
    });
}

/// The spare draw at each minute.
std::map<double, Spare> spares(const Stove& stove, double duration) {
    std::map<double, Spare> seen;
    burn(stove, duration, [&](double time, auto state, HeatBalance& balance, SpareDraw& spare) {
        seen[time] = spare.at(time, state, balance);
    });
    return seen;
}

}  // namespace

TEST_SUITE("models/spare_draw") {
    TEST_CASE("smoke that passes the air limits the draw of a wide feed, not of a plain opening") {
        Stove stove = burning(5 * minute, 0);
        stove.feed->width *= 2;  // smoke finds its way up beside the air the sooner
        const Spare open = spares(stove, 10 * minute).rbegin()->second;
        CHECK(open.limit == Limit::exchange);
        CHECK(open.exchange_late < open.reserve);
        stove.feed.reset();
        const Spare level = spares(stove, 10 * minute).rbegin()->second;
        CHECK(level.limit == Limit::short_push);
        CHECK(level.exchange_late == level.reserve);
        CHECK(level.reserve > 1);
    }

    TEST_CASE("smoke may pass the air before it surely does, however full the feed") {
        for (const double share : {1.0, 0.3, 0.1, 0.03}) {
            Stove stove = burning(5 * minute, 0);
            stove.feed->free_share = share;
            for (const auto& [time, spare] : spares(stove, 30 * minute)) {
                CHECK(spare.exchange_early <= spare.exchange_late);
                CHECK(spare.exchange_late <= spare.reserve);
            }
        }
    }

    TEST_CASE("a push that lasts is withstood less than a short one once walls are warm") {
        Stove stove = burning(5 * minute, 5 * minute);
        stove.feed->free_share = 0.1;
        const Spare warm = spares(stove, 30 * minute).rbegin()->second;
        CHECK(warm.sustained > 0);
        CHECK(warm.limit ==
              (warm.sustained < warm.reserve ? Limit::lasting_push : Limit::short_push));
    }

    TEST_CASE("the sustained push is worked out at its own pace, from five minutes on") {
        const auto seen = spares(burning(minute, 10 * minute), 16 * minute);
        for (const auto& [time, spare] : seen) {
            CAPTURE(time);
            if (time < 5 * minute)
                CHECK(spare.sustained == 0);
            else if (time < 15 * minute)
                CHECK(spare.sustained == seen.at(5 * minute).sustained);
            else
                CHECK(spare.sustained != seen.at(5 * minute).sustained);
            if (time >= 2 * minute) CHECK(spare.reserve != seen.at(time - minute).reserve);
        }
        CHECK(seen.at(5 * minute).sustained > 0);
    }

    TEST_CASE("the reserve holds between the times at which it is worked out") {
        const auto seen = spares(burning(4 * minute, 0), 8 * minute);
        CHECK(seen.at(7 * minute).reserve == seen.at(4 * minute).reserve);
        CHECK(seen.at(8 * minute).reserve != seen.at(4 * minute).reserve);
    }

    TEST_CASE("suction in the room counts for itself only where air comes by ducts or leaks") {
        Stove stove = burning(5 * minute, 0);
        const Spare tight = spares(stove, 5 * minute).rbegin()->second;
        CHECK(tight.suction == tight.reserve);
        stove.side_air = {{.area = 3e-3, .height = 0.03, .name = "duct", .outdoors = true}};
        const Spare ducted = spares(stove, 5 * minute).rbegin()->second;
        CHECK(ducted.suction > 0);
        CHECK(ducted.suction < ducted.reserve);  // the flue can draw by the duct
    }

    TEST_CASE("to look at the spare draw leaves the balance as it was") {
        burn(burning(5 * minute, 5 * minute), 10 * minute,
             [](double time, auto state, HeatBalance& balance, SpareDraw& spare) {
                 const March& march = balance.flow().march();
                 const double flow = balance.flow().inlet_flow(), by_march = march.mass_flow(0),
                              gas = march.cells().back().outlet_temperature;
                 const std::vector<double> walls(balance.temperature().begin(),
                                                 balance.temperature().end());
                 const double outside = sum_of(balance.fluxes().outside);
                 spare.at(time, state, balance);
                 // The flow is sought anew from the same place: the same to rounding.
                 CHECK(balance.flow().inlet_flow() == near(flow, 1e-9));
                 CHECK(march.mass_flow(0) == near(by_march, 1e-9));
                 CHECK(march.cells().back().outlet_temperature == near(gas, 1e-9));
                 CHECK(sum_of(balance.fluxes().outside) == doctest::Approx(outside).epsilon(1e-9));
                 for (std::size_t i = 0; i < walls.size(); ++i)
                     CHECK(balance.temperature()[i] == walls[i]);
             });
    }
}
