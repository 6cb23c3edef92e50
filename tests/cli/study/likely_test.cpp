#include "cli/study/likely.h"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "tests/near.h"

using namespace drawwell;

namespace {

/// A hundred and one days with a spare draw of 0 to 10 Pa; no draw on the first eleven.
std::vector<Row> days() {
    std::vector<Row> rows;
    for (int i = 0; i <= 100; ++i) {
        Row row;
        row.done = true;
        row.answers = Answers(std::vector<std::pair<std::string, Answer>>{
            {"draws", i > 10},
            {"reserve_draw_min_pa", i > 10 ? Answer(i / 10.0) : Answer()},
            {"draw_limit", "exchange"}});
        rows.push_back(row);
    }
    return rows;
}

}  // namespace

TEST_SUITE("cli/study/likely") {
    TEST_CASE("a range leaves one day in twenty below and one above, of those with the answer") {
        const LikelyRange range = likely_range(days(), "reserve_draw_min_pa");
        CHECK(range.days == 90);
        // 1.1 to 10.0 in steps of 0.1: 5 % of the way is 4.45 steps.
        CHECK(range.low == near(1.545, 1e-9));
        CHECK(range.median == near(5.55, 1e-9));
        CHECK(range.high == near(9.555, 1e-9));
        CHECK(likely_range(days(), "plate_centre_max_c").days == 0);
        CHECK(days_with(days(), "draws") == 90);
    }

    TEST_CASE("the median of each stove stands in its row, with the range beside it") {
        Study study;
        study.files = {{"a.toml", "", {}}};
        study.variants = {{}, {}};
        study.days = 101;
        std::vector<Row> rows = days();
        for (Row& row : days()) rows.push_back(row);
        for (std::size_t i = 101; i < 202; ++i) {
            rows[i].answers = {};
            rows[i].error = "too short";
        }
        const std::vector<Row> medians = median_rows(study, rows);
        REQUIRE(medians.size() == 2);
        CHECK(medians[0].answers.number("reserve_draw_min_pa").value() == near(5.55, 1e-9));
        CHECK(medians[0].answers.number("reserve_draw_min_pa_high").value() == near(9.555, 1e-9));
        CHECK(medians[0].answers.number("draws") == 1);
        CHECK(medians[0].answers.number("draws_on_days") == 90);
        CHECK(medians[1].error == "too short");
        CHECK(range_text(days_of(study, rows, 0), headline_of("draws")) == "90/101");
        CHECK(range_text(days_of(study, rows, 0), headline_of("reserve_draw_min_pa")) == "1.5-9.6");
    }

    TEST_CASE("the page and the JSON say on how many days it draws") {
        const std::vector<Row> all = days();
        CHECK(likely_page(all, false).find("on 90 of 101 days and fires") != std::string::npos);
        const Headline spare = headline_of("reserve_draw_min_pa");
        Headline hot = spare;  // as if it were a temperature
        hot.unit = "°C";
        CHECK(range_text(all, in_system(hot, UnitSystem::us)) == "35-49");  // 1.5 and 9.6 °C
        const auto json = nlohmann::json::parse(with_likely("{\"draws\": true}", all));
        CHECK(json["draws"] == true);
        CHECK(json["likely"]["draws_on"] == 90);
        CHECK(json["likely"]["reserve_draw_min_pa"]["median"] == near(5.55, 1e-9));
    }

    TEST_CASE("days too short to judge count neither for nor against") {
        std::vector<Row> all = days();
        for (int i = 0; i < 60; ++i)
            all[static_cast<std::size_t>(i)].answers =
                Answers(std::vector<std::pair<std::string, Answer>>{{"draws", Answer()}});
        all[60].error = "too small";
        CHECK(days_with(all, "draws") == 41);
        CHECK(days_unjudged(all) == 60);
        CHECK(likely_ranges(all).unjudged == 60);
        CHECK(likely_page(all, false).find("; 60 burned") != std::string::npos);
        CHECK(likely_page(days(), false).find("too short") == std::string::npos);
        CHECK(nlohmann::json::parse(with_likely("{}", all))["likely"]["unjudged"] == 60);
        Study study;
        study.files = {{"a.toml", "", {}}};
        study.variants = {{}};
        study.days = 101;
        CHECK(median_rows(study, all)[0].answers.number("draws") == 1);
        for (Row& row : all)
            row.answers = Answers(std::vector<std::pair<std::string, Answer>>{{"draws", Answer()}});
        const std::vector<Row> none = median_rows(study, all);
        REQUIRE(none[0].answers.find("draws"));
        CHECK_FALSE(none[0].answers.number("draws"));
    }
}
