#include "cli/report/page_draw.h"

#include <fmt/format.h>

#include <cmath>

#include "cli/read/units.h"
#include "cli/report/page_text.h"

namespace drawwell {
namespace {

constexpr double at_once = 2;       // [s] from the first match
constexpr double same_push = 0.05;  // [Pa] that a page does not tell apart

bool little_to_spare(const Summary& summary) {
    return (summary.reserve_draw_min && *summary.reserve_draw_min < thin_reserve) ||
           (summary.gust_margin_min && *summary.gust_margin_min < 0);
}

/// Why there is no telling whether it draws.
std::string unjudged(const Summary& summary) {
    if (!(summary.heat_released > 0))
        return "NOTHING BURNED, so there is no telling whether it draws.";
    std::string text =
        "TOO SHORT TO JUDGE: whether it draws shows from five minutes after lighting on, while the "
        "fire burns.";
    if (summary.smoke_back > 0) text += " Until then smoke came back out of the feed.";
    return text;
}

void write_verdict(Page& page, const Summary& summary) {
    if (!summary.draws)
        page.verdict(unjudged(summary), {});
    else if (!*summary.draws)
        page.verdict("IT DOES NOT DRAW.", false);
    else if (summary.smoke_back > 0)
        page.verdict("It draws, but smoke came back out of the feed.", false);
    else if (summary.gust_margin_min && *summary.gust_margin_min < 0)
        page.verdict("It draws, but the gusts given turn it over.", false);
    else if (little_to_spare(summary))
        page.verdict("It draws, but with little to spare.", false);
    else
        page.verdict("It draws.", true);
}

void write_help(Page& page, const Summary& summary) {
    const bool may_draw = summary.draws.value_or(true);
    if (may_draw && summary.smoke_back <= 0 && !little_to_spare(summary)) return;
    page.heading("What often helps; try one at a time with --set");
    page.point("a higher flue, with fewer bends and a shorter level run");
    page.point("a warm flue: kindling burned in it first (kindling.place), or a jacket round it");
    page.point("a wider port, or a wider opening under the plate");
    page.point("no suction in the room: fans off, a window open a hand's width");
    if (may_draw && summary.smoke_back > 0)
        page.point("smaller first loads, put in only once the riser is hot");
}

void write_cold_start(Page& page, const ColdStart& start) {
    page.heading("Before lighting");
    const std::string column = fmt::format("{:+.1f} Pa without a fire", start.column);
    switch (start.leaning) {
        case Leaning::rises:
            page.row("the gas by itself", "rises towards the flue: " + column);
            break;
        case Leaning::stands:
            page.row("the gas by itself",
                     "stands; it may go either way: " +
                         fmt::format("{:.1f} Pa without a fire", std::abs(start.column)));
            break;
        case Leaning::falls:
            page.row("the gas by itself", "falls down the flue: " + column);
            page.row("to turn it",
                     fmt::format("{:.1f} Pa of priming: a warmed flue, or a fan", start.priming));
            break;
    }
    if (start.leaning == Leaning::rises) return;
    if (!start.kindling)
        page.row("kindling", "does not turn it; warm the flue by other means before you light");
    else if (*start.kindling > at_once)
        page.row("kindling",
                 fmt::format("turns it after {:.0f} s; smoke comes out of the feed until then",
                             *start.kindling));
    else
        page.row("kindling", "sends it up from the first match");
}

/// What the draw withstands at its weakest, limit by limit, each more exact than the one before.
void write_spare(Page& page, const Summary& summary) {
    if (!summary.reserve_draw_min || !summary.reserve_draw_min_time) return;
    page.row("weakest moment",
             fmt::format("{} after lighting; {:.1f} Pa of spare draw",
                         show_duration(*summary.reserve_draw_min_time), *summary.reserve_draw_min));
    if (summary.reserve_suction_min &&
        std::abs(*summary.reserve_suction_min - *summary.reserve_draw_min) > same_push)
        page.row("against a fan",
                 fmt::format("{:.1f} Pa of suction in the room", *summary.reserve_suction_min));
    if (summary.sustained_push_min)
        page.row("against a lasting push", fmt::format("{:.1f} Pa at the least, walls following",
                                                       *summary.sustained_push_min));
    const auto& early = summary.exchange_draw_min_early;
    const auto& late = summary.exchange_draw_min_late;
    if (early && late && *early < *summary.reserve_draw_min - same_push)
        page.row("smoke past the air", fmt::format("may trickle out of the feed from {:.1f} Pa, "
                                                   "surely does from {:.1f} Pa",
                                                   *early, *late));
    if (summary.draw_limit) {
        constexpr std::string_view names[] = {
            "a short push, as a gust", "a push that lasts, as a fan's or a cooling flue's",
            "smoke that trickles out past the air coming in: keep wood in the feed, or its cover "
            "half on"};
        page.row("gives way first to",
                 std::string(names[static_cast<std::size_t>(*summary.draw_limit)]));
    }
    if (summary.gust_push_max && summary.gust_margin_min)
        page.row("gusts", fmt::format("push up to {:.1f} Pa; {:.1f} Pa {}", *summary.gust_push_max,
                                      std::abs(*summary.gust_margin_min),
                                      *summary.gust_margin_min < 0 ? "more than it withstands"
                                                                   : "are left at the least"));
}

}  // namespace

void write_draw(Page& page, const Summary& summary) {
    write_verdict(page, summary);
    write_help(page, summary);
    if (summary.cold_start) write_cold_start(page, *summary.cold_start);
    page.heading("Draw");
    write_spare(page, summary);
    if (summary.feed_suction_min)
        page.row("suction at the feed",
                 fmt::format("{:.1f} Pa at its foot, at the weakest", *summary.feed_suction_min));
    if (summary.smoke_back > 0 && summary.smoke_back_first)
        page.row("smoke back",
                 fmt::format("for {} in all, {}", show_duration(summary.smoke_back),
                             *summary.smoke_back_first < at_once
                                 ? "from lighting on"
                                 : "first " + show_duration(*summary.smoke_back_first) +
                                       " after lighting"));
    else
        page.row("smoke back", summary.smoke_back > 0
                                   ? "for " + show_duration(summary.smoke_back) + " in all"
                                   : "none");
    if (!summary.draws && !(summary.heat_released > 0)) return;
    if (summary.air_flow_mean < 0) {
        page.row("air", fmt::format("none: on the whole {:.1f} g/s of smoke come out of the feed",
                                    to_grams(-summary.air_flow_mean)));
        return;
    }
    std::string air = fmt::format("{:.1f} g/s while it burns", to_grams(summary.air_flow_mean));
    if (summary.air_ratio_mean)
        air += fmt::format(", {:.1f} times what the wood needs", *summary.air_ratio_mean);
    page.row("air", air);
    if (summary.air_ratio_mean && *summary.air_ratio_mean < 1)
        page.paragraph("Too little air to burn the wood: part of it leaves as smoke and CO.");
}

}  // namespace drawwell
