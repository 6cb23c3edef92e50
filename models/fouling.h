#pragma once

#include "models/stove.h"

namespace drawwell {

/// The material that lines sooted walls, by its name in data/.
inline constexpr const char* soot_material = "soot";

/// Whether soot lies anywhere in it.
bool is_sooted(const Stove& stove);

/// The stove with its soot (`Riser::soot`, `Barrel::soot`, `FlueSection::soot`) as a layer of its
/// walls on the gas's side, which narrows the gas's way by as much.
Stove with_soot_layers(const Stove& stove);

/// Sand roughness [m] of a wall under so much soot [m], beside that of a swept one: soot lies in
/// flakes and lumps half as high as it is thick, our choice.
double sooted_roughness(double swept, double soot);

}  // namespace drawwell
