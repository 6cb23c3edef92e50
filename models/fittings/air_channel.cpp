#include "models/fittings/air_channel.h"

#include <algorithm>
#include <array>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/stove_builder.h"
#include "models/fittings/reading.h"
#include "models/laws/losses.h"
#include "models/series.h"

namespace drawwell {
namespace {

constexpr double lining_emissivity = 0.9;  // [-] of its outside: our choice; air hardly radiates

}  // namespace

std::span<const ColumnInfo> AirChannel::columns() {
    static constexpr std::array columns{
        ColumnInfo{"channel_air_flow", "kg/s", table, "air through each channel to the fire"},
        ColumnInfo{"channel_air_temperature", "K", table, "that air where it reaches the fire"},
    };
    return columns;
}

std::vector<FittingProblem> problems(const AirChannel& channel, const Stove& stove) {
    if (!stove.tunnel) return {{{"width"}, "an air channel runs along a tunnel: add [tunnel]"}};
    if (channel.length > stove.tunnel->length)
        return {{{"length"}, "the channel is longer than the tunnel"}};
    if (channel.width > stove.tunnel->width + 2 * stove.tunnel->height)
        return {{{"width"}, "the channel is wider than the tunnel's floor and sides"}};
    return {};
}

void add_fitting(StoveBuilder& builder, const AirChannel& channel) {
    Layout& layout = builder.layout;
    const std::string name = "air_channel." + channel.name;
    OutsideFace& sides = outer_face(builder, "tunnel");
    const DuctSection section = rectangular_section(channel.width, channel.height);
    const std::size_t count = sides.solids.size();
    const std::vector<double> ends = layout.tunnel_wall.ends(0);

    // From its far end back to the hearth; the lining it lies against no longer faces the room.
    GasPassageShape shape;
    shape.laminar_constant = section.laminar_constant;
    double left = channel.length;
    for (std::size_t i = 0; i < count && left > 1e-6; ++i) {
        const double length = std::min(left, ends[i + 1] - ends[i]);
        GasCellShape cell = duct_cell(section, length, 0);
        const double against = channel.width * length;
        const double behind = std::min(against, sides.area[i]);
        cell.faces.push_back({index(sides.solids[i]), behind, lining_emissivity});
        sides.area[i] -= behind;
        shape.cells.push_back(std::move(cell));
        left -= length;
    }
    std::reverse(shape.cells.begin(), shape.cells.end());
    shape.losses.push_back({.area = section.area,
                            .forward = entrance_loss() + exit_loss(),
                            .reverse = entrance_loss() + exit_loss(),
                            .low_reynolds = low_reynolds_loss});
    const JunctionId around = builder.add_air_for_fire(name, channel.outdoors);
    const std::size_t passage =
        builder.add_passage(name, around, layout.hearth, std::move(shape), true);
    layout.side_air.push_back(passage);

    layout.readings.push_back({"channel_air_flow", [passage](const HeatBalance& at) {
                                   return at.flow().march().mass_flow(passage);
                               }});
    layout.readings.push_back({"channel_air_temperature", [passage](const HeatBalance& at) {
                                   const Passage& law = at.network().passages[passage];
                                   const std::size_t last =
                                       law.first_cell + law.law->cell_count() - 1;
                                   return at.flow().march().cells()[last].outlet_temperature;
                               }});
}

std::vector<FittingAnswer> answers(const AirChannel&, const Stove&, std::size_t at,
                                   const Results& results) {
    const Series flow(results, "channel_air_flow", at);
    const double air = integrate(results, [&](std::size_t i) { return std::max(flow[i], 0.0); });
    const Peak warmest = peak(results, {results, "channel_air_temperature", at});
    return {{"air", "air it brings", "kg", air}, {"most", "that air, at most", "K", warmest.value}};
}

}  // namespace drawwell
