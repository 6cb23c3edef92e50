#include <algorithm>
#include <cmath>
#include <utility>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/parts.h"
#include "models/fouling.h"
#include "models/laws/losses.h"

namespace drawwell {
namespace {

constexpr double usual_cell = 0.3;  // [m]
constexpr double fewest_cells = 2, most_cells = 10;

/// What is lost where a section begins: into the flue, or from one bore to another round a bend or
/// through a tee.
void add_entry(const FlueSection& section, const FlueSection* before, bool after_chamber,
               GasPassageShape& shape) {
    const double area = round_section(section.bore).area;
    LocalLoss entry{.area = area, .low_reynolds = low_reynolds_loss};
    if (before == nullptr) {
        entry.forward = after_chamber ? entrance_loss() : 0;
        entry.reverse = after_chamber ? exit_loss() : 0;
        if (!after_chamber) entry.low_reynolds = 0;
    } else {
        const double ratio = area / round_section(before->bore).area;
        entry.bend = mitre_bend_loss(section.entry_angle);
        entry.low_reynolds = 0;
        // Both coefficients are on this section's velocity; the narrow duct's loss is rescaled.
        const double widening = ratio > 1 ? sudden_expansion_loss(1 / ratio) * ratio * ratio
                                          : sudden_expansion_loss(ratio);
        const double narrowing = ratio > 1 ? sudden_contraction_loss(1 / ratio) * ratio * ratio
                                           : sudden_contraction_loss(ratio);
        entry.forward = ratio > 1 ? widening : narrowing;
        entry.reverse = ratio > 1 ? narrowing : widening;
    }
    if (section.tee) entry.bend = tee_side_loss();
    shape.losses.push_back(entry);
}

}  // namespace

void add_flue(StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    Layout& layout = builder.layout;
    layout.terminal = builder.add_outdoors(
        "flue top", [site = stove.site, density = builder.outdoor_air](double time) {
            const double wind = site.wind(time);
            return site.wind_factor * 0.5 * density(time) * wind * wind;
        });
    const auto& sections = stove.flue.sections;
    if (sections.empty()) {
        const double area = riser_section(stove.riser).area;
        layout.flue.push_back(builder.add_passage("outlet", layout.outlet, layout.terminal,
                                                  opening(area, exit_loss())));
        return;
    }
    std::optional<std::size_t> damper;
    if (is_moved(stove.schedule.damper, 1)) damper = builder.add_open_share(stove.schedule.damper);
    layout.flue_area = round_section(sections.front().bore).area;
    for (const FlueSection& section : sections)
        if (section.rise != 0 && !layout.flue_rises) {
            layout.flue_rises = section.rise > 0;
            break;
        }
    const bool after_chamber = stove.barrel.has_value() || layout.flue_way > 0;
    double way = layout.flue_way, height = layout.flue_height;
    for (std::size_t s = 0; s < sections.size(); ++s) {
        const FlueSection& section = sections[s];
        const bool last = s + 1 == sections.size();
        const DuctSection duct = round_section(section.bore);
        const std::size_t count = builder.cells(
            std::clamp(std::round(section.length / usual_cell), fewest_cells, most_cells));
        const double length = section.length / static_cast<double>(count);
        const bool upright = std::abs(section.rise) > section.length / 2;
        OuterFace outside{
            .name = "flue." + section.name,
            .solids = {},
            .area = {},
            .facing = upright ? Facing::upright_pipe : Facing::level_pipe,
            .length = upright ? section.length : section.bore + 2 * thickness(section.wall),
            .diameter = section.bore + 2 * thickness(section.wall),
            .outdoors = section.outdoors};
        GasPassageShape shape;
        shape.roughness = sooted_roughness(shape.roughness, section.soot);
        for (std::size_t i = 0; i < count; ++i) {
            GasCellShape cell = duct_cell(duct, length, section.rise / static_cast<double>(count));
            const double area = duct.perimeter * length;
            const Wall wall = add_wall(
                builder, {.name = "flue." + section.name + "." + std::to_string(i),
                          .layers = section.wall,
                          .face_area = area,
                          .face_radius = section.bore / 2,
                          .temperature = section.outdoors ? stove.site.outdoor(0) : stove.site.room,
                          .held_face = {}});
            cell.faces.push_back({index(wall.face), area, wall.face_emissivity});
            shape.cells.push_back(std::move(cell));
            layout.flue_wall.solids.push_back(wall.face);
            layout.flue_wall.position.push_back(way + (static_cast<double>(i) + 0.5) * length);
            layout.flue_gas_way.push_back(way + (static_cast<double>(i) + 0.5) * length);
            outside.solids.push_back(wall.back);
            outside.area.push_back(wall.back_area);
            outside.emissivity = wall.back_emissivity;
        }
        layout.flue_starts.push_back({layout.outlet, height});
        way += section.length;
        height += section.rise;
        add_entry(section, s > 0 ? &sections[s - 1] : nullptr, after_chamber, shape);
        if (damper && (stove.flue.damper.empty() ? s == 0 : section.name == stove.flue.damper))
            shape.losses.push_back({.area = duct.area, .open = damper});
        if (last)
            shape.losses.push_back({.at_end = true,
                                    .area = duct.area,
                                    .forward = exit_loss() + stove.flue.cap_loss,
                                    .reverse = entrance_loss() + stove.flue.cap_loss});
        add_outer_face(builder, std::move(outside));
        const JunctionId from = layout.outlet;
        layout.outlet = last ? layout.terminal : builder.add_junction("after flue." + section.name);
        layout.flue.push_back(
            builder.add_passage("flue." + section.name, from, layout.outlet, std::move(shape)));
    }
}

}  // namespace drawwell
