#include "models/components/films.h"

#include <doctest/doctest.h>

#include "models/components/duct_shape.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

// Gas of about 600 K; round figures, ours.
constexpr FilmGas gas{.temperature = 600,
                      .density = 0.58,
                      .viscosity = 3e-5,
                      .conductivity = 0.046,
                      .prandtl = 0.7,
                      .mass_flow = 0.008,
                      .downward = true};

GasPassageShape annulus() {
    GasPassageShape shape;
    shape.film = Film::annulus;
    shape.film_length = 0.5;
    return shape;
}

}  // namespace

TEST_SUITE("models/components/films") {
    TEST_CASE(
        "in gas that goes down, a cold wall helps and a hot wall hinders, and upward the reverse") {
        const AnnulusFilm film(annulus());
        const GasCellShape cell;
        FilmGas up = gas;
        up.downward = false;
        const double forced = 4;
        const double cold = film.at_wall(forced, cell, gas, 500);
        const double hot = film.at_wall(forced, cell, gas, 700);
        CHECK(cold > forced);
        CHECK(hot < cold);
        // As far from the gas on either side, natural convection is the same: 1 % for rounding.
        CHECK(film.at_wall(forced, cell, up, 700) == near(cold, 1e-2));
        CHECK(film.at_wall(forced, cell, up, 500) == near(hot, 1e-2));
        // Together they are no less than the cube root of the cubes says of each alone.
        const double natural = film.at_wall(1e-9, cell, gas, 500);
        CHECK(natural > 0);
        CHECK(cold ==
              near(std::cbrt(natural * natural * natural + forced * forced * forced), 1e-9));
    }

    TEST_CASE("at the gas's own temperature only the flow counts") {
        const AnnulusFilm film(annulus());
        // What is left is conduction over the height: 0.68 of it, 0.06 W/(m2 K), cubed.
        CHECK(film.at_wall(4, {}, gas, 600) == near(4, 1e-4));
    }

    TEST_CASE("a duct's film is strongest at its entry and never weaker than a long duct's") {
        const DuctSection section = round_section(0.15);
        const GasCellShape cell = duct_cell(section, 0.1, 0);
        DuctFilm film{GasPassageShape{}};
        double last = 1e9;
        for (int i = 0; i < 30; ++i) {
            const double now = film.start(cell, gas);
            CHECK(now <= last);
            CHECK(now >= 3.66 * gas.conductivity / 0.15);
            last = now;
        }
        DuctFilm slow{GasPassageShape{}};
        FilmGas still = gas;
        still.mass_flow = 1e-12;
        CHECK(slow.start(cell, still) == near(3.66 * gas.conductivity / 0.15, 0.5));
    }

    TEST_CASE("cells one after another add up to the mean of the whole duct") {
        const DuctSection section = round_section(0.15);
        const double reynolds = gas.mass_flow * 0.15 / (section.area * gas.viscosity);
        DuctFilm film{GasPassageShape{}};
        double sum = 0;
        for (const double length : {0.05, 0.1, 0.2, 0.25})
            sum += film.start(duct_cell(section, length, 0), gas) * length;
        CHECK(sum / 0.6 ==
              near(duct_nusselt_mean(reynolds, 0.7, 0.6 / 0.15) * gas.conductivity / 0.15, 1e-9));
    }

    TEST_CASE("the jet is even within a bore of its axis and falls as 1/r beyond") {
        GasPassageShape shape;
        shape.film_length = 0.15;
        shape.jet_gap = 0.05;
        shape.jet_area = round_section(0.15).area;
        const JetFilm film(shape);
        const auto at = [&](double radius) {
            GasCellShape cell;
            cell.radius = radius;
            return film.start(cell, gas);
        };
        CHECK(at(0.01) == at(0.14));
        CHECK(at(0.3) == near(at(0.1) / 2, 1e-9));
        const double reynolds = 0.008 * 0.15 / (shape.jet_area * gas.viscosity);
        CHECK(at(0.01) == near(stagnation_nusselt(reynolds, 0.7, 1.0 / 3) * 0.046 / 0.15, 1e-9));
    }
}
