#pragma once

namespace drawwell {

/// What wall friction in a straight duct depends on.
struct DuctFriction {
    double reynolds = 0;           // [-] on the hydraulic diameter; its sign does not matter
    double rough = 0;              // [-] haaland_roughness of the wall
    double laminar_constant = 64;  // [-] Darcy factor times Reynolds number in laminar flow
};

/// Haaland's term for a sand roughness over the hydraulic diameter [-], the same for all flows:
/// (k / (3.7 D))^1.11.
double haaland_roughness(double relative_roughness);

/// Darcy friction factor times Reynolds number [-]: laminar below 2300, Haaland's formula above
/// 4000, a smooth step between (our choice); finite at rest, slope continuous.
/// Pressure loss per length = result * viscosity * velocity / (2 D^2).
double friction_times_reynolds(const DuctFriction& duct);

/// Laminar constant [-] of an annulus, `k` the ratio of inner to outer diameter, 0..1: from 64 (no
/// core: the limit is reached only logarithmically) to 96 (plates). Exact solution. InputError
/// outside.
double annulus_laminar_constant(double k);

/// Laminar constant [-] of a rectangle, `aspect` one side over the other, either way round: 56.9
/// square, 96 plates. Shah and London's polynomial (1978), read in a public listing.
/// InputError if not positive.
double rectangle_laminar_constant(double aspect);

}  // namespace drawwell
