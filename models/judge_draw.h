#pragma once

#include "models/recorder.h"
#include "models/summary.h"

namespace drawwell {

/// [s] after lighting, until when the fire takes to establish itself: from then on the draw is
/// judged.
inline constexpr double fire_established = 300;

/// [kg/s] Less than a thousandth of a gram a second is a still feed.
inline constexpr double still_feed = 1e-6;

/// Whether the stove draws, how much is to spare and what air it takes: the summary's first part.
void judge_draw(const Stove& stove, const Recorder& recorder, Summary& summary);

}  // namespace drawwell
