#pragma once

#include <span>
#include <string>

#include "cli/report/web/page_run.h"

namespace drawwell {

/// Whether it draws, in a sentence or two that stand at the head of the page. Several runs: one
/// each.
std::string verdict_html(std::span<const PageRun> runs);

/// The answers one looks for first, a row each, a column a run; from the second run on with the
/// difference from the first.
std::string answers_html(std::span<const PageRun> runs);

/// Every answer of a run as the page in the terminal has it, folded; cautions stand open before.
std::string answers_in_full(std::span<const PageRun> runs);

/// What to note and to judge with care, and the cautions that stand over every such stove.
std::string care_html(std::span<const PageRun> runs);

}  // namespace drawwell
