#include <doctest/doctest.h>

#include <boost/math/special_functions/bessel.hpp>
#include <cmath>

#include "solver/constants.h"
#include "validation/compare.h"
#include "validation/plate_rings.h"

using namespace drawwell;

namespace {

using boost::math::cyl_bessel_i;
using boost::math::cyl_bessel_k;

/// A fin of uniform film on a hot pipe, its rim not cooled.
struct Fin {
    double inner, outer;             // [m] radii
    double thickness, conductivity;  // [m], [W/(m K)]
    double film;                     // [W/(m2 K)] of both faces together

    double m() const { return std::sqrt(film / (conductivity * thickness)); }
    double bottom() const {
        return cyl_bessel_k(1, m() * outer) * cyl_bessel_i(0, m() * inner) +
               cyl_bessel_i(1, m() * outer) * cyl_bessel_k(0, m() * inner);
    }
    double share_at(double r) const {  // [-] of the pipe's excess
        return (cyl_bessel_k(1, m() * outer) * cyl_bessel_i(0, m() * r) +
                cyl_bessel_i(1, m() * outer) * cyl_bessel_k(0, m() * r)) /
               bottom();
    }
    double efficiency() const {
        return 2 * inner / (m() * (outer * outer - inner * inner)) *
               (cyl_bessel_k(1, m() * inner) * cyl_bessel_i(1, m() * outer) -
                cyl_bessel_i(1, m() * inner) * cyl_bessel_k(1, m() * outer)) /
               bottom();
    }
};

constexpr double room = 300, base = 500;  // [K]

struct Seen {
    double efficiency = 0, outermost = 0;  // [-], [-] worst node against the closed form
    std::size_t rings = 0;
};

/// The stove's plate as such a fin: the rings over the bore held, the others cooled.
Seen computed(const Fin& fin, double refine) {
    LaidPlate laid = lay_plate({.bore_radius = fin.inner,
                                .skin = (fin.outer - fin.inner) / 6,
                                .radius = fin.outer,
                                .thickness = fin.thickness,
                                .conductivity = fin.conductivity,
                                .refine = refine},
                               room);
    laid.hold(laid.over_bore - 1, base);
    for (std::size_t i = laid.over_bore; i < laid.rings.size(); ++i)
        laid.bench.add_face(laid.rings[i], laid.area(i),
                            [film = fin.film](double t) { return film * (t - room); });
    const auto at = laid.bench.run({36000}, 1e-6).back();
    double lost = 0, could = 0;
    Seen seen;
    for (std::size_t i = laid.over_bore; i < laid.rings.size(); ++i) {
        const double share = (at[i] - room) / (base - room);
        lost += laid.area(i) * share;
        could += laid.area(i);
        seen.outermost = std::max(seen.outermost, std::abs(share - fin.share_at(laid.node[i])));
        ++seen.rings;
    }
    seen.efficiency = lost / could;
    return seen;
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("the plate's rings conduct and cool as an annular fin does") {
        const Fin book{0.025, 0.048, 0.006, 186, 100};  // the rim's half thickness added
        compare({"analytic/annular_fin", "closed form against 0.9786 [-]",
                 std::abs(book.efficiency() - 0.9786), 1e-4});
        compare({"analytic/annular_fin", "six rings, book's fin, efficiency, share off [-]",
                 share_off(computed(book, 1).efficiency, book.efficiency()), 1e-3});
        const Fin plate{0.0625, 0.2, 0.005, 40, 30};
        const Seen usual = computed(plate, 1), fine = computed(plate, 4);
        REQUIRE(usual.rings == 6);
        REQUIRE(fine.rings == 24);
        compare({"analytic/annular_fin", "six rings, steel plate, efficiency, share off [-]",
                 share_off(usual.efficiency, plate.efficiency()), 0.02});
        compare({"analytic/annular_fin", "six rings, steel plate, worst node [-]", usual.outermost,
                 0.02});
        compare({"analytic/annular_fin", "24 rings, steel plate, worst node [-]", fine.outermost,
                 2e-3});
        compare({"analytic/annular_fin", "order from 12 to 24 rings, difference from 2 [-]",
                 std::abs(std::log2(computed(plate, 2).outermost / fine.outermost) - 2), 0.3});
    }
}
