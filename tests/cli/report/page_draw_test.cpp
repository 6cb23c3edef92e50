#include "cli/report/page_draw.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace drawwell;

namespace {

/// The page's head of a summary, its broken lines and runs of blanks joined.
std::string head_of(const Summary& summary) {
    Page page(false);
    write_draw(page, summary);
    std::string flat;
    for (const char c : page.text()) {
        const bool blank = c == '\n' || c == ' ';
        if (!blank || !flat.ends_with(' ')) flat += blank ? ' ' : c;
    }
    return flat;
}

bool says(const Summary& summary, std::string_view words) {
    return head_of(summary).find(words) != std::string::npos;
}

/// A stove that draws well, every limit worked out, the air's figures among them.
Summary drawing() {
    Summary summary;
    summary.draws = true;
    summary.reserve_draw_min = 6;
    summary.reserve_draw_min_time = 900;
    summary.reserve_suction_min = 4.4;
    summary.sustained_push_min = 3.1;
    summary.exchange_draw_min_early = 2.2;
    summary.exchange_draw_min_late = 5.3;
    summary.air_flow_mean = 9e-3;
    return summary;
}

Summary starting(Leaning leaning, double column, std::optional<double> kindling) {
    Summary summary = drawing();
    summary.cold_start = ColdStart{.column = column,
                                   .leaning = leaning,
                                   .priming = leaning == Leaning::falls ? -column : 0,
                                   .kindling = kindling};
    return summary;
}

}  // namespace

TEST_SUITE("cli/report/page_draw") {
    TEST_CASE("gas that rises by itself is said to, with its column and nothing more to do") {
        const Summary summary = starting(Leaning::rises, 2.06, 0.0);
        CHECK(says(summary, "rises towards the flue: +2.1 Pa without a fire"));
        CHECK_FALSE(says(summary, "priming"));
        CHECK_FALSE(says(summary, "kindling "));
    }

    TEST_CASE("gas that stands is said to go either way, without a sign to its column") {
        const Summary summary = starting(Leaning::stands, -0.02, 0.0);
        CHECK(says(summary, "stands; it may go either way: 0.0 Pa without a fire"));
        CHECK(says(summary, "sends it up from the first match"));
        CHECK_FALSE(says(summary, "priming"));
    }

    TEST_CASE("gas that falls is said to, with the priming that turns it") {
        const Summary summary = starting(Leaning::falls, -1.34, 42.0);
        CHECK(says(summary, "falls down the flue: -1.3 Pa without a fire"));
        CHECK(says(summary, "1.3 Pa of priming"));
        CHECK(says(summary, "turns it after 42 s; smoke comes out of the feed until then"));
    }

    TEST_CASE("kindling that does not turn the gas is said not to") {
        CHECK(says(starting(Leaning::falls, -1.34, {}), "kindling does not turn it"));
    }

    TEST_CASE("a burn that goes on from another says nothing of lighting") {
        CHECK_FALSE(says(drawing(), "Before lighting"));
    }

    TEST_CASE("each limit of the draw has its row") {
        const Summary summary = drawing();
        CHECK(says(summary, "15 min after lighting; 6.0 Pa of spare draw"));
        CHECK(says(summary, "4.4 Pa of suction in the room"));
        CHECK(says(summary, "3.1 Pa at the least, walls following"));
        CHECK(says(summary, "may trickle out of the feed from 2.2 Pa, surely does from 5.3 Pa"));
    }

    TEST_CASE("limits that are no different from the spare draw have no row") {
        Summary summary = drawing();
        summary.reserve_suction_min = 6.02;
        summary.exchange_draw_min_early = summary.exchange_draw_min_late = 5.98;
        CHECK_FALSE(says(summary, "against a fan"));
        CHECK_FALSE(says(summary, "smoke past the air"));
        summary.sustained_push_min.reset();
        CHECK_FALSE(says(summary, "against a lasting push"));
    }

    TEST_CASE("what gives way first is named in words") {
        Summary summary = drawing();
        CHECK_FALSE(says(summary, "gives way first to"));
        summary.draw_limit = Limit::short_push;
        CHECK(says(summary, "gives way first to a short push, as a gust"));
        summary.draw_limit = Limit::lasting_push;
        CHECK(says(summary, "gives way first to a push that lasts"));
        summary.draw_limit = Limit::exchange;
        CHECK(says(summary, "gives way first to smoke that trickles out"));
    }

    TEST_CASE("gusts are set against the spare draw, and enter the verdict where they win") {
        Summary summary = drawing();
        CHECK_FALSE(says(summary, "gusts"));
        summary.gust_push_max = 4.5;
        summary.gust_margin_min = 1.5;
        CHECK(says(summary, "push up to 4.5 Pa; 1.5 Pa are left at the least"));
        CHECK(says(summary, "It draws. "));
        summary.gust_margin_min = -0.7;
        CHECK(says(summary, "push up to 4.5 Pa; 0.7 Pa more than it withstands"));
        CHECK(says(summary, "It draws, but the gusts given turn it over."));
        CHECK(says(summary, "What often helps"));
    }

    TEST_CASE("smoke on the whole is told in place of the air") {
        Summary summary = drawing();
        CHECK(says(summary, "9.0 g/s while it burns"));
        summary.air_flow_mean = -2e-3;
        CHECK(says(summary, "on the whole 2.0 g/s of smoke come out of the feed"));
    }

    TEST_CASE("what could not be judged is neither good nor bad, and says why") {
        Summary summary;
        summary.heat_released = 5e6;
        CHECK(says(summary, "TOO SHORT TO JUDGE"));
        CHECK_FALSE(says(summary, "DOES NOT DRAW"));
        CHECK_FALSE(says(summary, "It draws"));
        CHECK_FALSE(says(summary, "What often helps"));
        summary.smoke_back = 60;
        CHECK(says(summary, "Until then smoke came back out of the feed."));
        CHECK(says(summary, "What often helps"));
        CHECK(says(Summary{}, "NOTHING BURNED"));
        CHECK_FALSE(says(Summary{}, "while it burns"));
        Page page(true);
        write_draw(page, summary);
        const auto verdict = std::find_if(
            page.blocks().begin(), page.blocks().end(),
            [](const PageBlock& each) { return each.kind == PageBlock::Kind::verdict; });
        REQUIRE(verdict != page.blocks().end());
        CHECK_FALSE(verdict->good);
        CHECK(page.text().find("\x1b[1;33mTOO SHORT") != std::string::npos);
    }
}
