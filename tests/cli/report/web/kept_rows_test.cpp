#include "cli/report/web/kept_rows.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

using namespace drawwell;

namespace {

using Values = std::vector<double>;

std::vector<Track> tracks_of(const std::vector<Values>& series, double near) {
    std::vector<Track> tracks;
    for (const Values& values : series) tracks.push_back({values, 1, near});
    return tracks;
}

/// Instants a second apart.
Values seconds(std::size_t count) {
    Values time(count);
    std::iota(time.begin(), time.end(), 0.0);
    return time;
}

std::vector<std::size_t> kept_of(const std::vector<Values>& series, std::size_t most) {
    return kept_rows(tracks_of(series, 0.001), seconds(series.front().size()), most);
}

/// How far straight lines between kept rows are off, at the worst.
double off(const std::vector<std::size_t>& kept, const Values& values) {
    double worst = 0;
    for (std::size_t i = 1; i < kept.size(); ++i)
        for (std::size_t row = kept[i - 1]; row < kept[i]; ++row) {
            const double share =
                static_cast<double>(row - kept[i - 1]) / static_cast<double>(kept[i] - kept[i - 1]);
            const double line =
                values[kept[i - 1]] + share * (values[kept[i]] - values[kept[i - 1]]);
            if (std::isfinite(values[row])) worst = std::max(worst, std::abs(line - values[row]));
        }
    return worst;
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
        CHECK(kept_rows({}, {}, 10).empty());
        CHECK(frame_rows({}, {}, {}, 10).empty());
        CHECK(frame_rows({}, {0, 30}, {}, 10) == std::vector<std::size_t>{0, 1});
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

    TEST_CASE("a smooth curve between its peaks is followed as near as asked") {
        Values cooling;
        for (int i = 0; i < 5'000; ++i) cooling.push_back(700 * std::exp(-i / 600.0));
        // Its ends are its extremes: they alone would leave a straight line 400 off.
        const std::vector<Values> all{cooling};
        const std::vector<Track> tracks = tracks_of(all, 1);
        const Values time = seconds(cooling.size());
        const auto lines = kept_rows(tracks, time, 300), frames = frame_rows(tracks, time, {}, 300);
        CHECK(off(lines, cooling) <= 1);
        CHECK(off(frames, cooling) <= 1);
        CHECK(frames.size() < 120);  // no more than that takes
    }

    TEST_CASE("a picture has frames even in time, at every event, and where most happens") {
        Values gas(2'000, 300.0);
        gas[707] = 900;  // a flash between two frames
        for (std::size_t i = 1'500; i < gas.size(); ++i) gas[i] = 500;  // from one row to the next
        const Values time = seconds(gas.size());
        const auto frames = frame_rows(tracks_of({gas}, 1), time, Values{100.5, 1'200}, 80);
        CHECK(frames.size() <= 80);
        for (const std::size_t row : std::vector<std::size_t>{0, 100, 101, 706, 707, 708, 1'199,
                                                              1'200, 1'201, 1'499, 1'500, 1'999})
            CHECK(holds(frames, row));
        for (std::size_t i = 1; i < frames.size(); ++i) CHECK(frames[i] - frames[i - 1] <= 106);
        CHECK(off(frames, gas) <= 1);
    }

    TEST_CASE("more events than a page has room for leave room for what happens between them") {
        const Values swing = wave(9'000, 0.002);
        Values events;
        for (int i = 1; i < 4'000; ++i) events.push_back(2.0 * i);
        const auto frames =
            frame_rows(tracks_of({swing}, 0.02), seconds(swing.size()), events, 300);
        CHECK(frames.size() <= 300);
        CHECK(off(frames, swing) <= 0.02);
    }

    TEST_CASE("both sides of a gap have a frame") {
        Values broken = wave(3'000, 0.001);
        for (std::size_t i = 1'000; i < 1'400; ++i)
            broken[i] = std::numeric_limits<double>::quiet_NaN();
        const auto frames = frame_rows(tracks_of({broken}, 0.5), seconds(broken.size()), {}, 50);
        for (const std::size_t row : std::vector<std::size_t>{999, 1'000, 1'399, 1'400})
            CHECK(holds(frames, row));
    }
}
