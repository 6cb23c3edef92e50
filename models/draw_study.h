#pragma once

#include <optional>
#include <vector>

#include "models/burn.h"

namespace drawwell {

/// A point of the draw's curve: the push [Pa] that balances the stove when `flow` [kg/s] enters the
/// feed. Positive push acts against the draw; negative flow is smoke out of the feed.
struct DrawPoint {
    double flow = 0;
    double pressure = 0;
};

/// A flow [kg/s] at which the stove stands without any push.
struct DrawState {
    double flow = 0;
    bool stable = false;  // else the least disturbance leads away from it
};

/// The push over the flow, p_adv(x), and what stands out on it.
struct DrawCurve {
    std::vector<DrawPoint> points;   // flow increasing
    std::vector<DrawState> states;   // flow increasing
    std::optional<DrawPoint> fold;   // the most that the forward branch withstands; none: no branch
    std::optional<DrawPoint> spill;  // where the feed takes in nothing
};

/// The draw at one instant of a burn, in both directions.
struct DrawStudy {
    double time = 0;       // [s] after lighting
    double flow = 0;       // [kg/s] into the feed, as the burn has it
    double given_off = 0;  // [kg/s] by the fuel; between minus this and zero smoke leaves both ends
    DrawCurve held;        // walls as they are
    DrawCurve following;   // walls that have followed each flow until they stand
    /// Flow [kg/s] into the feed at which smoke may (early) or surely does (late) trickle out
    /// beside the air that comes in; none without an open feed.
    std::optional<double> exchange_early, exchange_late;
};

/// Computes a burn until `time` [s], from cold or as an earlier run ended, and traces the draw
/// there. Errors as `run_burn`; InputError also where the burn ends before.
DrawStudy study_draw(const Stove& stove, const Library& library, double time,
                     const BurnWatch& watch = {}, const SavedState* from = nullptr);

}  // namespace drawwell
