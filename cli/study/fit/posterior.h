#pragma once

#include <cstddef>
#include <functional>
#include <vector>

namespace drawwell {

using Numbers = std::vector<double>;

/// Readings and what moves them. Every parameter is known beforehand to one standard deviation
/// about zero, its unit.
struct Inference {
    std::size_t parameters = 0;  // in which the model is not straight
    Numbers start;               // where to begin; empty: at zero
    Numbers step;                // [deviations] to either side for differences, of each
    Numbers measured, noise;     // readings, and one standard deviation of each
    /// What the model reads at each of these points, more rows than readings allowed; empty where
    /// it can't be computed. May throw.
    std::function<std::vector<Numbers>(const std::vector<Numbers>& points)> predict;
    /// Slopes [parameter][row] at the start, if they are known; empty: to be computed.
    std::vector<Numbers> start_slope;
    /// Effects of further parameters, straight: [parameter][row].
    std::vector<Numbers> straight;
};

/// What the readings say of the parameters.
struct Posterior {
    Numbers estimate;                 // of the parameters, then of the straight ones
    std::vector<Numbers> covariance;  // of all of them
    std::vector<Numbers> slope;       // [parameter][row] at the estimate, straight ones too
    Numbers predicted;                // [row] at the estimate
    bool settled = false;             // false: stopped by the number of steps
};

/// The most likely parameters (the smallest sum of squared residuals over noise and of squared
/// parameters), by Levenberg and Marquardt, on one-sided differences; and their covariance there,
/// taken straight, by differences to both sides. InputError: it
/// can't be computed at the start.
Posterior infer(const Inference& inference);

/// Covariance of parameters known to one deviation each beforehand, from slopes [parameter][row]
/// and noises [row] of as many rows as there are noises.
std::vector<Numbers> straight_covariance(const std::vector<Numbers>& slope, const Numbers& noise);

/// Covariance once further readings are added: slopes [parameter][reading] at them, their noise and
/// what they are off alike if that is off by one deviation.
struct MoreReadings {
    std::vector<Numbers> slope;
    Numbers noise, common;
};
std::vector<Numbers> narrowed(const std::vector<Numbers>& covariance, const MoreReadings& more);

/// A direction in which parameters are hardly told apart: shares of each [-], their squares summing
/// to one, and its standard deviation, in prior deviations.
struct Blurred {
    Numbers share;
    double deviation = 0;
};

/// The directions of the first `parameters` in which at least two of them stand against each other:
/// each known at least twice as well if the others were known, and yet wide together.
std::vector<Blurred> blurred_directions(const std::vector<Numbers>& covariance,
                                        std::size_t parameters);

}  // namespace drawwell
