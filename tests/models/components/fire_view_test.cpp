#include "models/components/fire_view.h"

#include <doctest/doctest.h>

#include <cmath>
#include <set>

#include "models/components/parts.h"
#include "models/laws/enclosure.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

constexpr double pi = constants::pi;

double share_of(const FireView& view, SolidId solid) {
    double sum = 0;
    for (const auto& [seen, share] : view.faces())
        if (seen == index(solid)) sum += share;
    return sum;
}

double share_of(const FireView& view, const SolidRow& row) {
    double sum = 0;
    for (const SolidId solid : row.solids) sum += share_of(view, solid);
    return sum;
}

double all_of(const FireView& view) {
    double sum = view.open();
    for (const auto& [solid, share] : view.faces()) sum += share;
    return sum;
}

/// Three cells of 0.1, 0.2 and 0.1 m over a foot at 0.05 m.
SolidRow bore_wall() {
    return {.solids = {SolidId{3}, SolidId{4}, SolidId{5}}, .position = {0.1, 0.25, 0.4}};
}

/// View factor from a stretch of bore to the disc at its foot, summed up point by point.
double wall_to_disc(double radius, double from, double to) {
    constexpr int rings = 60, turns = 90, levels = 60;
    double sum = 0;
    for (int k = 0; k < levels; ++k)
        for (int i = 0; i < rings; ++i)
            for (int j = 0; j < turns; ++j) {
                const double z = from + (to - from) * (k + 0.5) / levels;
                const double r = radius * (i + 0.5) / rings;
                const double angle = 2 * pi * (j + 0.5) / turns;
                const double across = radius - r * std::cos(angle);  // along the wall's normal
                const double aside = r * std::sin(angle);
                const double square = across * across + aside * aside + z * z;
                sum += across * z / (pi * square * square) * r * (radius / rings) *
                       (2 * pi / turns) / levels;
            }
    return sum;
}

struct Built : Workshop {
    explicit Built(const Stove& the_stove) : Workshop(the_stove) {
        add_feed(builder);
        add_tunnel(builder);
        add_riser(builder);
        add_plate(builder);
    }
};

}  // namespace

TEST_SUITE("models/components/fire_view") {
    TEST_CASE("in a bore each cell fills the disc at its near end less that at its far end") {
        const FireView view = bore_view(bore_wall(), 0.05, 0.0625);
        const auto disc = [](double distance) { return coaxial_discs(0.0625, 0.0625, distance); };
        CHECK(share_of(view, SolidId{3}) == near(1 - disc(0.1), 1e-9));
        CHECK(share_of(view, SolidId{4}) == near(disc(0.1) - disc(0.3), 1e-9));
        CHECK(share_of(view, SolidId{5}) == near(disc(0.3) - disc(0.4), 1e-9));
        CHECK(view.open() == near(disc(0.4), 1e-9));
    }

    TEST_CASE("fire and bore see each other alike") {
        const double radius = 0.0625;
        const FireView view = bore_view(bore_wall(), 0.05, radius);
        const double disc = pi * radius * radius;
        // The sum over points is good to half a percent away from the corner.
        CHECK(disc * share_of(view, SolidId{4}) ==
              near(2 * pi * radius * 0.2 * wall_to_disc(radius, 0.1, 0.3), 5e-3));
        CHECK(disc * share_of(view, SolidId{5}) ==
              near(2 * pi * radius * 0.1 * wall_to_disc(radius, 0.3, 0.4), 5e-3));
    }

    TEST_CASE("what leaves the bore meets the plate's rings within the view, and no others") {
        const double radius = 0.0625, length = 0.4;
        const RingsAbove plate{
            .rings = {SolidId{10}, SolidId{11}, SolidId{12}, SolidId{13}, SolidId{14}},
            .edge = {0, 0.03, 0.0625, 0.07, 0.09, 0.2},
            .distance = 0.045};
        FireView view = bore_view(bore_wall(), 0.05, radius);
        add_rings_above(view, plate, length, radius);
        CHECK(view.open() == doctest::Approx(0).epsilon(1e-9));
        CHECK(all_of(view) == near(1, 1e-9));
        CHECK(share_of(view, SolidId{10}) == near(coaxial_discs(radius, 0.03, 0.445), 1e-9));
        // A ray from the rim of the fire past the opposite rim of the bore gets to 77 mm.
        CHECK(share_of(view, SolidId{12}) > 0);
        CHECK(share_of(view, SolidId{13}) > 0);
        CHECK(share_of(view, SolidId{14}) == 0);
        // Ring and fire see each other alike: the ring's factor by the same discs from above.
        const double ring = pi * (radius * radius - 0.03 * 0.03);
        const double down = (radius * radius * coaxial_discs(radius, radius, 0.445) -
                             0.03 * 0.03 * coaxial_discs(0.03, radius, 0.445)) *
                            pi / ring;
        CHECK(pi * radius * radius * share_of(view, SolidId{11}) == near(ring * down, 1e-9));

        // A plate smaller than the view takes what it can, and the rest is open.
        FireView past = bore_view(bore_wall(), 0.05, radius);
        add_rings_above(past, {.rings = {SolidId{10}}, .edge = {0, 0.03}, .distance = 0.045},
                        length, radius);
        CHECK(
            past.open() ==
            near(coaxial_discs(radius, radius, length) - coaxial_discs(radius, 0.03, 0.445), 1e-9));
    }

    TEST_CASE("a fire at the riser's foot sees most of its first cells, and the plate if any") {
        Built covered(plain_stove());
        const FireView view = riser_view(covered.builder);
        CHECK(all_of(view) == near(1, 1e-9));
        CHECK(view.open() < 1e-9);
        const double mouth = coaxial_discs(0.0625, 0.0625, 0.725 - 0.055);
        CHECK(share_of(view, covered.builder.layout.plate) == near(mouth, 1e-6));
        CHECK(share_of(view, covered.builder.layout.riser_inside) == near(1 - mouth, 1e-9));
        CHECK(share_of(view, covered.builder.layout.riser_inside.solids.front()) > 0.5);

        Stove bare = plain_stove();
        bare.barrel.reset();
        bare.plate.reset();
        Built open(bare);
        CHECK(riser_view(open.builder).open() == near(mouth, 1e-9));
        // A slot of the same area sees its walls as the bore does.
        bare.riser.width = bare.riser.depth = std::sqrt(pi) * bare.riser.bore / 2;
        bare.riser.bore = 0;
        Built slot(bare);
        CHECK(riser_view(slot.builder).open() == near(mouth, 1e-9));
    }

    TEST_CASE("the hearth's fire sees walls beside it whole, and the rest by rectangles") {
        Built built(plain_stove());
        const Layout& layout = built.builder.layout;
        const FireView view = hearth_view(built.builder);
        CHECK(all_of(view) == near(1, 1e-12));
        // A box 125 wide, 110 high and 110 mm deep.
        const double box = 2 * (0.125 * 0.11 + 0.11 * 0.11 + 0.125 * 0.11);
        CHECK(share_of(view, layout.hearth_wall) == near((0.125 * 0.11 + 0.11 * 0.11) / box, 1e-9));
        const double mouth = parallel_rectangles(0.125, 0.11, 0.24 - 0.11);
        CHECK(view.open() == near(0.125 * 0.11 / box * mouth, 1e-9));
        CHECK(share_of(view, layout.feed_wall) == near(0.125 * 0.11 / box * (1 - mouth), 1e-9));
        // Nearer the fire, more of it: the feed's lowest cell, the tunnel's second over its last.
        CHECK(share_of(view, layout.feed_wall.solids[2]) >
              share_of(view, layout.feed_wall.solids[0]));
        CHECK(share_of(view, layout.tunnel_wall.solids[1]) >
              2 * share_of(view, layout.tunnel_wall.solids[3]));
        // Down the tunnel: the port is 90 of 125 mm wide.
        const double end = 0.125 * 0.11 / box * parallel_rectangles(0.125, 0.11, 0.34 - 0.055);
        CHECK(share_of(view, layout.riser_inside) == near(end * 90 / 125, 1e-9));
        const double roof =
            0.125 * 0.11 / box * perpendicular_rectangles(0.125, 0.11, 0.34 - 0.055);
        CHECK(share_of(view, layout.tunnel_roof) == near(roof, 1e-9));
    }

    TEST_CASE("a ledge hides what lies ahead by the share of the firebox that it closes") {
        Stove stove = plain_stove();
        stove.tunnel->firebox_length = 0.17;
        stove.tunnel->firebox_width = 0.15;
        stove.tunnel->firebox_height = 0.14;
        Built built(stove);
        const FireView view = hearth_view(built.builder);
        CHECK(all_of(view) == near(1, 1e-12));
        // A box 150 wide, 140 high and 110 mm deep, its end closed but for 125 by 110 mm.
        const double box = 2 * (0.15 * 0.14 + 0.11 * 0.14 + 0.15 * 0.11);
        const double open = 0.125 * 0.11 / (0.15 * 0.14);
        const double end =
            0.125 * 0.11 / box * parallel_rectangles(0.15, 0.14, 0.34 - 0.055) * 90 / 125;
        CHECK(share_of(view, built.builder.layout.riser_inside) == near(end, 1e-9));
        const auto& walls = built.builder.layout.tunnel_wall.solids;
        CHECK(share_of(view, walls[1]) > (1 - open) * 0.15 * 0.14 / box);
        CHECK(share_of(view, walls[2]) < (1 - open) * 0.15 * 0.14 / box);
    }

    TEST_CASE("how finely the stove is divided does not change what the hearth's fire sees") {
        Stove fine = plain_stove();
        fine.burn.refine = 3;
        Built usual(plain_stove()), finer(fine);
        const FireView a = hearth_view(usual.builder), b = hearth_view(finer.builder);
        const Layout &in_a = usual.builder.layout, &in_b = finer.builder.layout;
        CHECK(a.open() == near(b.open(), 1e-9));
        for (const auto row : {&Layout::hearth_wall, &Layout::feed_wall, &Layout::tunnel_wall,
                               &Layout::tunnel_roof, &Layout::riser_inside})
            CHECK(share_of(a, in_a.*row) == near(share_of(b, in_b.*row), 1e-9));
    }

    TEST_CASE("what is missing round the hearth leaves the view whole") {
        Stove narrow = plain_stove();
        narrow.feed->width = 0.1;
        narrow.feed->foot_lining.clear();
        Built beside(narrow);
        const FireView roofed = hearth_view(beside.builder);
        CHECK(all_of(roofed) == near(1, 1e-12));
        Built usual(plain_stove());
        CHECK(share_of(roofed, beside.builder.layout.tunnel_roof) >
              share_of(hearth_view(usual.builder), usual.builder.layout.tunnel_roof));

        Stove mouth = plain_stove();
        mouth.feed.reset();
        Built open(mouth);
        const FireView half = hearth_view(open.builder);
        CHECK(all_of(half) == near(1, 1e-12));
        // The back of a box 125 wide, 110 high and 125 mm deep looks into the room.
        CHECK(half.open() == near(0.125 * 0.11 / (2 * (2 * 0.125 * 0.11 + 0.125 * 0.125)), 1e-9));

        Stove stub = plain_stove();
        stub.tunnel->length = 0.04;  // ends before the feed does
        Built shorter(stub);
        CHECK(all_of(hearth_view(shorter.builder)) == near(1, 1e-12));
    }
}
