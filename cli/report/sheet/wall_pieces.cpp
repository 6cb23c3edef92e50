#include "cli/report/sheet/wall_pieces.h"

#include <cmath>

#include "cli/report/section/geometry.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::pi;

bool bends(const Layer& layer, const Library& library) {
    const Stuff stuff = stuff_of(library.materials.at(layer.material));
    return stuff == Stuff::blanket || stuff == Stuff::metal;
}

/// Sheet and blanket are cut to the length along their middle; a lap is the builder's.
void add_wrap(std::vector<Piece>& all, const std::string& part, const Layer& layer, double round,
              double height, const Library& library) {
    const bool metal = stuff_of(library.materials.at(layer.material)) == Stuff::metal;
    add_flat(all, part, 1, layer, round, height,
             metal ? "bent round; add a lap" : "wrapped round, ends butted");
}

}  // namespace

void add_flat(std::vector<Piece>& all, const std::string& part, int count, const Layer& layer,
              double a, double b, const std::string& note) {
    if (!(a > 0) || !(b > 0)) return;
    all.push_back({part, count, layer.material, layer.thickness, Piece::Form::flat, a, b, note});
}

void add_box(std::vector<Piece>& all, const DuctInside& inside, const BuildUp& wall,
             const Library& library) {
    for (const Band& band : bands(wall)) {
        const double middle = (band.from + band.to) / 2;
        if (bends(*band.layer, library)) {
            add_wrap(all, inside.part + " wall", *band.layer,
                     2 * (inside.width + inside.depth) + 8 * middle, inside.height, library);
            continue;
        }
        add_flat(all, inside.part + " wall, front and back", 2, *band.layer,
                 inside.width + 2 * band.from, inside.height);
        add_flat(all, inside.part + " wall, sides", 2, *band.layer, inside.depth + 2 * band.to,
                 inside.height);
    }
}

void add_octagon(std::vector<Piece>& all, const DuctInside& inside, const BuildUp& wall,
                 const Library& library) {
    const double side = std::tan(pi / 8);  // [-] of the width from flat to flat
    for (const Band& band : bands(wall)) {
        const double across = inside.width + 2 * band.to;
        if (bends(*band.layer, library))
            add_wrap(all, inside.part + " wall", *band.layer,
                     8 * side * (across - band.layer->thickness), inside.height, library);
        else
            add_flat(all, inside.part + " stave", 8, *band.layer, side * across, inside.height,
                     "width of the outer face; long edges bevelled 22.5 degrees");
    }
}

void add_tube(std::vector<Piece>& all, const std::string& part, double inside, double length,
              const BuildUp& wall, const Library& library) {
    for (const Band& band : bands(wall)) {
        const double bore = inside + 2 * band.from;
        if (!(length > 0)) return;
        if (bends(*band.layer, library) && band.from > 0) {
            add_wrap(all, part + " wall", *band.layer, pi * (bore + band.layer->thickness), length,
                     library);
            continue;
        }
        const Stuff stuff = stuff_of(library.materials.at(band.layer->material));
        const bool metal = stuff == Stuff::metal;
        all.push_back({part + (metal ? "" : " wall"), 1, band.layer->material,
                       band.layer->thickness, Piece::Form::tube, bore, length,
                       metal                  ? ""
                       : stuff == Stuff::fill ? "cast or rammed round a former"
                                              : "of rings, staves or shaped bricks"});
    }
}

}  // namespace drawwell
