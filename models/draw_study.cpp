#include "models/draw_study.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <string>
#include <utility>

#include "models/exchange.h"
#include "models/stove_run.h"
#include "solver/errors.h"
#include "solver/settled_walls.h"

namespace drawwell {
namespace {

constexpr double beyond = 1.25;      // [-] of the largest flow of note, how far the curve goes
constexpr double least_span = 2e-3;  // [kg/s] that it goes at least
constexpr int points_a_side = 16;
constexpr int halvings = 12;  // of the interval in which a state or the spill point lies

/// Traces one curve; `push` gives p_adv(x) and may go from flow to neighbouring flow only.
class Tracer {
  public:
    explicit Tracer(std::function<double(double)> push) : push_(std::move(push)) {}

    DrawCurve trace(double from, double to) {
        DrawCurve curve;
        // From the largest flow down: that is how a push drives a stove. Closer near standstill,
        // where curves bend most.
        for (int i = points_a_side; i >= -points_a_side; --i) {
            const double share = static_cast<double>(i) / points_a_side;
            add(curve, (share > 0 ? to : -from) * share * std::sqrt(std::abs(share)));
        }
        std::reverse(curve.points.begin(), curve.points.end());
        std::reverse(curve.states.begin(), curve.states.end());
        find_fold(curve);
        return curve;
    }

  private:
    void add(DrawCurve& curve, double flow) {
        const DrawPoint next{flow, push_(flow)};
        if (!curve.points.empty()) {
            const DrawPoint before = curve.points.back();
            if ((before.pressure > 0) != (next.pressure > 0))
                curve.states.push_back({crossing(before, next), next.pressure > before.pressure});
        }
        curve.points.push_back(next);
        if (flow <= 0 && !curve.spill) curve.spill = DrawPoint{0, push_(0)};
    }

    /// Flow between two neighbours at which the push is nothing.
    double crossing(DrawPoint a, DrawPoint b) {
        for (int i = 0; i < halvings; ++i) {
            const double middle = (a.flow + b.flow) / 2;
            const double pressure = push_(middle);
            ((pressure > 0) == (a.pressure > 0) ? a : b) = {middle, pressure};
        }
        return (a.flow + b.flow) / 2;
    }

    /// The top of the branch that falls towards large flows, between its neighbours by a parabola.
    static void find_fold(DrawCurve& curve) {
        const auto& points = curve.points;
        std::size_t top = points.size() - 1;
        while (top > 0 && points[top].flow > 0 && points[top - 1].pressure > points[top].pressure)
            --top;
        if (points[top].flow <= 0) {
            if (curve.spill) curve.fold = curve.spill;  // it rises all the way down to no flow
            return;
        }
        if (top + 1 == points.size()) return;  // no such branch
        curve.fold = points[top];
        const DrawPoint &left = points[top - 1], &right = points[top + 1];
        const double bend = left.pressure - 2 * points[top].pressure + right.pressure;
        if (!(bend < 0)) return;
        const double shift = 0.5 * (left.pressure - right.pressure) / bend;
        curve.fold->flow += shift * (right.flow - points[top].flow);
        curve.fold->pressure += 0.25 * (right.pressure - left.pressure) * shift;
    }

    std::function<double(double)> push_;
};

DrawStudy study(StoveRun& run, double time, std::span<const double> state) {
    HeatBalance& balance = run.balance;
    DrawStudy study;
    study.time = time;
    study.flow = balance.flow().inlet_flow();
    for (std::size_t s = 0; s < run.built.network.fire_sites.size(); ++s)
        study.given_off += balance.flow().march().emitted(s);
    if (run.stove.feed) {
        const ExchangeOnset onset = exchange_onset(run.stove, run.built, balance.flow().march());
        study.exchange_early = onset.early;
        study.exchange_late = onset.late;
    }
    const Flow::Conditions conditions = balance.conditions(time, state);
    const double largest = std::max(std::abs(study.flow), least_span);
    const double low = -beyond * largest, high = beyond * largest;

    study.held = Tracer([&](double flow) {
                     return balance.flow().adverse_pressure(conditions, flow);
                 }).trace(low, high);
    std::vector<double> walls(state.begin(), state.end());
    study.following = Tracer([&](double flow) {
                          return settle_walls(balance, time, flow, walls);
                      }).trace(low, high);
    return study;
}

}  // namespace

DrawStudy study_draw(const Stove& stove, const Library& library, double time,
                     const BurnWatch& watch, const SavedState* from) {
    if (!(time >= 0 && time <= stove.burn.duration))
        throw InputError("the burn is over " + std::to_string(std::lround(time / 60)) +
                         " min after lighting: ask for an earlier moment, or burn longer "
                         "(burn.duration)");
    StoveRun run(stove, library, from);
    std::vector<double> state = run.built.network.initial_state();
    const double at_instant = run.instant(time);
    if (at_instant > 0) {
        run.burn(at_instant, stove.burn.output_every,
                 [&](double reached, std::span<const double> at, HeatBalance&) {
                     state.assign(at.begin(), at.end());
                     if (watch.progress) watch.progress(reached);
                     return watch.stop == nullptr || !watch.stop->load();
                 });
    } else {
        std::vector<double> rate(state.size());
        run.balance.rates(0, state, rate);
    }
    return study(run, at_instant, state);
}

}  // namespace drawwell
