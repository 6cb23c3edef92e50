#pragma once

#include <optional>

#include "models/draw_study.h"

namespace drawwell {

/// When smoke begins to trickle out of the feed beside the air that comes in.
struct Trickle {
    enum class When {
        never,          // no open feed, or no draw that could carry smoke in
        after_turning,  // at less flow than the draw withstands: it has turned before
        at_push,
        already,  // without any push
    };
    When when = When::never;
    double push = 0;  // [Pa] against the draw, walls as they are; only at_push
};

/// What comes first as the push grows.
enum class DrawLimit { none, short_push, lasting_push, trickle };

/// The answers that a draw study holds. A draw that is turned at present has nothing to spare:
/// they then hold for the inward one that it could return to.
struct DrawAnswers {
    std::optional<double> short_push;    // [Pa] spare draw, walls as they are; none: no spare
    std::optional<double> lasting_push;  // [Pa] spare draw, walls that follow; none: no spare
    Trickle trickle_early, trickle_late;
    DrawLimit limit = DrawLimit::none;  // none: nothing to spare
    double limit_push = 0;              // [Pa] that it begins at
};

/// The steady directions along one curve.
struct Directions {
    bool inward = false, outward = false;  // stable without any push: air in, smoke out
    std::optional<double> pull_back;  // [Pa] helping the draw, that ends the outward flow; if known
};

DrawAnswers draw_answers(const DrawStudy& study);

Directions directions_of(const DrawCurve& curve);

/// The push [Pa] at a flow [kg/s], straight between neighbouring points; none beyond them.
std::optional<double> push_at(const DrawCurve& curve, double flow);

}  // namespace drawwell
