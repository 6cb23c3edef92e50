#include "cli/study/fit/posterior.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numeric>
#include <unsupported/Eigen/LevenbergMarquardt>

#include "solver/errors.h"

namespace drawwell {
namespace {

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;

constexpr double beyond = 1e4;         // [noises] of a residual where nothing can be computed
constexpr double first_reach = 2;      // [deviations] of the first step
constexpr double close_enough = 0.02;  // [-] of the sum of squares that a step may still gain
constexpr int most_steps = 40;
constexpr double part = 0.35;  // [-] share from which a parameter has part in a direction

Numbers numbers_of(const Vector& vector) {
    return {vector.data(), vector.data() + vector.size()};
}

std::vector<Numbers> rows_of(const Matrix& matrix) {
    std::vector<Numbers> rows;
    for (Eigen::Index i = 0; i < matrix.rows(); ++i) rows.push_back(numbers_of(matrix.row(i)));
    return rows;
}

Eigen::Index index(std::size_t i) {
    return static_cast<Eigen::Index>(i);
}

Matrix matrix_of(const std::vector<Numbers>& rows) {
    Matrix matrix(index(rows.size()), index(rows.empty() ? 0 : rows.front().size()));
    for (Eigen::Index i = 0; i < matrix.rows(); ++i)
        for (Eigen::Index k = 0; k < matrix.cols(); ++k)
            matrix(i, k) = rows[static_cast<std::size_t>(i)][static_cast<std::size_t>(k)];
    return matrix;
}

/// The problem as Eigen's solver wants it: residuals over noise, then the parameters themselves.
class Residuals : public Eigen::DenseFunctor<double> {
  public:
    explicit Residuals(const Inference& inference)
        : DenseFunctor(static_cast<int>(inference.parameters + inference.straight.size()),
                       static_cast<int>(inference.measured.size() + inference.parameters +
                                        inference.straight.size())),
          inference_(inference) {}

    int operator()(const Vector& x, Vector& residual) const {
        const Numbers predicted = predict(x);
        const std::size_t readings = inference_.measured.size();
        for (std::size_t i = 0; i < readings; ++i)
            residual[index(i)] =
                predicted.empty() ? beyond
                                  : (predicted[i] - inference_.measured[i]) / inference_.noise[i];
        residual.tail(x.size()) = x;
        return 0;
    }

    int df(const Vector& x, Matrix& jacobian) const {
        const std::vector<Numbers> slope = slopes(x, false);
        jacobian.setZero();
        for (std::size_t k = 0; k < slope.size(); ++k) {
            for (std::size_t i = 0; i < inference_.measured.size(); ++i)
                jacobian(index(i), index(k)) = slope[k][i] / inference_.noise[i];
            jacobian(index(inference_.measured.size() + k), index(k)) = 1;
        }
        return 0;
    }

    Numbers predict(const Vector& x) const {
        Numbers predicted = inference_.predict({own(x)}).front();
        if (!predicted.empty()) add_straight(x, predicted);
        return predicted;
    }

    /// [parameter][row]; by both sides, or by the one on which it can be computed.
    std::vector<Numbers> slopes(const Vector& x, bool both) const {
        if (!both && !inference_.start_slope.empty() && at_start(x)) {
            std::vector<Numbers> slope = inference_.start_slope;
            slope.insert(slope.end(), inference_.straight.begin(), inference_.straight.end());
            return slope;
        }
        const std::vector<Numbers> more = beside(x, 1);
        std::vector<Numbers> less(inference_.parameters);
        std::vector<std::size_t> missing;
        for (std::size_t k = 0; k < inference_.parameters; ++k)
            if (both || more[k].empty()) missing.push_back(k);
        if (!missing.empty()) less = beside(x, -1, missing);
        const Numbers middle = inference_.predict({own(x)}).front();
        std::vector<Numbers> slope;
        for (std::size_t k = 0; k < inference_.parameters; ++k) {
            const Numbers& low = less[k].empty() ? middle : less[k];
            const Numbers& high = more[k].empty() ? middle : more[k];
            const double span =
                ((less[k].empty() ? 0 : 1) + (more[k].empty() ? 0 : 1)) * inference_.step[k];
            slope.emplace_back(middle.size());
            for (std::size_t i = 0; span > 0 && i < middle.size(); ++i)
                slope.back()[i] = (high[i] - low[i]) / span;
        }
        slope.insert(slope.end(), inference_.straight.begin(), inference_.straight.end());
        return slope;
    }

  private:
    bool at_start(const Vector& x) const {
        for (std::size_t k = 0; k < inference_.parameters; ++k)
            if (x[index(k)] != (inference_.start.empty() ? 0 : inference_.start[k])) return false;
        return true;
    }
    /// Rows with each parameter a step aside (or to the other side), others as they are.
    std::vector<Numbers> beside(const Vector& x, double side) const {
        std::vector<std::size_t> all(inference_.parameters);
        std::iota(all.begin(), all.end(), 0);
        return beside(x, side, all);
    }
    std::vector<Numbers> beside(const Vector& x, double side,
                                const std::vector<std::size_t>& which) const {
        std::vector<Numbers> points, rows(inference_.parameters);
        for (const std::size_t k : which) {
            points.push_back(own(x));
            points.back()[k] += side * inference_.step[k];
        }
        std::vector<Numbers> found = inference_.predict(points);
        for (std::size_t i = 0; i < which.size(); ++i) rows[which[i]] = std::move(found[i]);
        return rows;
    }
    Numbers own(const Vector& x) const { return {x.data(), x.data() + inference_.parameters}; }
    void add_straight(const Vector& x, Numbers& predicted) const {
        for (std::size_t k = 0; k < inference_.straight.size(); ++k)
            for (std::size_t i = 0; i < predicted.size(); ++i)
                predicted[i] += x[index(inference_.parameters + k)] * inference_.straight[k][i];
    }

    const Inference& inference_;
};

Matrix precision_of(const Matrix& over_noise) {
    return Matrix::Identity(over_noise.rows(), over_noise.rows()) +
           over_noise * over_noise.transpose();
}

}  // namespace

Posterior infer(const Inference& inference) {
    const std::size_t count = inference.parameters + inference.straight.size();
    Vector x = Vector::Zero(index(count));
    for (std::size_t k = 0; k < inference.start.size(); ++k) x[index(k)] = inference.start[k];
    Residuals residuals(inference);
    if (residuals.predict(x).empty())
        throw InputError("the stove can't be computed where the search for a match begins");
    Posterior posterior;
    posterior.settled = true;
    if (count > 0) {
        Eigen::LevenbergMarquardt<Residuals> search(residuals);
        search.setMaxfev(most_steps);
        search.setFactor(first_reach);
        search.setExternalScaling(true);
        search.diag() = Vector::Ones(index(count));
        // The sum of squares is about the number of readings.
        search.setFtol(close_enough / static_cast<double>(inference.measured.size() + count));
        search.setXtol(1e-3);
        const auto status = search.minimize(x);
        posterior.settled = status != Eigen::LevenbergMarquardtSpace::TooManyFunctionEvaluation;
    }
    posterior.estimate = numbers_of(x);
    posterior.predicted = residuals.predict(x);
    posterior.slope = residuals.slopes(x, true);
    posterior.covariance = straight_covariance(posterior.slope, inference.noise);
    return posterior;
}

std::vector<Numbers> straight_covariance(const std::vector<Numbers>& slope, const Numbers& noise) {
    Matrix over_noise(index(slope.size()), index(noise.size()));
    for (std::size_t k = 0; k < slope.size(); ++k)
        for (std::size_t i = 0; i < noise.size(); ++i)
            over_noise(index(k), index(i)) = slope[k][i] / noise[i];
    return rows_of(precision_of(over_noise).inverse());
}

std::vector<Numbers> narrowed(const std::vector<Numbers>& covariance, const MoreReadings& more) {
    const std::size_t count = covariance.size();
    Matrix over_noise(index(count), index(more.noise.size()));
    Vector common(index(more.noise.size()));
    for (std::size_t i = 0; i < more.noise.size(); ++i) {
        for (std::size_t k = 0; k < count; ++k)
            over_noise(index(k), index(i)) = more.slope[k][i] / more.noise[i];
        common[index(i)] = more.common[i] / more.noise[i];
    }
    // What is common to all readings is a parameter more, of which only its being unknown counts.
    const Vector shared = over_noise * common;
    const Matrix gained = over_noise * over_noise.transpose() -
                          shared * shared.transpose() / (1 + common.squaredNorm());
    return rows_of((matrix_of(covariance).inverse() + gained).inverse());
}

std::vector<Blurred> blurred_directions(const std::vector<Numbers>& covariance,
                                        std::size_t parameters) {
    std::vector<Blurred> blurred;
    if (parameters < 2) return blurred;
    const Matrix own = matrix_of(covariance).topLeftCorner(index(parameters), index(parameters));
    const Matrix precision = own.inverse();
    const Eigen::SelfAdjointEigenSolver<Matrix> solved(own);
    for (Eigen::Index e = own.rows(); e-- > 0;) {  // the widest first
        const double variance = solved.eigenvalues()[e];
        Blurred direction{Numbers(parameters), std::sqrt(variance)};
        int parts = 0;
        for (Eigen::Index k = 0; k < own.rows(); ++k) {
            const double share = solved.eigenvectors()(k, e);
            if (std::abs(share) < part || 1 / precision(k, k) > variance / 4) continue;
            direction.share[static_cast<std::size_t>(k)] = share;
            ++parts;
        }
        if (parts > 1) blurred.push_back(direction);
    }
    return blurred;
}

}  // namespace drawwell
