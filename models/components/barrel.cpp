#include <cmath>
#include <string>
#include <utility>

#include "models/components/duct_shape.h"
#include "models/components/layered_wall.h"
#include "models/components/parts.h"
#include "models/components/under_plate.h"
#include "models/fouling.h"
#include "models/laws/enclosure.h"
#include "models/laws/friction.h"
#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

using constants::pi;

/// One ring of barrel wall.
struct Hoop {
    double from = 0, to = 0;  // [m] heights
    SolidId face{}, shell{};  // at the gas, and outermost of the shell
    SolidId back{};           // outermost, of the jacket where there is one
    double back_area = 0, emissivity = 0;
    bool in_jacket = false;
};

/// Hoops whose middle lies in the jacket have it all the way.
bool in_jacket(const Barrel& barrel, double height) {
    return !barrel.jacket.empty() && height > barrel.jacket_from && height < barrel.jacket_to;
}

Hoop add_hoop(StoveBuilder& builder, double from, double to) {
    const Stove& stove = builder.stove;
    const Barrel& barrel = *stove.barrel;
    const double radius = barrel.diameter / 2 - thickness(barrel.shell);
    const bool jacket = in_jacket(barrel, (from + to) / 2);
    BuildUp layers = barrel.shell;
    if (jacket) layers.insert(layers.end(), barrel.jacket.begin(), barrel.jacket.end());
    const Wall wall =
        add_wall(builder, {.name = "barrel." + std::to_string(builder.layout.barrel.solids.size()),
                           .layers = std::move(layers),
                           .face_area = 2 * pi * radius * (to - from),
                           .face_radius = radius,
                           .temperature = stove.site.room,
                           .held_face = {}});
    const SolidId shell = wall.layer_backs[barrel.shell.size() - 1];
    // From the top down: the steel conducts along itself.
    const auto& above = builder.layout.barrel;
    if (!above.solids.empty()) {
        const double metal = thickness(barrel.shell) - barrel.soot;
        const double section = 2 * pi * radius * metal;
        const double apart = above.position.back() - (from + to) / 2;
        builder.network.links.push_back({.a = above.solids.back(),
                                         .b = shell,
                                         .shape_a = section / (apart / 2),
                                         .shape_b = section / (apart / 2)});
    }
    builder.layout.barrel.solids.push_back(shell);
    builder.layout.barrel.position.push_back((from + to) / 2);
    return {from, to, wall.face, shell, wall.back, wall.back_area, wall.back_emissivity, jacket};
}

/// The hoops' outer faces: bare shell and jacket each have an emissivity of their own.
class Outside {
  public:
    explicit Outside(const Barrel& barrel)
        : shell_{.name = "barrel",
                 .solids = {},
                 .area = {},
                 .facing = Facing::upright_pipe,
                 .length = barrel.height,
                 .diameter = barrel.diameter},
          jacket_(shell_) {
        jacket_.name = "barrel jacket";
        jacket_.diameter += 2 * thickness(barrel.jacket);
    }

    void note(const Hoop& hoop) {
        OuterFace& face = hoop.in_jacket ? jacket_ : shell_;
        face.solids.push_back(hoop.back);
        face.area.push_back(hoop.back_area);
        face.emissivity = hoop.emissivity;
    }

    /// InputError: a jacket that reaches no hoop's middle.
    void add_to(StoveBuilder& builder) && {
        const Barrel& barrel = *builder.stove.barrel;
        if (!barrel.jacket.empty() && jacket_.solids.empty())
            throw InputError(
                "barrel.jacket is lower than the stretches that the barrel is divided into, and "
                "lies between the middles of two: make it higher, or raise burn.refine");
        for (OuterFace* face : {&shell_, &jacket_})
            if (!face->solids.empty()) add_outer_face(builder, std::move(*face));
    }

  private:
    OuterFace shell_, jacket_;
};

}  // namespace

void add_barrel(StoveBuilder& builder) {
    const Stove& stove = builder.stove;
    if (!stove.barrel) return;
    const Barrel& barrel = *stove.barrel;
    Layout& layout = builder.layout;
    const double foot = stove.barrel_foot();
    const double outlet = foot + stove.flue.outlet;
    const double top = stove.riser.top, lid = stove.plate->underside;
    const double radius = barrel.diameter / 2 - thickness(barrel.shell);
    const double bore_radius = riser_section(stove.riser).equivalent_radius();
    const double skin_radius = bore_radius + thickness(stove.riser.lining);

    Outside outside(barrel);
    const Hoop crown = add_hoop(builder, top, lid);
    outside.note(crown);

    // The space round the riser, from its top down to the outlet; each gas cell lies between a
    // stretch of the riser's skin and one of barrel.
    const double width = 2 * (radius - skin_radius);
    GasPassageShape shape;
    shape.film = Film::annulus;
    shape.film_length = top - outlet;
    shape.roughness = sooted_roughness(shape.roughness, barrel.soot);
    shape.laminar_constant = annulus_laminar_constant(skin_radius / radius);
    std::vector<std::size_t> skins;  // of the riser above the barrel's foot, from the top down
    for (std::size_t i = layout.riser_skin.solids.size(); i-- > 0;)
        if (layout.riser_skin.position[i] > foot) skins.push_back(i);
    double upper = top;
    Hoop second{};
    for (const std::size_t i : skins) {
        const double lower = 2 * layout.riser_skin.position[i] - upper;
        const Hoop hoop = add_hoop(builder, lower, upper);
        if (layout.barrel.solids.size() == 2) second = hoop;
        outside.note(hoop);
        const double skin_area = 2 * pi * skin_radius * (upper - lower);
        const double wall_area = 2 * pi * radius * (upper - lower);
        const double exchange =
            concentric_exchange(skin_area, wall_area, sooted_emissivity, sooted_emissivity);
        builder.network.enclosures.push_back(
            {.name = "round the riser",
             .patches = {{{layout.riser_skin.solids[i], 1}}, {{hoop.face, 1}}},
             .exchange_area = {0, exchange, exchange, 0}});
        const bool flows = layout.riser_skin.position[i] > outlet;
        if (flows) {
            shape.cells.push_back({.length = upper - lower,
                                   .rise = lower - upper,
                                   .area = pi * (radius * radius - skin_radius * skin_radius),
                                   .hydraulic_diameter = width,
                                   .beam_length = 0.9 * width,  // slab of half the width, 1.8 L
                                   .radius = 0,
                                   .faces = {}});
            layout.annulus_gas_height.push_back((upper + lower) / 2);
        }
        // Below the outlet the gas stands; it passes on what the lowest flowing cell brings.
        auto& faces = shape.cells.back().faces;
        faces.push_back({index(layout.riser_skin.solids[i]), skin_area, sooted_emissivity});
        faces.push_back({index(hoop.face), wall_area, sooted_emissivity});
        upper = lower;
    }
    // The gas that turns down at the barrel's edge washes the crown as it does the first hoop.
    shape.cells.front().faces.push_back(
        {index(crown.face), 2 * pi * radius * (lid - top), sooted_emissivity});
    std::move(outside).add_to(builder);

    // The lid sits on the barrel's rim.
    std::size_t seat = 0;
    while (seat + 2 < layout.plate_edge.size() && layout.plate_edge[seat + 1] < radius - 1e-9)
        ++seat;
    builder.network.links.push_back(
        {.a = layout.plate.solids[seat],
         .b = crown.shell,
         .shape_a = 1e9,
         .shape_b = 1e9,
         .contact = 1 / (seat_conductance * 2 * pi * radius * seat_width)});
    add_under_plate_radiation(builder, {.bore_radius = bore_radius,
                                        .skin_radius = skin_radius,
                                        .barrel_radius = radius,
                                        .gap = lid - top,
                                        .rings = layout.plate.solids,
                                        .ring_edge = layout.plate_edge,
                                        .plate_emissivity = sooted_emissivity,
                                        .mouth = layout.riser_inside.solids.back(),
                                        .rim = layout.riser_skin.solids.back(),
                                        .barrel = crown.face,
                                        .below = second.face,
                                        .rim_emissivity = sooted_emissivity,
                                        .barrel_emissivity = sooted_emissivity});
    const JunctionId above = layout.outlet;
    layout.outlet = builder.add_junction("flue outlet");
    layout.annulus = builder.add_passage("annulus", above, layout.outlet, std::move(shape));
}

}  // namespace drawwell
