#include "cli/study/compare_table.h"

#include <doctest/doctest.h>

using namespace drawwell;

namespace {

Row burned(std::optional<bool> draws, double spare, double smoke, double plate) {
    Row row;
    row.done = true;
    row.answers = Answers(
        std::vector<std::pair<std::string, Answer>>{{"draws", draws ? Answer(*draws) : Answer()},
                                                    {"reserve_draw_min_pa", spare},
                                                    {"smoke_back_s", smoke},
                                                    {"plate_centre_max_c", plate}});
    return row;
}

struct Compared {
    Compared() {
        study.files = {{"small.toml", "", {}}};
        study.variants = {{}};
        for (const char* top : {"500 mm", "600 mm", "700 mm", "800 mm"})
            study.variants.push_back({{{"riser.top", top, ""}}});
        rows = {burned(true, 5, 0, 300),
                burned(false, 0, 900, 420),
                burned(true, 4, 0, 310),
                burned(true, 6, 30, 320),
                {}};
        rows[4].done = true;
        rows[4].error = "the riser goes through the plate";
        look.answers.assign(headlines().begin(), headlines().begin() + 4);
        look.sort = "reserve_draw_min_pa";
        look.base = true;
    }
    Study study;
    std::vector<Row> rows;
    CompareLook look;
};

std::string line_with(const std::string& text, const std::string& part) {
    const std::size_t at = text.find(part);
    if (at == std::string::npos) return "";
    const std::size_t from = text.rfind('\n', at) + 1;
    return text.substr(from, text.find('\n', at) - from);
}

}  // namespace

TEST_SUITE("cli/study/compare_table") {
    TEST_CASE(
        "a stove that burned too short to judge stands between those that draw and those not") {
        Compared compared;
        compared.rows[2] = burned({}, 4, 0, 310);
        CHECK(sorted_rows(compared.rows, compared.look) == std::vector<std::size_t>{0, 3, 2, 1, 4});
        const std::string table = compare_table(compared.study, compared.rows, compared.look);
        CHECK(line_with(table, "500 mm").find("no") != std::string::npos);
        CHECK(line_with(table, "600 mm").find("too short") != std::string::npos);
        CHECK(table.find("too short: nothing burned for long enough") != std::string::npos);
        CHECK(compare_table(Compared().study, Compared().rows, Compared().look).find("too short") ==
              std::string::npos);
    }

    TEST_CASE("stoves that draw without smoke come first, those that failed last") {
        const Compared compared;
        CHECK(sorted_rows(compared.rows, compared.look) == std::vector<std::size_t>{0, 2, 3, 1, 4});
        CompareLook hottest = compared.look;
        hottest.sort = "plate_centre_max_c";
        CHECK(sorted_rows(compared.rows, hottest) == std::vector<std::size_t>{2, 0, 3, 1, 4});
        hottest.as_given = true;
        CHECK(sorted_rows(compared.rows, hottest) == std::vector<std::size_t>{0, 1, 2, 3, 4});
    }

    TEST_CASE("the best of a column is marked among those that draw, and only where they differ") {
        const Compared compared;
        const std::string table = compare_table(compared.study, compared.rows, compared.look);
        CHECK(line_with(table, "700 mm").find("6.0*") != std::string::npos);
        CHECK(line_with(table, "700 mm").find("320*") != std::string::npos);
        CHECK(table.find("420*") == std::string::npos);  // hottest, but it does not draw
        CHECK(table.find("yes*") == std::string::npos);
    }

    TEST_CASE("differences are told against the stove as filed, failures with their reason") {
        const Compared compared;
        const std::string table = compare_table(compared.study, compared.rows, compared.look);
        const std::string apart = table.substr(table.find("Against the stove"));
        CHECK(line_with(apart, "600 mm").find("-1.0") != std::string::npos);
        CHECK(line_with(apart, "600 mm").find("+10") != std::string::npos);
        CHECK(line_with(table, "800 mm").find("failed") != std::string::npos);
        CHECK(table.find("the riser goes through the plate") != std::string::npos);
        CHECK(table.find("riser.top: height of the riser's upper end") != std::string::npos);
    }

    TEST_CASE("in US units what varies, the answers and their differences are told in them") {
        Compared compared;
        for (Headline& headline : compared.look.answers)
            headline = in_system(headline, UnitSystem::us);
        compared.look.units = UnitSystem::us;
        const std::string table = compare_table(compared.study, compared.rows, compared.look);
        CHECK(line_with(table, "23 5/8 in").find("590") != std::string::npos);  // 310 °C
        CHECK(table.find("°F") != std::string::npos);
        CHECK(table.find("°C") == std::string::npos);
        const std::string apart = table.substr(table.find("Against the stove"));
        CHECK(line_with(apart, "23 5/8 in").find("+18") != std::string::npos);   // 10 K
        CHECK(line_with(apart, "23 5/8 in").find("-1.0") != std::string::npos);  // Pa
    }

    TEST_CASE("a table wider than the page goes on below, with the stoves named again") {
        Compared compared;
        for (const char* answer : {"exit_gas_mean_c", "heat_to_room_mj", "plate_rim_max_c",
                                   "plate_time_to_175c_s", "barrel_top_max_c"})
            compared.look.answers.push_back(headline_of(answer));
        const std::string table = compare_table(compared.study, compared.rows, compared.look);
        std::size_t longest = 0;
        for (std::size_t at = 0; at < table.size();) {
            const std::size_t end = std::min(table.find('\n', at), table.size());
            longest = std::max(longest, end - at);
            at = end + 1;
        }
        CHECK(longest <= 84);  // bytes; a degree sign takes two
        const std::string head = table.substr(0, table.find("Against the stove"));
        CHECK(head.find("riser.top") != head.rfind("riser.top"));
        CHECK(head.find("barrel_top_max") != std::string::npos);
    }

    TEST_CASE("an answer without words of its own is told by its name, its unit taken off") {
        CHECK(headline_of("plate_rim_max_c").heading == "plate_rim_max");
        CHECK(headline_of("plate_rim_max_c").unit == "°C");
        CHECK(headline_of("air_flow_mean_kg_s").heading == "air_flow_mean_kg_s");
        CHECK(headline_of("steps").unit.empty());
    }
}
