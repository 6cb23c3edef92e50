#include "cli/report/sheet/paper.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace drawwell;

TEST_SUITE("cli/report/sheet/paper") {
    TEST_CASE("a line crosses a box it runs through, and none it passes or only touches") {
        const PaperBox box{10, 10, 20, 14};
        CHECK(crosses({0, 12}, {30, 12}, box));
        CHECK(crosses({15, 0}, {15, 30}, box));
        CHECK(crosses({8, 8}, {22, 16}, box));
        CHECK(crosses({12, 11}, {13, 12}, box));
        CHECK_FALSE(crosses({0, 10}, {30, 10}, box));
        CHECK_FALSE(crosses({0, 12}, {9, 12}, box));
        CHECK_FALSE(crosses({0, 0}, {9, 30}, box));
    }

    TEST_CASE("a line is clipped to the part inside a box") {
        const auto part = clipped({0, 12}, {30, 12}, {10, 10, 20, 14});
        REQUIRE(part.size() == 2);
        CHECK(part[0].x == doctest::Approx(10));
        CHECK(part[1].x == doctest::Approx(20));
        CHECK(clipped({0, 0}, {5, 5}, {10, 10, 20, 14}).empty());
    }

    TEST_CASE("a text's box lies about its anchor and grows with its letters") {
        const PaperBox start = box_of({{50, 50}, "width", 3});
        CHECK(start.left == 50);
        CHECK(start.top < 48);
        CHECK(start.bottom > 50);
        const PaperBox middle = box_of({{50, 50}, "width", 3, false, PaperAnchor::middle});
        CHECK(middle.left + middle.right == doctest::Approx(100));
        CHECK(box_of({{50, 50}, "width", 3, false, PaperAnchor::end}).right == 50);
        CHECK(paper_width("mmm", 3) > 2 * paper_width("iii", 3));
        CHECK(paper_width("abc", 3, true) > paper_width("abc", 3));
    }

    TEST_CASE("a text is broken at blanks and cut where a word alone is too long") {
        const auto lines = lines_of("one two three four", paper_width("one two", 3) + 0.1, 3);
        REQUIRE(lines.size() >= 3);
        CHECK(lines.front() == "one two");
        for (const std::string& line : lines_of("a " + std::string(200, 'm') + " b", 30, 3))
            CHECK(paper_width(line, 3) <= 30);
        CHECK(cut_to("abc", 100, 3) == "abc");
        CHECK(cut_to(std::string(100, 'a'), 20, 3).ends_with("…"));
    }

    TEST_CASE("a circle's points lie on it, close enough for a print at full size") {
        for (const double radius : {1.0, 60.0, 300.0}) {
            const auto points = circle({5, 7}, radius);
            for (std::size_t i = 0; i < points.size(); ++i) {
                const PaperPoint& a = points[i];
                const PaperPoint& b = points[(i + 1) % points.size()];
                CHECK(std::hypot(a.x - 5, a.y - 7) == doctest::Approx(radius));
                const double middle = std::hypot((a.x + b.x) / 2 - 5, (a.y + b.y) / 2 - 7);
                CHECK(radius - middle < 0.021);
            }
        }
    }
}
