#pragma once

namespace drawwell {

/// What wall friction in a straight duct depends on.
struct DuctFriction {
    double reynolds = 0;            // [-] on the hydraulic diameter; its sign does not matter
    double relative_roughness = 0;  // [-] sand roughness over hydraulic diameter
    double laminar_constant = 64;   // [-] Darcy factor times Reynolds number in laminar flow
};

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
