#include "cli/study/find_value.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

/// A made-up stove: spare draw and plate as functions of a value; below 0.1 it can't be built.
std::vector<Row> made_up(std::span<const double> values) {
    std::vector<Row> rows;
    for (const double x : values) {
        Row row;
        row.done = true;
        if (x < 0.1)
            row.error = "too short";
        else
            row.answers = Answers(std::vector<std::pair<std::string, Answer>>{
                {"draws", x > 0.2},
                {"reserve_draw_min_pa", 10 * x},
                {"smoke_back_s", x > 0.8 ? 60.0 : 0.0},
                {"plate_centre_max_c", 300 - 400 * (x - 0.5) * (x - 0.5)}});
        rows.push_back(row);
    }
    return rows;
}

Search between(double low, double high) {
    Search search;
    search.low = low;
    search.high = high;
    return search;
}

}  // namespace

TEST_SUITE("cli/study/find_value") {
    TEST_CASE("the smallest and largest that hold are found at the edges, on their holding side") {
        Search search = between(0, 1);
        search.where = {parse_condition("reserve_draw_min_pa >= 3.333"),
                        parse_condition("smoke_back_s = 0")};
        const Findings smallest = find_value(search, made_up);
        REQUIRE(smallest.found.size() == 1);
        CHECK(smallest.found[0].value >= 0.3333);
        CHECK(smallest.found[0].value <= 0.3333 + 1e-3);
        CHECK_FALSE(smallest.found[0].at_end);
        search.goal = Search::Goal::largest;
        const Findings largest = find_value(search, made_up);
        CHECK(largest.found[0].value <= 0.8);
        CHECK(largest.found[0].value >= 0.8 - 1e-3);
        CHECK(largest.failures.size() == 2);  // of the first looks, at 0 and 1/16
    }

    TEST_CASE("what holds at the end of the span says so") {
        Search search = between(0.5, 1);
        search.where = {parse_condition("reserve_draw_min_pa >= 1")};
        const Findings findings = find_value(search, made_up);
        CHECK(findings.found[0].value == 0.5);
        CHECK(findings.found[0].at_end);
    }

    TEST_CASE("a target that is met twice is found twice, the conditions kept") {
        Search search = between(0.2, 0.9);
        search.goal = Search::Goal::target;
        search.target = parse_condition("plate_centre_max_c = 291");  // 0.35 and 0.65
        const Findings both = find_value(search, made_up);
        REQUIRE(both.found.size() == 2);
        CHECK(both.found[0].value == near(0.35, 1e-3));
        CHECK(both.found[1].value == near(0.65, 1e-3));
        search.where = {parse_condition("reserve_draw_min_pa >= 5")};
        CHECK(find_value(search, made_up).found.size() == 1);
    }

    TEST_CASE("where nothing holds, the one least far off is told") {
        Search search = between(0, 1);
        search.where = {parse_condition("reserve_draw_min_pa >= 12")};
        const Findings findings = find_value(search, made_up);
        CHECK(findings.found.empty());
        REQUIRE(findings.nearest);
        CHECK(findings.nearest->value == 1);
    }

    TEST_CASE("stretches that hold are told one by one") {
        Search search = between(0, 1);
        search.where = {parse_condition("plate_centre_max_c <= 290"), parse_condition("draws")};
        const Findings findings = find_value(search, made_up);
        REQUIRE(findings.holds_within.size() == 2);
        // 290 is met at 0.5 +- sqrt(0.025).
        CHECK(findings.holds_within[0].second == near(0.5 - std::sqrt(0.025), 1e-3));
        CHECK(findings.holds_within[1].first == near(0.5 + std::sqrt(0.025), 1e-3));
    }

    TEST_CASE("conditions are read, and what is none is refused") {
        CHECK(parse_condition(" plate_centre_max_c<=400").value == 400);
        CHECK(parse_condition("plate_centre_max_c<=400").relation == Condition::Relation::at_most);
        CHECK(parse_condition("plate_centre_max_c >= 400").relation ==
              Condition::Relation::at_least);
        const Answers hot(
            std::vector<std::pair<std::string, Answer>>{{"plate_centre_max_c", 500.0}});
        CHECK(relative_margin(parse_condition("plate_centre_max_c <= 400"), hot) ==
              near(-0.25, 1e-12));
        CHECK(relative_margin(parse_condition("exit_gas_mean_c <= 0.1"), hot) < -1e100);
        CHECK_THROWS_AS(parse_condition("plate_centre_max_c"), InputError);
        CHECK_THROWS_AS(parse_condition("plate_max_c >= 400"), InputError);
        CHECK_THROWS_AS(parse_condition("plate_centre_max_c >= hot"), InputError);
    }

    TEST_CASE("a condition on an answer that is not there does not hold, and that is said") {
        const std::vector<Condition> where = {parse_condition("draws"),
                                              parse_condition("plate_centre_max_c <= 600")};
        const std::vector<std::string> asked{"draws", "plate_centre_max_c"};
        using Named = std::pair<std::string, Answer>;
        const Answers open(std::vector<Named>{{"draws", Answer()}, {"plate_centre_max_c", 500.0}});
        CHECK_FALSE(all_hold(where, open));
        CHECK(unanswered(asked, open).find("No answer to draws: the burn is too") !=
              std::string::npos);
        const Answers bare(std::vector<Named>{{"draws", true}, {"plate_centre_max_c", Answer()}});
        CHECK_FALSE(all_hold(where, bare));
        CHECK(unanswered(asked, bare).find("No answer to plate_centre_max_c: it never") !=
              std::string::npos);
        const Answers all(std::vector<Named>{{"draws", true}, {"plate_centre_max_c", 500.0}});
        CHECK(all_hold(where, all));
        CHECK(unanswered(asked, all).empty());
    }

    TEST_CASE("conditions are read as people write them, and no word is a number") {
        CHECK(parse_condition("plate_centre_max_c ≥ 400").relation ==
              Condition::Relation::at_least);
        CHECK(parse_condition("plate_centre_max_c≤400").relation == Condition::Relation::at_most);
        CHECK(parse_condition("smoke_back_s == 0").relation == Condition::Relation::equal);
        CHECK(parse_condition("gust_margin_min_pa >= \u22121").value == -1);
        CHECK_THROWS_WITH_AS(parse_condition("plate_centre_max_c >= 3,5"),
                             doctest::Contains("decimal point"), InputError);
        CHECK_THROWS_WITH_AS(parse_condition("plate_center_max_c >= 3"),
                             doctest::Contains("did you mean \"plate_centre_max_c\""), InputError);
        CHECK_THROWS_WITH_AS(parse_condition("plate_center_max_c >= 3"),
                             doctest::Contains("`drawwell list answers`"), InputError);
        CHECK_THROWS_WITH_AS(parse_condition("draw_limit >= 1"), doctest::Contains("in words"),
                             InputError);
    }
}
