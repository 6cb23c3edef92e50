#include "cli/study/compare_table.h"

#include <doctest/doctest.h>

using namespace drawwell;

namespace {

Row burned(bool draws, double spare, double smoke, double plate) {
    Row row;
    row.done = true;
    row.answers =
        Answers(std::vector<std::pair<std::string, Answer>>{{"draws", draws},
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
}
