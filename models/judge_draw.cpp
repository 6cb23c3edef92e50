#include "models/judge_draw.h"

#include <algorithm>
#include <cmath>

#include "models/series.h"

namespace drawwell {
namespace {

constexpr double burning_share = 0.02;  // [-] of the peak release, down to which it is
constexpr double strong_share = 0.1;    // [-] of it, above which means are taken

/// Time for which the feed's flow is below zero, the crossings by straight lines.
void find_smoke_back(const Results& results, Summary& summary) {
    const Series flow(results, "feed_air_flow");
    if (results.time.empty()) return;
    const auto still = [](double x) { return std::abs(x) < still_feed ? 0.0 : x; };
    if (still(flow[0]) < 0) summary.smoke_back_first = results.time[0];
    for (std::size_t i = 1; i < results.time.size(); ++i) {
        const double a = still(flow[i - 1]), b = still(flow[i]),
                     span = results.time[i] - results.time[i - 1];
        if (a >= 0 && b >= 0) continue;
        const double share =
            a < 0 && b < 0 ? 1 : std::min(a, b) / (std::min(a, b) - std::max(a, b));
        summary.smoke_back += share * span;
        if (!summary.smoke_back_first) summary.smoke_back_first = results.time[i] - share * span;
    }
}

/// Over which the draw is judged: from when the fire has established itself until it is as good as
/// out. Of no length where the burn, or the fire, ended before that.
struct Period {
    double from = 0;       // [s]
    std::size_t last = 0;  // sample at which it ends
    bool counts(const Results& results, std::size_t i) const {
        return i <= last && results.time[i] >= from && results.time[last] > from;
    }
};

/// `most`: [W] peak of the release.
Period judged_period(const Results& results, const Series& release, double most) {
    Period period;
    if (!(most > 0)) return period;
    std::size_t lit = 0;
    while (!(release[lit] > 0)) ++lit;
    // Between the last sample without and the first with a release it was lit; taken as early.
    period.from = (lit > 0 ? results.time[lit - 1] : results.time[0]) + fire_established;
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (release[i] >= burning_share * most) period.last = i;
    return period;
}

/// The least that is to spare in the period, each limit for itself, and which of them gave way
/// first at its weakest.
void find_spare(const Stove& stove, const Recorder& recorder, const Period& period,
                Summary& summary) {
    if (!(stove.burn.reserve_every > 0)) return;
    const Results& results = recorder.results();
    const Series reserve(results, "reserve_draw"), suction(results, "reserve_draw_suction"),
        sustained(results, "sustained_push"), early(results, "exchange_draw_early"),
        late(results, "exchange_draw_late"), limit(results, "draw_limit"),
        gust(results, "gust_push");
    const bool lasting = stove.burn.sustained_every > 0;
    double weakest = 0;
    bool two_pushes = false;  // a fan in the room and a gust on the flue are not one
    for (std::size_t i = 0; i <= period.last; ++i) {
        if (!period.counts(results, i)) continue;
        const auto least = [&](std::optional<double>& held, double value) {
            if (!held || value < *held) held = value;
        };
        if (!summary.reserve_draw_min || reserve[i] < *summary.reserve_draw_min) {
            summary.reserve_draw_min = reserve[i];
            summary.reserve_draw_min_time = results.time[i];
        }
        least(summary.reserve_suction_min, suction[i]);
        two_pushes = two_pushes || suction[i] != reserve[i];
        if (lasting) least(summary.sustained_push_min, sustained[i]);
        if (stove.feed) {
            least(summary.exchange_draw_min_early, early[i]);
            least(summary.exchange_draw_min_late, late[i]);
        }
        if (gust[i] > 0) {
            least(summary.gust_margin_min, reserve[i] - gust[i]);
            summary.gust_push_max = std::max(summary.gust_push_max.value_or(0), gust[i]);
        }
        double spare = reserve[i];
        if (lasting) spare = std::min(spare, sustained[i]);
        if (stove.feed) spare = std::min(spare, late[i]);
        if (!summary.draw_limit || spare < weakest) {
            weakest = spare;
            summary.draw_limit = static_cast<Limit>(static_cast<int>(limit[i]));
        }
    }
    for (const SpareDraw::Refined& refined : recorder.refined())
        if (summary.reserve_draw_min && refined.time >= period.from &&
            refined.time <= results.time[period.last] &&
            refined.pressure < *summary.reserve_draw_min) {
            summary.reserve_draw_min = refined.pressure;
            summary.reserve_draw_min_time = refined.time;
        }
    if (!two_pushes) summary.reserve_suction_min = summary.reserve_draw_min;
}

/// Means while it burns well.
void find_air(const Recorder& recorder, double strong_release, Summary& summary) {
    const Results& results = recorder.results();
    const Series flow(results, "feed_air_flow"), side(results, "side_air_flow"),
        release(results, "heat_release"), exit(results, "outlet_gas_temperature");
    const auto strong = [&](std::size_t i) { return release[i] > strong_release; };
    const auto integral = [&](const std::function<double(std::size_t)>& f) {
        return integrate(results, f, strong);
    };
    const double needed = integral([&](std::size_t i) { return recorder.oxygen_needed()[i]; });
    if (needed > 0)
        summary.air_ratio_mean =
            integral([&](std::size_t i) { return recorder.oxygen_in()[i]; }) / needed;
    const double length = integral([](std::size_t) { return 1.0; });
    if (!(length > 0)) return;
    summary.air_flow_mean = integral([&](std::size_t i) { return flow[i] + side[i]; }) / length;
    summary.exit_gas_mean = integral([&](std::size_t i) { return exit[i]; }) / length;
}

}  // namespace

void judge_draw(const Stove& stove, const Recorder& recorder, Summary& summary) {
    const Results& results = recorder.results();
    find_smoke_back(results, summary);
    const Series flow(results, "feed_air_flow"), release(results, "heat_release"),
        suction(results, "feed_suction");
    const double most = peak(results, release).value;
    const Period period = judged_period(results, release, most);
    for (std::size_t i = 0; i <= period.last; ++i) {
        if (!period.counts(results, i)) continue;
        summary.draws = summary.draws.value_or(true) && flow[i] > 0;
        if (!summary.feed_suction_min || suction[i] < *summary.feed_suction_min)
            summary.feed_suction_min = suction[i];
    }
    find_spare(stove, recorder, period, summary);
    find_air(recorder, strong_share * most, summary);
}

}  // namespace drawwell
