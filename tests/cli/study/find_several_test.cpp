#include "cli/study/find_several.h"

#include <doctest/doctest.h>

#include <cmath>
#include <stdexcept>

#include "cli/study/shifts.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

/// Made-up stoves: spare draw 40 x y, plate 200 + 100 (x - y); below x = 0.05 they can't be built.
std::vector<Row> made_up(const std::vector<Point>& points) {
    std::vector<Row> rows;
    for (const Point& p : points) {
        Row row;
        row.done = true;
        if (p[0] < 0.05)
            row.error = "too short";
        else
            row.answers = Answers(std::vector<std::pair<std::string, Answer>>{
                {"draws", 40 * p[0] * p[1] > 1},
                {"reserve_draw_min_pa", 40 * p[0] * p[1]},
                {"plate_centre_max_c", 200 + 100 * (p[0] - p[1])}});
        rows.push_back(row);
    }
    return rows;
}

SeveralSearch unit_square() {
    SeveralSearch search;
    search.low = {0, 0};
    search.high = {1, 1};
    search.from = {0.9, 0.5};
    search.where = {parse_condition("draws"), parse_condition("reserve_draw_min_pa >= 10"),
                    parse_condition("plate_centre_max_c >= 190")};
    return search;
}

// x y = 0.25 and x = y - 0.1 meet there.
const double least_x = (-0.1 + std::sqrt(0.01 + 1)) / 2;

}  // namespace

TEST_SUITE("cli/study/find_several") {
    TEST_CASE("the smallest of one key is found where two conditions hold it, by both keys") {
        const SeveralFindings findings = find_several(unit_square(), made_up);
        REQUIRE(findings.found);
        // Found to a thousandth of the span, on the side where all hold.
        CHECK(findings.found->point[0] == near(least_x, 5e-3));
        CHECK(findings.found->point[0] >= least_x - 1e-9);
        CHECK(findings.found->point[1] == near(least_x + 0.1, 1e-2));
        CHECK(all_hold(unit_square().where, findings.found->row.answers));
    }

    TEST_CASE("the largest of one key is found where the other makes room for it") {
        SeveralSearch search = unit_square();
        search.goal = SeveralSearch::Goal::largest;
        search.where = {parse_condition("plate_centre_max_c <= 230"),
                        parse_condition("reserve_draw_min_pa <= 16")};
        const SeveralFindings findings = find_several(search, made_up);
        REQUIRE(findings.found);
        // x = y + 0.3 and x y = 0.4.
        CHECK(findings.found->point[0] == near(0.3 / 2 + std::sqrt(0.0225 + 0.4), 5e-3));
    }

    TEST_CASE("a target is met by the least change of all keys") {
        SeveralSearch search = unit_square();
        search.goal = SeveralSearch::Goal::target;
        search.target = parse_condition("plate_centre_max_c = 200");
        search.where.clear();
        const SeveralFindings findings = find_several(search, made_up);
        REQUIRE(findings.found);
        // From (0.9, 0.5) straight to the diagonal; met to half a hundredth of 200.
        CHECK(findings.found->point[0] == doctest::Approx(0.7).epsilon(0.02));
        CHECK(findings.found->point[1] == doctest::Approx(0.7).epsilon(0.02));
        CHECK(*findings.found->row.answers.number("plate_centre_max_c") ==
              near(200, search.close + 1e-6));
    }

    TEST_CASE("where nothing holds together, the least far off is told") {
        SeveralSearch search = unit_square();
        search.where = {parse_condition("reserve_draw_min_pa >= 60")};
        const SeveralFindings findings = find_several(search, made_up);
        CHECK_FALSE(findings.found);
        REQUIRE(findings.nearest);
        CHECK(findings.nearest->point[0] == near(1, 1e-2));
        CHECK(findings.nearest->point[1] == near(1, 1e-2));
    }

    TEST_CASE("stoves that can't be are counted, and what stops the search comes through") {
        const SeveralFindings findings = find_several(unit_square(), made_up);
        CHECK_FALSE(findings.failures.empty());
        std::size_t calls = 0;
        const RowsAt stops = [&](const std::vector<Point>& points) {
            if (++calls > 3) throw std::runtime_error("stopped");
            return made_up(points);
        };
        CHECK_THROWS_WITH_AS(find_several(unit_square(), stops), "stopped", std::runtime_error);
    }
}

TEST_SUITE("cli/study/shifts") {
    TEST_CASE("multipliers are those of the conditions that hold the place, none negative") {
        const Point both = multipliers({{1, 0}, {0, 2}}, {3, 4});
        CHECK(both[0] == near(3, 1e-6));
        CHECK(both[1] == near(2, 1e-6));
        CHECK(multipliers({{-1, 0}}, {1, 0})[0] == 0);
        CHECK(multipliers({{0, 0}}, {1, 0})[0] == 0);
    }

    TEST_CASE("what was found moves as it does when it is sought again with another input") {
        const SeveralSearch search = unit_square();
        const double x = least_x, y = least_x + 0.1, step = 1e-4;
        // One input, a deviation of which adds 1 Pa of spare draw and 2 K to the plate.
        const auto at = [](double a, double b, double deviations) {
            Row row = made_up({{a, b}}).front();
            row.answers = Answers(std::vector<std::pair<std::string, Answer>>{
                {"draws", true},
                {"reserve_draw_min_pa", 40 * a * b + deviations},
                {"plate_centre_max_c", 200 + 100 * (a - b) + 2 * deviations}});
            return row;
        };
        Beside beside;
        beside.inputs = {"input"};
        beside.steps = {{step, step}, {step, step}};
        const std::vector<Row> rows = {at(x, y, -1),       at(x, y, 1),        at(x - step, y, 0),
                                       at(x + step, y, 0), at(x, y - step, 0), at(x, y + step, 0)};
        const auto told = shifts(search, {{x, y}, at(x, y, 0)}, beside, rows);
        REQUIRE(told.size() == 1);
        // A small deviation e: x y = (10 - e)/40 and x - y = (-10 - 2 e)/100.
        const auto sought = [](double e) {
            const double d = (-10 - 2 * e) / 100, xy = (10 - e) / 40;
            return d / 2 + std::sqrt(d * d / 4 + xy);
        };
        const double e = 1e-4;
        CHECK(told[0].first == near((sought(e) - sought(-e)) / (2 * e), 1e-3));
    }
}
