#include "cli/report/draw_answers.h"

#include <algorithm>
#include <cmath>

namespace drawwell {
namespace {

std::optional<double> spare(const DrawCurve& curve) {
    if (!curve.fold || !(curve.fold->pressure > 0)) return {};
    return curve.fold->pressure;
}

/// [kg/s] of the draw that a push works against: the present one or, if that is turned, the one
/// that stands inward.
std::optional<double> inward_flow(const DrawStudy& study) {
    if (study.flow >= 0) return study.flow;
    for (auto state = study.held.states.rbegin(); state != study.held.states.rend(); ++state)
        if (state->stable && state->flow >= 0) return state->flow;
    return {};
}

Trickle trickle_at(const DrawStudy& study, std::optional<double> flow) {
    using When = Trickle::When;
    const auto present = inward_flow(study);
    if (!flow || !spare(study.held) || !present) return {};
    if (*flow >= *present) return {When::already};
    if (*flow <= study.held.fold->flow) return {When::after_turning};
    const auto push = push_at(study.held, *flow);
    if (!push) return {};
    return {When::at_push, std::max(*push, 0.0)};
}

void offer(DrawAnswers& answers, DrawLimit limit, double push) {
    if (answers.limit != DrawLimit::none && push >= answers.limit_push) return;
    answers.limit = limit;
    answers.limit_push = push;
}

}  // namespace

DrawAnswers draw_answers(const DrawStudy& study) {
    DrawAnswers answers;
    answers.short_push = spare(study.held);
    answers.lasting_push = spare(study.following);
    answers.trickle_early = trickle_at(study, study.exchange_early);
    answers.trickle_late = trickle_at(study, study.exchange_late);
    if (!answers.short_push) return answers;
    offer(answers, DrawLimit::short_push, *answers.short_push);
    // Without a steady inward flow once the walls have followed, no push at all may last.
    if (!study.following.points.empty())
        offer(answers, DrawLimit::lasting_push, answers.lasting_push.value_or(0));
    if (answers.trickle_early.when == Trickle::When::already) offer(answers, DrawLimit::trickle, 0);
    if (answers.trickle_early.when == Trickle::When::at_push)
        offer(answers, DrawLimit::trickle, answers.trickle_early.push);
    return answers;
}

Directions directions_of(const DrawCurve& curve) {
    Directions directions;
    const DrawState* out = nullptr;
    for (const DrawState& state : curve.states) {
        if (!state.stable) continue;
        (state.flow < 0 ? directions.outward : directions.inward) = true;
        if (state.flow < 0) out = &state;
    }
    if (out == nullptr) return directions;
    // Pulled back, the outward flow weakens down the curve until its lowest point, before the
    // next state is reached.
    double end = 0;
    for (const DrawState& state : curve.states)
        if (state.flow > out->flow) {
            end = state.flow;
            break;
        }
    double lowest = 0;
    for (const DrawPoint& point : curve.points)
        if (point.flow > out->flow && point.flow < end && std::isfinite(point.pressure))
            lowest = std::min(lowest, point.pressure);
    if (lowest < 0) directions.pull_back = -lowest;
    return directions;
}

std::optional<double> push_at(const DrawCurve& curve, double flow) {
    const auto above = std::find_if(curve.points.begin(), curve.points.end(),
                                    [flow](const DrawPoint& point) { return point.flow >= flow; });
    if (above == curve.points.end()) return {};
    if (!std::isfinite(above->pressure)) return {};
    if (above->flow == flow) return above->pressure;
    if (above == curve.points.begin()) return {};
    const DrawPoint& below = *(above - 1);
    if (!std::isfinite(below.pressure)) return {};
    const double share = (flow - below.flow) / (above->flow - below.flow);
    return below.pressure + share * (above->pressure - below.pressure);
}

}  // namespace drawwell
