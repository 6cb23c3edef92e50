#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "models/build_network.h"
#include "solver/heat_balance.h"

namespace drawwell {

/// Which of the limits of the draw gives way first.
enum class Limit { short_push, lasting_push, exchange };

/// How much push the draw withstands at an instant [Pa].
struct Spare {
    double reserve = 0;    // a short push at the flue's top, walls as they are
    double suction = 0;    // the same by suction in the room; differs with ducts and leaks
    double sustained = 0;  // a push that lasts, walls following
    double exchange_early = 0, exchange_late = 0;  // before smoke trickles out at the feed's mouth
    Limit limit = Limit::short_push;
};

/// Works out the spare draw as a burn goes on, each part at its own pace, the reserve also between
/// samples where it is least.
class SpareDraw {
  public:
    SpareDraw(const Stove& stove, const BuiltStove& built);

    /// The spare draw last worked out; `balance` holds this state and holds it again afterwards.
    const Spare& at(double time, std::span<const double> state, HeatBalance& balance);

    /// A reserve draw between samples.
    struct Refined {
        double time = 0;      // [s]
        double pressure = 0;  // [Pa]
    };
    const std::vector<Refined>& refined() const { return refined_; }

  private:
    void find_reserve(double time, std::span<const double> state, HeatBalance& balance);
    void refine(HeatBalance& balance);
    bool stop_between(double from, double to) const;

    const Stove& stove_;
    const BuiltStove& built_;
    std::vector<double> stops_;
    bool inlets_differ_ = false;  // some air comes by ducts or leaks
    Spare spare_;

    struct Known {
        double time = 0, reserve = 0;
        std::vector<double> state;
    };
    std::array<Known, 3> known_;  // the last three reserves
    int known_count_ = 0;
    std::optional<double> reserve_time_, sustained_time_;
    std::vector<Refined> refined_;
    double lasting_flow_ = 0;  // [kg/s] at the lasting push last found
};

}  // namespace drawwell
