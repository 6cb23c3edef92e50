#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "models/laws/range.h"
#include "models/stretched.h"

namespace drawwell {

/// The answers that a law can bear on.
enum class Answer { draw, plate, exit_gas, wear };
inline constexpr std::size_t answer_count = 4;

/// A figure for each answer.
using ByAnswer = std::array<double, answer_count>;
constexpr std::size_t index(Answer answer) {
    return static_cast<std::size_t>(answer);
}

/// Effect of a weight [-]: what the answer may be off by, over the whole burn. Our choice.
inline constexpr double small_from = 0.01, care_from = 0.05;
Effect effect_of(double weight);

/// Adds up how long each law was used outside its range, and how much hung on it meanwhile.
class RangeTally {
  public:
    /// A law is used now, at `value` of its quantity, and `amount` (pressure [Pa], heat [W] or
    /// time [s/s], as the answer is weighed) hangs on it. Ranges are told apart by their address.
    void use(const Range& range, double value, Answer on, double amount,
             std::string_view where = {});
    /// Adds to all that an answer hangs on now, inside the ranges or out.
    void carry(Answer on, double amount) { now_carried_[index(on)] += amount; }
    /// Ends an instant: what it held counts half to the instant before, half to the next.
    void advance(double time);

    /// A law's weight on an answer is its share of all that was carried, while it was outside,
    /// times its uncertainty. `besides`: integrals over the burn to add to what was carried.
    /// Heaviest first.
    std::vector<Stretched> stretched(const ByAnswer& besides = {}) const;

  private:
    struct Instant {
        bool outside = false;
        ByAnswer amount{};
    };
    struct Entry {
        const Range* range = nullptr;
        std::string where;
        double worst = 0, strain = 0;
        double time = 0;    // [s] outside
        ByAnswer amount{};  // integrals while outside
        Instant now, last;
    };
    Entry& entry(const Range& range, std::string_view where);

    std::vector<Entry> entries_;
    ByAnswer carried_{}, now_carried_{}, last_carried_{};
    double first_time_ = 0, last_time_ = 0;
    bool begun_ = false;
};

}  // namespace drawwell
