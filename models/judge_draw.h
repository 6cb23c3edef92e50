#pragma once

#include "models/recorder.h"
#include "models/summary.h"

namespace drawwell {

/// Whether the stove draws, how much is to spare and what air it takes: the summary's first part.
void judge_draw(const Stove& stove, const Recorder& recorder, Summary& summary);

}  // namespace drawwell
