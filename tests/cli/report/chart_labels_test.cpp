#include "cli/report/chart_labels.h"

#include <doctest/doctest.h>

using namespace drawwell;

namespace {

bool overlap(const ChartBox& a, const ChartBox& b) {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

}  // namespace

TEST_SUITE("cli/report/chart_labels") {
    TEST_CASE("texts about one point cover neither each other nor a mark, within the bounds") {
        ChartLabels labels({0, 0, 400, 300});
        const ChartBox mark{195, 145, 205, 155};
        labels.take(mark);
        std::vector<ChartBox> places{mark};
        for (int i = 0; i < 12; ++i) {
            const auto place = labels.place({200, 150}, 60);
            REQUIRE(place);
            for (const ChartBox& other : places) CHECK_FALSE(overlap(*place, other));
            CHECK(place->left >= 0);
            CHECK(place->right <= 400);
            places.push_back(*place);
        }
    }

    TEST_CASE("a text keeps off a line while there is room elsewhere") {
        ChartLabels labels({0, 0, 400, 300});
        labels.pass({200, 150}, {400, 0});  // where a text would stand by preference
        const auto place = labels.place({200, 150}, 60);
        REQUIRE(place);
        CHECK((place->right <= 200 || place->top >= 150));
    }

    TEST_CASE("where nothing is free there is no text") {
        ChartLabels labels({0, 0, 50, 300});
        CHECK_FALSE(labels.place({25, 150}, 60));
    }
}
