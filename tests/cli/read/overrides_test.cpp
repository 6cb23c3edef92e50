#include "cli/read/overrides.h"

#include <doctest/doctest.h>

#include "tests/cli/read/small_stove.h"

using namespace drawwell;
using namespace drawwell::tests;

TEST_SUITE("cli/read/overrides") {
    TEST_CASE("an override beats the file, or adds what it does not say") {
        CHECK(read(small_stove, {"riser.top=700 mm"}).riser.top == doctest::Approx(0.7));
        CHECK(read(small_stove, {"burn.duration=6h"}).burn.duration == 6 * 3600);
        CHECK(read(small_stove, {"flue.stack.length=1.1m"}).flue.sections.at(1).rise ==
              doctest::Approx(1.1));
        CHECK(read(small_stove, {"riser.top=700mm", "riser.top=690mm"}).riser.top ==
              doctest::Approx(0.69));
        CHECK(read(small_stove, {"load.main.at=5 min, 10 min, 15 min"}).loads.at(0).times.size() ==
              3);
        CHECK(read(small_stove, {"riser.lining=[\"50 mm aes_blanket\"]"})
                  .riser.lining.at(0)
                  .material == "aes_blanket");
        CHECK(read(small_stove, {"feed.free=60%"}).feed->free_share == doctest::Approx(0.6));
    }

    TEST_CASE("moisture of all loads at once also replaces what single loads say") {
        const std::string text = std::string(small_stove) + "moisture = \"20 %\"\n";
        CHECK(read(text).loads.at(0).moisture_wet_basis == doctest::Approx(0.2));
        CHECK(read(text, {"wood.moisture=30%"}).loads.at(0).moisture_wet_basis ==
              doctest::Approx(0.3));
        CHECK(read(text, {"wood.moisture=30%", "load.main.moisture=25%"})
                  .loads.at(0)
                  .moisture_wet_basis == doctest::Approx(0.25));
    }

    TEST_CASE("a burn-rate table or plain heat takes the place of the loads and kindling") {
        const Stove rate = read(small_stove, {"burn_rate.table=3.6 kg/h"});
        CHECK(rate.loads.empty());
        CHECK_FALSE(rate.kindling);
        CHECK((*rate.burn_rate)(60) == doctest::Approx(1e-3));
        const Stove heat =
            read(small_stove, {"heat.power=[[\"0 s\", \"1 kW\"], [\"1 h\", \"2 kW\"]]"});
        CHECK(heat.loads.empty());
        CHECK((*heat.heat_source)(3600) == 2000);
    }

    TEST_CASE("another way of saying the same gives way") {
        const std::string high = std::string(small_stove) + "[site]\npressure = \"900 hPa\"\n";
        CHECK(read(high, {"site.altitude=0 m"}).site.pressure == doctest::Approx(101325));
        CHECK(read(small_stove, {"flue.level.rise=100 mm"}).flue.sections.at(0).rise ==
              doctest::Approx(0.1));
    }

    TEST_CASE("loads told by name in time give way to their own times, and the other way round") {
        const std::string named = with("at = [\"8 min\", \"16 min\"]\n", "[load.late]\n") +
                                  "[schedule]\nload = [['8 min', 'main'], ['1 h', 'late']]\n";
        const Stove moved = read(named, {"load.main.at=9 min"});
        CHECK(moved.loads.at(0).times == std::vector<double>{540});
        CHECK(moved.loads.at(1).times == std::vector<double>{3600});
        CHECK(read(named, {"load.main.at=9 min", "load.late.at=2 h"}).loads.at(1).times ==
              std::vector<double>{7200});
        CHECK(read(small_stove, {"schedule.load=[[\"5 min\", \"main\"]]"}).loads.at(0).times ==
              std::vector<double>{300});
        CHECK(read(named, {"heat.power=3 kW"}).loads.empty());
        CHECK(read(named, {"wood.standing=bundled"}).loads.at(0).standing == Standing::bundled);
    }

    TEST_CASE("what is moved during a burn is overridden as one value or as rows") {
        CHECK(read(small_stove, {"schedule.damper=50%"}).schedule.damper(0) == 0.5);
        CHECK(read(small_stove, {"schedule.damper=half"}).schedule.damper(0) == 0.5);
        const Steps rows =
            read(small_stove, {"schedule.damper=[[\"0 min\",\"100 %\"],[\"50 min\",\"50 %\"]]"})
                .schedule.damper;
        CHECK(rows(2999) == 1);
        CHECK(rows(3000) == 0.5);
    }

    TEST_CASE("an override that came by another option is told as it was typed") {
        const Override by_for{"burn.duration", "6x", "--for 6x"};
        try {
            read_stove(small_stove, "s.toml", std::span(&by_for, 1), read_library());
            FAIL("it was read");
        } catch (const InputError& error) {
            CHECK(std::string(error.what()).find("--for 6x: unknown unit \"x\"") == 0);
        }
    }

    TEST_CASE("errors of an override begin with it") {
        CHECK(problems_of(small_stove, {"riser.topp=3m"}).at(0) ==
              "--set riser.topp=3m: unknown key; did you mean \"riser.top\"?");
        CHECK(problems_of(small_stove, {"feed.mouth=10 kg"}).at(0) ==
              "--set feed.mouth=10 kg: kg is a unit of mass; a length is in mm, cm, m, in, ft");
        CHECK(problems_of(small_stove, {"flue.stak.length=1m"}).at(0) ==
              "--set flue.stak.length=1m: the stove has no [flue.stak], only level, stack; did you "
              "mean "
              "\"stack\"?");
        CHECK(problems_of(small_stove, {"riser.lining=[3"}).at(0).find("this is not a list") !=
              std::string::npos);
        CHECK(problems_of(small_stove, {"plate.underside=700mm"})
                  .at(0)
                  .find("--set plate.underside=700mm: the riser goes through the plate") == 0);
        CHECK(problems_of(small_stove, {"feed.mouth=nan mm", "barrel.height=-1 m"}).size() == 2);
    }

    TEST_CASE("an override without a key or a value is refused") {
        CHECK_THROWS_AS(parse_override("riser.top"), InputError);
        CHECK_THROWS_AS(parse_override("=3"), InputError);
        CHECK(parse_override("title=a=b").value == "a=b");
    }
}
