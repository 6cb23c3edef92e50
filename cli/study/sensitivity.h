#pragma once

#include <functional>
#include <string>
#include <vector>

#include "cli/study/headline.h"
#include "cli/study/run_rows.h"

namespace drawwell {

/// What one input does to the answers: the two stoves in which it is otherwise.
struct Influence {
    std::string input;  // `riser.top`, `fuel_bed.surface_rate`
    bool uncertain = false;
    Row less, more;  // by a tenth; of what is uncertain, by one standard deviation
};

/// Computes rows of a study.
using Compute = std::function<std::vector<Row>(const Study& study)>;

/// Every dimension of the stove (lengths and areas that its file or defaults give it) a tenth less
/// and more, and everything uncertain one standard deviation less and more. `study` has one file
/// and no variants. InputError: the stove itself can't be.
std::vector<Influence> influences_on(const Study& study, const Library& library,
                                     const Compute& compute);

/// Half of what an answer changes between less and more; one-sided where the other stove can't be,
/// as told by `base`. Nothing where neither has the answer.
std::optional<double> change(const Influence& influence, const Row& base, std::string_view answer);

/// Influences on an answer, the strongest first; those of no effect left out.
std::vector<const Influence*> ranked(const std::vector<Influence>& influences, const Row& base,
                                     std::string_view answer);

}  // namespace drawwell
