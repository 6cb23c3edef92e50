#include "cli/commands/list_command.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <sstream>
#include <string>

#include "cli/read/keys.h"
#include "cli/report/answer_infos.h"
#include "cli/report/summary_entries.h"
#include "tests/cli/read/small_stove.h"

using namespace drawwell;

namespace {

void check_width(const std::string& text) {
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        INFO(line);
        // A degree sign takes two bytes and one column.
        const auto letters =
            std::count_if(line.begin(), line.end(), [](char c) { return (c & 0xC0) != 0x80; });
        CHECK(letters <= 80);
        CHECK(line.find_last_not_of(' ') + 1 == line.size());
    }
}

}  // namespace

TEST_SUITE("cli/commands/list_command") {
    TEST_CASE("the list of keys has every key and fits the screen") {
        const std::string text = list_keys("");
        for (const Key& key : all_keys()) {
            INFO(key.name);
            CHECK(text.find("\n" + std::string(key.name) + " ") != std::string::npos);
        }
        check_width(text);
    }

    TEST_CASE("a word narrows the list and brings units and range") {
        const std::string text = list_keys("riser.top");
        CHECK(text.find("length in mm, cm, m, in, ft, from 50 mm to 20 m") != std::string::npos);
        CHECK(text.find("barrel.height") == std::string::npos);
        CHECK_THROWS_AS(list_keys("nosuchword"), InputError);
        CHECK(list_keys("schedule.port").find("from 5 % to 100 %; or open, half; or a list of") !=
              std::string::npos);
    }

    TEST_CASE("materials, build-ups, woods and columns are listed by name") {
        const Library library = read_library();
        for (const auto& [name, _] : library.materials)
            CHECK(list_materials(library, "").find("\n" + name + " ") != std::string::npos);
        CHECK(list_woods(library, "").find("\nash ") != std::string::npos);
        check_width(list_materials(library, ""));
        const auto build_ups = read_build_ups();
        check_width(list_build_ups(build_ups, ""));
        CHECK(list_build_ups(build_ups, "").find("\nboard ") != std::string::npos);
        CHECK(list_build_ups(build_ups, "blanket").find("25 mm aes_blanket, 1 mm stainless_304") !=
              std::string::npos);
        CHECK(list_build_ups(build_ups, "blanket").find("masonry") == std::string::npos);
        check_width(list_woods(library, ""));
        const std::array columns{ColumnInfo{"flue_gas", "K", "flue_cell", "gas in the flue"},
                                 ColumnInfo{"air", "kg/s", "", "air into the feed"}};
        CHECK(list_columns(columns, "").find("flue_gas  K     flue_cell  gas in the flue") !=
              std::string::npos);
        CHECK(list_columns(columns, "air").find("flue_gas") == std::string::npos);
    }

    TEST_CASE("in US units ranges, defaults, weights and temperatures are told in them") {
        const std::string keys = list_keys("riser.top", UnitSystem::us);
        CHECK(keys.find("from 1 15/16 in to ") != std::string::npos);
        CHECK(list_keys("grid.NAME.pitch", UnitSystem::us).find("[9/16 in *]") !=
              std::string::npos);  // 15 mm
        const std::string materials = list_materials(read_library(), "brick", UnitSystem::us);
        CHECK(materials.find("lb/ft3") != std::string::npos);
        CHECK(materials.find("106 ") != std::string::npos);  // 1700 kg/m3
        CHECK(materials.find("68 °F") != std::string::npos);
        check_width(materials);
        check_width(list_keys("", UnitSystem::us));
    }

    TEST_CASE("every answer is listed by name, unit and meaning") {
        const std::string text = list_answers("");
        for (const SummaryEntry& entry : summary_entries(Summary{})) {
            INFO(entry.key);
            CHECK(text.find("\n" + std::string(entry.key) + " ") != std::string::npos);
        }
        CHECK(burn_answers().size() == summary_entries(Summary{}).size());
        for (const AnswerInfo& info : burn_answers()) CHECK_FALSE(info.meaning.empty());
        for (const char* answer :
             {"pot.NAME/boils_after_s", "pot.NAME/dry_after_s", "griddle.NAME/most_c",
              "oven_tube.NAME/bakes_s", "window.NAME/light_mj", "grid.NAME/free",
              "bell.NAME/heat_mj", "air_channel.NAME/air_kg", "damp.NAME/driven_off_kg"}) {
            INFO(answer);
            CHECK(text.find("\n" + std::string(answer) + " ") != std::string::npos);
        }
        check_width(text);
        CHECK(list_answers("smoke").find("smoke_back_s") != std::string::npos);
        CHECK(list_answers("smoke").find("plate_rim_max_c") == std::string::npos);
        CHECK_THROWS_AS(list_answers("nosuchword"), InputError);
    }
}
