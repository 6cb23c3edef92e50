#include "models/components/under_plate.h"

#include <array>
#include <cmath>

#include "models/laws/enclosure.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

/// Exchange A F [m2] between ring a..b below and ring c..d above, coaxial, a distance apart.
double ring_to_ring(double a, double b, double c, double d, double distance) {
    const auto discs = [&](double below, double above) {
        return below > 0 && above > 0 ? pi * below * below * coaxial_discs(below, above, distance)
                                      : 0.0;
    };
    return discs(b, d) - discs(b, c) - discs(a, d) + discs(a, c);
}

/// The plate's rings between two radii, each weighted by its area.
std::vector<RadiationEnclosure::Share> rings_between(const UnderPlate& space, double from,
                                                     double to) {
    std::vector<RadiationEnclosure::Share> shares;
    const double whole = to * to - from * from;
    for (std::size_t i = 0; i < space.rings.size(); ++i) {
        const double inner = space.ring_edge[i], outer = space.ring_edge[i + 1];
        if (inner > from - 1e-9 && outer < to + 1e-9)
            shares.push_back({space.rings[i], (outer * outer - inner * inner) / whole});
    }
    return shares;
}

}  // namespace

void add_under_plate_radiation(StoveBuilder& builder, const UnderPlate& space) {
    constexpr std::size_t rings = 3, count = 7;  // three below, three above, the side
    const std::array<double, 4> radius{0, space.bore_radius, space.skin_radius,
                                       space.barrel_radius};
    std::array<double, count> area{};
    for (std::size_t i = 0; i < rings; ++i)
        area[i] = area[rings + i] = pi * (radius[i + 1] * radius[i + 1] - radius[i] * radius[i]);
    area[6] = 2 * pi * space.barrel_radius * space.gap;

    std::array<double, count * count> exchange{};
    for (std::size_t i = 0; i < rings; ++i)
        for (std::size_t j = 0; j < rings; ++j) {
            const double both = std::max(
                0.0, ring_to_ring(radius[i], radius[i + 1], radius[j], radius[j + 1], space.gap));
            exchange[i * count + rings + j] = exchange[(rings + j) * count + i] = both;
        }
    double to_side = 0;
    for (std::size_t i = 0; i < 2 * rings; ++i) {
        double seen = 0;
        for (std::size_t j = 0; j < 2 * rings; ++j) seen += exchange[i * count + j];
        exchange[i * count + 6] = exchange[6 * count + i] = area[i] - seen;
        to_side += area[i] - seen;
    }
    exchange[6 * count + 6] = area[6] - to_side;

    Enclosure surfaces;
    surfaces.area.assign(area.begin(), area.end());
    surfaces.emissivity = {1.0,
                           space.rim_emissivity,
                           1.0,
                           space.plate_emissivity,
                           space.plate_emissivity,
                           space.plate_emissivity,
                           space.barrel_emissivity};
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t j = 0; j < count; ++j)
            surfaces.view_factor.push_back(exchange[i * count + j] / area[i]);

    RadiationEnclosure enclosure;
    enclosure.name = "under the plate";
    enclosure.patches = {
        {{space.mouth, 1}}, {{space.rim, 1}}, {{space.below, 0.5}, {space.rim, 0.5}}};
    for (std::size_t j = 0; j < rings; ++j)
        enclosure.patches.push_back(rings_between(space, radius[j], radius[j + 1]));
    enclosure.patches.push_back({{space.barrel, 1}});
    enclosure.exchange_area = exchange_areas(surfaces);
    builder.network.enclosures.push_back(std::move(enclosure));
}

}  // namespace drawwell
