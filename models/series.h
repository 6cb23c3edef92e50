#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string_view>

#include "solver/results.h"

namespace drawwell {

/// A column as one value an instant; the chosen cell where it has several.
class Series {
  public:
    Series(const Results& results, std::string_view name, std::size_t cell = 0)
        : column_(results.find(name)), cell_(cell) {}
    explicit operator bool() const { return column_ != nullptr && !column_->values.empty(); }
    double operator[](std::size_t i) const { return column_->values[i * column_->width + cell_]; }
    std::size_t width() const { return column_->width; }

  private:
    const Column* column_;
    std::size_t cell_;
};

/// Integral over the samples of f(i), trapezoidal, where `counts` holds at both ends.
inline double integrate(
    const Results& results, const std::function<double(std::size_t)>& f,
    const std::function<bool(std::size_t)>& counts = [](std::size_t) { return true; }) {
    double sum = 0;
    for (std::size_t i = 1; i < results.time.size(); ++i)
        if (counts(i) && counts(i - 1))
            sum += (f(i) + f(i - 1)) / 2 * (results.time[i] - results.time[i - 1]);
    return sum;
}

inline double integrate(const Results& results, const Series& series) {
    return integrate(results, [&](std::size_t i) { return series[i]; });
}

/// The first sample's time [s] at which a series has reached a level; nothing: it never does.
inline std::optional<double> first_reaching(const Results& results, const Series& series,
                                            double level) {
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (series[i] >= level) return results.time[i];
    return {};
}

/// The largest value of a series, and the sample it stands at.
struct Peak {
    double value = 0;
    std::size_t at = 0;
};

inline Peak peak(const Results& results, const Series& series) {
    Peak most{series[0], 0};
    for (std::size_t i = 1; i < results.time.size(); ++i)
        if (series[i] > most.value) most = {series[i], i};
    return most;
}

}  // namespace drawwell
