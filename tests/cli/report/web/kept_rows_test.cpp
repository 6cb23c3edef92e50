#include "cli/report/web/kept_rows.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace drawwell;

namespace {

using Values = std::vector<double>;

std::vector<std::size_t> kept_of(const std::vector<Values>& series, std::size_t most) {
    const std::vector<std::span<const double>> views(series.begin(), series.end());
    return kept_rows(views, series.front().size(), most);
}

bool holds(const std::vector<std::size_t>& kept, std::size_t row) {
    return std::find(kept.begin(), kept.end(), row) != kept.end();
}

Values wave(std::size_t count, double frequency) {
    Values values;
    for (std::size_t i = 0; i < count; ++i)
        values.push_back(std::sin(frequency * static_cast<double>(i)));
    return values;
}

}  // namespace

TEST_SUITE("cli/report/web/kept_rows") {
    TEST_CASE("a short series is kept whole") {
        CHECK(kept_of({wave(5, 1)}, 5) == std::vector<std::size_t>{0, 1, 2, 3, 4});
        CHECK(kept_rows({}, 0, 10).empty());
    }

    TEST_CASE("a peak of one instant survives thinning, in each series of several") {
        Values low(10'000, 1.0), high(10'000, 2.0);
        low[4321] = -7;
        high[8765] = 99;
        const auto kept = kept_of({low, high}, 500);
        CHECK(kept.size() <= 500);
        CHECK(holds(kept, 4321));
        CHECK(holds(kept, 8765));
        CHECK(kept.front() == 0);
        CHECK(kept.back() == 9'999);
        CHECK(std::is_sorted(kept.begin(), kept.end()));
        CHECK(std::adjacent_find(kept.begin(), kept.end()) == kept.end());
    }

    TEST_CASE("what is left of a fast swing still fills the height of its curve everywhere") {
        const Values swing = wave(20'000, 0.7);
        const auto kept = kept_of({swing}, 600);
        CHECK(kept.size() <= 600);
        CHECK(kept.size() > 300);  // two of the three rows a stretch may have
        // A tenth of the burn holds a thousand swings; each tenth must show both their ends.
        for (std::size_t tenth = 0; tenth < 10; ++tenth) {
            double least = 1, most = -1;
            for (const std::size_t row : kept)
                if (row / 2000 == tenth) {
                    least = std::min(least, swing[row]);
                    most = std::max(most, swing[row]);
                }
            CHECK(least < -0.99);
            CHECK(most > 0.99);
        }
    }

    TEST_CASE("a gap stays a gap, and nothing but gaps is no trouble") {
        Values broken = wave(5'000, 0.01);
        broken[2500] = std::numeric_limits<double>::quiet_NaN();
        CHECK(holds(kept_of({broken}, 100), 2500));
        const Values nothing(5'000, std::numeric_limits<double>::quiet_NaN());
        CHECK(kept_of({nothing}, 100).size() <= 100);
    }
}
