#pragma once

#include <utility>

namespace drawwell {

/// A round flue in one piece, by the method of EN 13384-1 (from memory): overall heat transfer,
/// cooling number, plug flow, column of the mean temperature.
struct StandardFlue {
    double bore = 0, length = 0;      // [m]; upright
    double wall_resistance = 0;       // [m2 K/W] on the inner surface
    double outer_over_inner = 1;      // [-] diameters
    double film_outside = 0;          // [W/(m2 K)]
    double roughness = 0;             // [m]
    double flow = 0;                  // [kg/s]
    double entering = 0, around = 0;  // [K]
    bool air = false;                 // air goes through, else wood gas at air ratio 2
};

struct StandardAnswer {
    double top = 0;         // [K] gas at the top
    double draught = 0;     // [Pa]
    double resistance = 0;  // [Pa] friction, exit and change of velocity
};

/// Its parts. Nusselt number [-] of the film inside, roughness, bore and length in m.
double standard_nusselt(double reynolds, double prandtl, double roughness, double bore,
                        double length);
/// Overall coefficient [W/(m2 K)] on the inner surface, from the two films and what is between.
double standard_overall(double inside, double wall_resistance, double outer_over_inner,
                        double outside);
/// Mean and last temperature [K] of gas that cools by a cooling number [-].
std::pair<double, double> standard_cooling(double cooling, double entering, double around);

/// At 101325 Pa, and without the standard's allowances (both safety factors 1).
StandardAnswer standard_answer(const StandardFlue& flue);

}  // namespace drawwell
