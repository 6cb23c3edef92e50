#pragma once

#include <string>
#include <vector>

#include "models/library.h"
#include "models/stove.h"

namespace drawwell {

/// How a material is worked.
enum class Stuff { board, blanket, brick, fill, metal, glass };
Stuff stuff_of(const Material& material);

/// Pieces alike, cut from one material. Sizes [m].
struct Piece {
    std::string part;  // "tunnel side"
    int count = 1;
    std::string material;  // by its name in the library
    double thickness = 0;
    /// Flat: two sides. Round: one diameter (disc), inner and outer (ring).
    enum class Form { flat, disc, ring, tube } form = Form::flat;
    double a = 0, b = 0;  // flat: sides; disc: diameter; ring: outer, inner; tube: inside, length
    std::string note = {};

    /// Of the face it is cut from, all pieces together [m2]; of a tube along its middle.
    double face() const;
    double volume() const { return face() * thickness; }  // [m3]
};

/// What all walls of a stove are cut from. How the parts meet is our choice: the tunnel's sides and
/// the riser stand on its floor, its roof lies on the sides up to the riser.
std::vector<Piece> cut_list(const Stove& stove, const Library& library);

/// Sealing cord. Lengths [m].
struct Rope {
    std::string place;
    double length = 0;
};
std::vector<Rope> ropes(const Stove& stove);

/// An opening cut into a part. Sizes [m].
struct Hole {
    std::string what, where;
    int count = 1;
    double diameter = 0;           // of round ones, else
    double width = 0, height = 0;  // of the others
};
std::vector<Hole> holes(const Stove& stove);

/// One material at one thickness, all pieces together.
struct Stock {
    std::string material;
    double thickness = 0;         // [m]
    double face = 0, volume = 0;  // [m2], [m3]
    double mass = 0;              // [kg]
};
std::vector<Stock> stock_for(const std::vector<Piece>& pieces, const Library& library);

}  // namespace drawwell
