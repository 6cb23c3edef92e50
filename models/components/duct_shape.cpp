#include "models/components/duct_shape.h"

#include <cmath>

#include "models/laws/friction.h"
#include "models/laws/gas_radiation.h"
#include "models/laws/losses.h"
#include "solver/constants.h"

namespace drawwell {

using constants::pi;

double DuctSection::equivalent_radius() const {
    return perimeter / (2 * pi);
}

double DuctSection::equal_bore() const {
    return std::sqrt(4 / pi * area);
}

DuctSection round_section(double bore) {
    return {.area = pi / 4 * bore * bore,
            .perimeter = pi * bore,
            .hydraulic_diameter = bore,
            .laminar_constant = 64,
            .beam_length = 0.95 * bore};  // long cylinder to its wall: Hottel, from memory
}

DuctSection rectangular_section(double width, double depth) {
    const double area = width * depth, perimeter = 2 * (width + depth);
    return {.area = area,
            .perimeter = perimeter,
            .hydraulic_diameter = 4 * area / perimeter,
            .laminar_constant = rectangle_laminar_constant(width / depth),
            .beam_length = mean_beam_length(area, perimeter)};
}

DuctSection octagonal_section(double across) {
    const double perimeter = 8 * (std::sqrt(2.0) - 1) * across;
    const double area = perimeter * across / 4;
    return {.area = area,
            .perimeter = perimeter,
            .hydraulic_diameter = across,
            .laminar_constant = 4 * 15.412,
            .beam_length = mean_beam_length(area, perimeter)};
}

DuctSection riser_section(const Riser& riser) {
    if (riser.bore > 0)
        return riser.octagonal ? octagonal_section(riser.bore) : round_section(riser.bore);
    return rectangular_section(riser.width, riser.depth);
}

GasCellShape duct_cell(const DuctSection& section, double length, double rise) {
    return {.length = length,
            .rise = rise,
            .area = section.area,
            .hydraulic_diameter = section.hydraulic_diameter,
            .beam_length = section.beam_length,
            .radius = 0,
            .faces = {}};
}

GasPassageShape opening(double area, double loss) {
    const double diameter = std::sqrt(4 * area / pi);
    GasPassageShape shape;
    shape.cells.push_back(duct_cell(round_section(diameter), 1e-3, 0));
    shape.cells.back().area = area;
    shape.friction = false;
    shape.losses.push_back(
        {.area = area, .forward = loss, .reverse = loss, .low_reynolds = low_reynolds_loss});
    return shape;
}

}  // namespace drawwell
