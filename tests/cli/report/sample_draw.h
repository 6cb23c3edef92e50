#pragma once

#include <cmath>

#include "models/draw_study.h"

namespace drawwell {

/// A curve that falls, rises and falls again, with its three crossings at `out`, `middle` and `in`
/// [kg/s] and about `top` [Pa] at its fold: the shape of a draw in both directions, invented.
inline DrawCurve sample_curve(double out, double middle, double in, double top) {
    DrawCurve curve;
    const auto cubic = [&](double x) { return -(x - out) * (x - middle) * (x - in); };
    const double sum = out + middle + in;
    const double products = out * middle + middle * in + in * out;
    const double fold = (sum + std::sqrt(sum * sum - 3 * products)) / 3;
    const double scale = top / cubic(fold);
    for (int i = -60; i <= 60; ++i) {
        const double x = 0.3e-3 * i;
        curve.points.push_back({x, scale * cubic(x)});
    }
    curve.states = {{out, true}, {middle, false}, {in, true}};
    curve.fold = DrawPoint{fold, top};
    curve.spill = DrawPoint{0, scale * cubic(0)};
    return curve;
}

/// An hour into an invented burn that draws 11 g/s and could stand turned as well.
inline DrawStudy sample_draw() {
    DrawStudy study;
    study.time = 3600;
    study.flow = 11e-3;
    study.given_off = 1.2e-3;
    study.held = sample_curve(-9e-3, 1.5e-3, 11e-3, 6.4);
    study.following = sample_curve(-7e-3, 2.5e-3, 10.4e-3, 4.2);
    study.exchange_early = 8e-3;
    study.exchange_late = 5e-3;
    return study;
}

}  // namespace drawwell
