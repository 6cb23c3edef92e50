#include "cli/read/resolved_text.h"

#include <doctest/doctest.h>

#include "cli/read/embedded_data.h"
#include "cli/read/keys.h"
#include "tests/cli/read/small_stove.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// Reads the resolved text and compares every key's value exactly, and what keys do not show.
void check_round_trip(const Stove& stove) {
    const std::string text = resolved_text(stove);
    INFO(text);
    const Stove again = read_stove(text, "resolved.toml", {}, read_library());
    CHECK(resolved_text(again) == text);
    StoveDraft first = draft_of(stove), second = draft_of(again);
    const auto keys = keys_in(first);
    CHECK(keys.size() == keys_in(second).size());
    for (const FoundKey& found : keys) {
        const auto a = get_value(first, found), b = get_value(second, found);
        CHECK(a.has_value() == b.has_value());
        if (!a || !b) continue;
        INFO(full_key_name(*found.key, found.name));
        if (std::holds_alternative<double>(*a)) CHECK(std::get<double>(*a) == std::get<double>(*b));
        CHECK(value_text(*found.key, *a) == value_text(*found.key, *b));
    }
    REQUIRE(stove.side_air.size() == again.side_air.size());
    for (std::size_t i = 0; i < stove.side_air.size(); ++i)
        CHECK(stove.side_air[i].area == again.side_air[i].area);
}

}  // namespace

TEST_SUITE("cli/read/resolved_text") {
    TEST_CASE("the text with every value reads back to exactly the same stove") {
        check_round_trip(read(small_stove));
        check_round_trip(read(
            small_stove, {"riser.top=28 17/32 in", "site.outdoor=41 °F", "wood.moisture=19 % dry",
                          "flue.stack.rise=2.1 m", "site.altitude=733 m", "kindling.mass=0 kg"}));
        check_round_trip(
            read(small_stove, {"burn_rate.table=[[\"0 s\", \"1 kg/h\"], [\"7 min\", \"2.4 kg/h\"]]",
                               "side_air.a.holes=7", "side_air.a.diameter=8 mm"}));
        check_round_trip(read(
            "title = 'quote \" and \\ stroke'\n[riser]\nwidth='1.5 m'\ndepth='0.3 m'\ntop='2 m'\n"
            "wall_temperature='60 °C'\n"));
        check_round_trip(read(small_stove, {"riser.lining=board", "riser.section=octagonal",
                                            "barrel.jacket=blanket", "barrel.jacket_from=300 mm",
                                            "flue.stack.wall=twin_wall", "flue.stack.entry=tee",
                                            "site.room_loss=150 W/K", "site.room_volume=50 m3"}));
        check_round_trip(read(embedded_data("stoves/allotment-kitchen.toml")));
        check_round_trip(read(embedded_data("stoves/workshop.toml")));
        check_round_trip(read(embedded_data("stoves/workshop-kitchen.toml")));
        for (const char* sample :
             {"kitchen-window", "workshop-bench", "workshop-ducted", "market-griddle"})
            check_round_trip(read(embedded_data("stoves/" + std::string(sample) + ".toml")));
    }

    TEST_CASE("a build-up is written as its layers, a jacket's heights only where there is one") {
        const std::string text =
            resolved_text(read(small_stove, {"riser.lining=board", "barrel.jacket=blanket"}));
        CHECK(text.find("lining = [\"25 mm aes_board\", \"1 mm stainless_304\"]") !=
              std::string::npos);
        CHECK(text.find("\"board\"") == std::string::npos);
        CHECK(text.find("jacket_from") != std::string::npos);
        CHECK(resolved_text(read(small_stove)).find("jacket") == std::string::npos);
    }

    TEST_CASE("what changes during a burn reads back to the same stove") {
        check_round_trip(read(
            small_stove, {"schedule.damper=[[\"0 min\", \"open\"], [\"50 min\", \"33 %\"]]",
                          "bypass.bore=90 mm",
                          "schedule.bypass=[[\"0 s\", \"open\"], [\"431 s\", \"shut\"]]",
                          "schedule.port=70 %",
                          "side_air.a.holes=7",
                          "side_air.a.diameter=8 mm",
                          "side_air.a.from=outdoors",
                          "side_air.a.duct=2.5 m",
                          "schedule.side_air=half",
                          "schedule.feed_cover=on",
                          "schedule.plate_cover=[[\"0 s\", \"off\"], [\"1 h\", \"on\"]]",
                          "plate.cover_resistance=0.31 m2 K/W",
                          "flue.damper=stack",
                          "leak.lid.area=33 mm2",
                          "leak.lid.place=under_plate",
                          "leak.collar.area=0.7 cm2",
                          "leak.collar.place=flue_outlet",
                          "load.main.standing=bundled",
                          "burn.lit_at=19:30",
                          "burn.sustained_every=0 s",
                          "site.gust=[[\"0 s\", \"3 m/s\"], [\"1 h\", \"9 m/s\"]]",
                          "site.gust_factor=0.7",
                          "site.room_suction=[[\"20:00\", \"0 Pa\"], [\"20:01\", \"6 Pa\"]]"}));
    }

    TEST_CASE("a constant in place of a table is said as one value") {
        const Stove stove = read(small_stove, {"burn_rate.table=3.6 kg/h"});
        check_round_trip(stove);
        CHECK(resolved_text(stove).find("table = \"3.6 kg/h\"") != std::string::npos);
    }

    TEST_CASE("it says the defaults that were used") {
        const std::string text = resolved_text(read(small_stove));
        CHECK(text.find("duration = \"3 h\"") != std::string::npos);
        CHECK(text.find("thickness = \"6 mm\"") != std::string::npos);
        CHECK(text.find("[flue.level]") < text.find("[flue.stack]"));
    }
}
