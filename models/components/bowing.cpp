#include <numeric>
#include <string_view>
#include <utility>
#include <vector>

#include "models/components/parts.h"
#include "models/laws/plate_bow.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

/// What the bow is worked out from at an instant.
struct Bowing {
    BowingPlate plate;
    Table expansion, conductivity;  // of its metal, against temperature [K]
    std::size_t in_hole = 0;        // rings of the hole, which is taken as filled by its edge
    std::vector<SolidId> rings;
    std::vector<double> edge;            // [m]
    std::vector<std::size_t> top;        // outside faces of the plate
    std::vector<PlateContact> contacts;  // with what lies on it

    BowBand operator()(const HeatBalance& at) const {
        std::vector<double> temperature;
        double area = 0, mean = 0, through = 0;
        for (std::size_t i = 0; i < rings.size(); ++i) {
            const std::size_t ring = index(rings[std::max(i, in_hole)]);
            temperature.push_back(at.temperature()[ring]);
            if (i < in_hole) continue;
            const double own = pi * (edge[i + 1] * edge[i + 1] - edge[i] * edge[i]);
            area += own;
            mean += own * temperature.back();
            through += at.heat()[ring] / 2;  // half of what it keeps comes to its middle
        }
        mean /= area;
        for (const std::size_t face : top) through += at.fluxes().outside[face];
        for (const PlateContact& contact : contacts)
            if (contact.ring >= in_hole)
                through += contact.there(at.time()) * contact.conductance *
                           (at.temperature()[index(rings[contact.ring])] -
                            at.temperature()[index(contact.body)]);
        BowingPlate warm = plate;
        warm.expansion = expansion(mean);
        return plate_bow(warm, {.edge = edge,
                                .temperature = temperature,
                                .through = through / area * plate.thickness / conductivity(mean)});
    }
};

}  // namespace

void add_plate_bow(StoveBuilder& builder) {
    Layout& layout = builder.layout;
    if (layout.plate.solids.empty()) return;
    const Plate& plate = *builder.stove.plate;
    const Material& metal = builder.material(plate.material);
    if (!metal.expansion) return;
    Bowing bowing{.plate = {.radius = layout.plate_edge.back(),
                            .thickness = plate.thickness,
                            .clamped = plate.clamped},
                  .expansion = *metal.expansion,
                  .conductivity = metal.conductivity,
                  .in_hole = layout.hole_rings,
                  .rings = layout.plate.solids,
                  .edge = layout.plate_edge,
                  .top = {},
                  .contacts = layout.on_plate};
    for (std::size_t f = 0; f < builder.network.outside.size(); ++f) {
        const std::string_view name = builder.network.outside[f].name;
        if (name == "plate" || name.starts_with("plate under ")) bowing.top.push_back(f);
    }
    layout.bow_told = true;
    layout.readings.push_back(
        {"plate_bow_low", [bowing](const HeatBalance& at) { return bowing(at).low; }});
    layout.readings.push_back(
        {"plate_bow_high",
         [bowing = std::move(bowing)](const HeatBalance& at) { return bowing(at).high; }});
}

}  // namespace drawwell
