#pragma once

#include <doctest/doctest.h>

namespace drawwell {

/// Equal within a relative tolerance of the larger of the two, however small they are.
inline doctest::Approx near(double value, double relative) {
    return doctest::Approx(value).epsilon(relative).scale(0);
}

}  // namespace drawwell
