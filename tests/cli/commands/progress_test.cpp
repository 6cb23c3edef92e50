#include "cli/commands/progress.h"

#include <doctest/doctest.h>

#include <sstream>

using namespace drawwell;

TEST_SUITE("cli/commands/progress") {
    TEST_CASE("a burn computed within two seconds is not commented on") {
        std::ostringstream out;
        double now = 100;
        {
            Progress progress(out, 3600, true, [&] { return now; });
            progress.reached(600);
            now += 1.9;
            progress.reached(3500);
        }
        CHECK(out.str().empty());
    }

    TEST_CASE("on a terminal one line is rewritten and wiped at the end") {
        std::ostringstream out;
        double now = 0;
        {
            Progress progress(out, 3600, true, [&] { return now; });
            now = 2.5;
            progress.reached(600);
            progress.reached(900);  // too soon after the one before
            now = 3;
            progress.reached(1800);
        }
        CHECK(out.str() ==
              "\r\x1b[K10 min of 1 h computed, 17 %\r\x1b[K30 min of 1 h computed, 50 %\r\x1b[K");
    }

    TEST_CASE("in a log there is a whole line at most every ten seconds") {
        std::ostringstream out;
        double now = 0;
        Progress progress(out, 7200, false, [&] { return now; });
        for (; now <= 25; now += 0.5) progress.reached(now * 100);
        CHECK(out.str() == "17 min of 2 h computed, 14 %\n33 min of 2 h computed, 28 %\n");
    }
}
