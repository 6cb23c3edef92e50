#pragma once

#include <optional>

#include "models/library.h"
#include "models/stove.h"
#include "solver/flow.h"

namespace drawwell {

/// What the gas would do before anything burns.
enum class Leaning { falls, stands, rises };

/// A stove before it is lit: both directions are possible then, and the sign of what little column
/// there is decides.
struct ColdStart {
    double column = 0;  // [Pa] of all gas at rest, towards the flue
    Leaning leaning = Leaning::stands;
    double priming = 0;  // [Pa] wanted to turn it towards the flue; 0: none
    /// Kindling [s] burned where the stove says until the feed takes in air to stay. Nothing: it
    /// does not within the time watched, or no kindling is lit.
    std::optional<double> kindling;
};

/// How long the kindling is watched [s].
inline constexpr double kindling_watched = 300;

/// When the feed first takes in air to stay, over the time watched.
class KindlingWatch {
  public:
    void see(double time, const Flow& flow);
    std::optional<double> turned() const { return since_; }  // [s]

  private:
    std::optional<double> since_;
};

/// Whether nothing but kindling burns over the time watched, so that the burn itself shows what
/// kindling does.
bool kindles_alone(const Stove& stove);

/// Looks at the stove as it stands before lighting, then lights the kindling alone and watches; or
/// takes it from a burn that was watched. Errors as `run_burn`.
ColdStart cold_start(const Stove& stove, const Library& library,
                     const KindlingWatch* seen = nullptr);

}  // namespace drawwell
