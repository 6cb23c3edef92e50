#pragma once

namespace drawwell {

/// What measures the gas: the bead of a thermocouple, taken as a ball.
struct Bead {
    double diameter = 0;      // [m]; 0: it reads the gas as it is
    double emissivity = 0.8;  // [-] of its surface
    bool shielded = false;    // a shield as hot as the gas hides the walls from it
    double capacity = 4.0e6;  // [J/(m3 K)] by volume; of steels and nickel alloys, from memory
};

/// Film coefficient [W/(m2 K)] on a ball in a stream: Nu = 2 + 0.6 Re^(1/2) Pr^(1/3), Ranz and
/// Marshall 1952, from memory, measured on drops up to Re 200; +-20 %, our choice. `diameter` [m],
/// over zero; `mass_flux` [kg/(m2 s)] of the stream, either sign; `gas` [K], 200 to 1500, taken as
/// air.
double bead_film(double diameter, double mass_flux, double gas);

/// What a bead sees at an instant.
struct BeadPlace {
    double gas = 0;   // [K]
    double wall = 0;  // [K] of the walls that it sees all round
    double film = 0;  // [W/(m2 K)] over zero
};

/// Temperature [K] at which a bead settles: film (gas - bead) = emissivity sigma (bead^4 - wall^4).
/// Between gas and wall; gas if it is shielded.
double settled_bead(const Bead& bead, const BeadPlace& place);

/// Temperature [K] of a bead a time [s] later, from `temperature`, all round it as it is: radiation
/// taken along the chord, so that the bead never passes the temperature at which it settles.
double later_bead(const Bead& bead, const BeadPlace& place, double temperature, double time);

}  // namespace drawwell
