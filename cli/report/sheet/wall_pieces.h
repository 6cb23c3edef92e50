#pragma once

#include <string>
#include <vector>

#include "cli/report/sheet/cut_list.h"

namespace drawwell {

/// An upright duct's inside [m].
struct DuctInside {
    std::string part;
    double width = 0, depth = 0, height = 0;
};

void add_flat(std::vector<Piece>& all, const std::string& part, int count, const Layer& layer,
              double a, double b, const std::string& note = {});

/// Four walls, layer by layer; the sides cover the ends of front and back. What bends goes round in
/// one piece.
void add_box(std::vector<Piece>& all, const DuctInside& inside, const BuildUp& wall,
             const Library& library);

/// Eight staves, layer by layer, `width` from flat to flat; what bends goes round in one piece.
void add_octagon(std::vector<Piece>& all, const DuctInside& inside, const BuildUp& wall,
                 const Library& library);

/// A round wall, layer by layer: what bends is rolled out flat, the rest stays a tube.
void add_tube(std::vector<Piece>& all, const std::string& part, double inside, double length,
              const BuildUp& wall, const Library& library);

}  // namespace drawwell
