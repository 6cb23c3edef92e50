#include "cli/read/keys.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

#include "tests/cli/read/small_stove.h"

using namespace drawwell;

TEST_SUITE("cli/read/keys") {
    TEST_CASE("every key has a name of its own, a help, a home and a range") {
        std::set<std::string_view> names;
        for (const Key& key : all_keys()) {
            INFO(key.name);
            CHECK(names.insert(key.name).second);
            CHECK(key.help.size() > 10);
            CHECK(key.least <= key.most);
            CHECK(key.required == key.fallback.empty());
            CHECK((key.kind == Kind::choice) == !key.choices.empty());
            StoveDraft draft;
            CHECK(key.field(draft, "some", true).index() != 0);
        }
    }

    TEST_CASE("keys are found by full name, named parts under any name") {
        CHECK(find_key("riser.top").key->name == "riser.top");
        CHECK(find_key("flue.stack.length").key->name == "flue.NAME.length");
        CHECK(find_key("flue.stack.length").name == "stack");
        CHECK(find_key("flue.outlet").key->name == "flue.outlet");
        CHECK(find_key("riser.topp").key == nullptr);
        CHECK(find_key("riser").key == nullptr);
        CHECK(find_key("flue.a.b.c").key == nullptr);
        CHECK(is_table_of_keys("flue"));
        CHECK(is_table_of_keys("flue.stack"));
        CHECK_FALSE(is_table_of_keys("riser.top"));
        CHECK_FALSE(is_table_of_keys("chimney"));
    }

    TEST_CASE("the keys that other commands rely on exist") {
        for (const char* name : {"feed.mouth",
                                 "tunnel.width",
                                 "port.width",
                                 "riser.top",
                                 "riser.bore",
                                 "barrel.diameter",
                                 "barrel.height",
                                 "plate.underside",
                                 "plate.thickness",
                                 "flue.level.length",
                                 "flue.stack.length",
                                 "flue.outlet",
                                 "port.height",
                                 "kindling.place",
                                 "burn.duration",
                                 "site.outdoor",
                                 "site.room",
                                 "site.room_suction",
                                 "wood.moisture",
                                 "schedule.damper",
                                 "schedule.bypass",
                                 "schedule.port",
                                 "schedule.side_air",
                                 "schedule.feed_cover",
                                 "schedule.plate_cover",
                                 "site.gust"}) {
            INFO(name);
            CHECK(find_key(name).key != nullptr);
        }
    }

    TEST_CASE("every key that a stove has can be set and read back") {
        StoveDraft draft = draft_of(tests::read(tests::small_stove));
        for (const FoundKey& found : keys_in(draft)) {
            const std::string full = full_key_name(*found.key, found.name);
            INFO(full);
            const auto value = get_value(draft, found);
            if (!value || !std::holds_alternative<double>(*value)) continue;
            // Count and quantity alike: the next whole number lies in no other key's way.
            const double other = std::get<double>(*value) + 1;
            set_value(draft, found, other);
            CHECK(std::get<double>(*get_value(draft, found)) == other);
        }
        const Stove& stove = draft.stove;
        CHECK(stove.riser.top == doctest::Approx(1.725));
        CHECK(stove.flue.sections.at(1).length == doctest::Approx(3.2));
        CHECK(stove.loads.front().pieces == 4);
    }

    TEST_CASE("a stove's value is got by its key's full name") {
        const Stove stove = tests::read(tests::small_stove);
        CHECK(std::get<double>(*get_value(stove, "flue.stack.length")) == doctest::Approx(2.2));
        CHECK(std::get<std::string>(*get_value(stove, "flue.level.direction")) == "level");
        CHECK(std::get<std::string>(*get_value(stove, "kindling.place")) == "riser_foot");
        CHECK(std::get<BuildUp>(*get_value(stove, "riser.lining")).size() == 2);
        CHECK_FALSE(get_value(stove, "flue.other.length"));
        CHECK_FALSE(get_value(stove, "riser.wall_temperature"));
        CHECK_FALSE(get_value(stove, "no.such"));
    }
}
