#include "models/components/layered_wall.h"

#include <doctest/doctest.h>

#include <cmath>

#include "solver/errors.h"
#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

using constants::pi;

/// Steady resistance [K/W] of a chain of links from one face to the other.
double resistance(const StoveBuilder& builder) {
    double sum = 0;
    for (const ConductionLink& link : builder.network.links) {
        const auto& solids = builder.network.solids;
        const double a = (*solids[index(link.a)].conductivity)(300);
        const double b = (*solids[index(link.b)].conductivity)(300);
        sum += 1 / (a * link.shape_a) + 1 / (b * link.shape_b) + link.contact;
    }
    return sum;
}

double conductivity_of(const std::string& material) {
    return plain_library().materials.at(material).conductivity(300);
}
double density_of(const std::string& material) {
    return plain_library().materials.at(material).density;
}

// A sheet's node stands in its middle, so half of an outermost sheet lies beyond it.
double counted_from(const BuildUp& layers, std::size_t l) {
    return l == 0 && layers[l].material == "sheet" ? 0.5 : 0;
}
double counted_to(const BuildUp& layers, std::size_t l) {
    return l + 1 == layers.size() && layers[l].material == "sheet" ? 0.5 : 1;
}

const std::vector<BuildUp> build_ups{
    {{"board", 0.025}},
    {{"brick", 0.004}},
    {{"board", 0.025}, {"sheet", 0.001}},
    {{"sheet", 0.001}, {"board", 0.02}, {"sheet", 0.0005}},
    {{"brick", 0.06}, {"board", 0.03}, {"brick", 0.01}},
};

}  // namespace

TEST_SUITE("models/components/layered_wall") {
    TEST_CASE("a flat wall weighs and resists what its layers do together") {
        for (const double refine : {1.0, 2.0})
            for (const BuildUp& layers : build_ups) {
                Stove stove = plain_stove();
                stove.burn.refine = refine;
                Workshop shop(stove);
                const Wall wall =
                    add_wall(shop.builder,
                             {.name = "w", .layers = layers, .face_area = 0.3, .held_face = {}});
                double mass = 0, resists = 0;
                for (std::size_t l = 0; l < layers.size(); ++l) {
                    const Layer& layer = layers[l];
                    mass += density_of(layer.material) * layer.thickness * 0.3;
                    resists += (counted_to(layers, l) - counted_from(layers, l)) * layer.thickness /
                               (conductivity_of(layer.material) * 0.3);
                }
                CHECK(shop.mass("w") == near(mass, 1e-12));
                // A node on a boundary is joined by 1e9 m instead of an infinite shape.
                CHECK(resistance(shop.builder) == near(resists, 1e-6));
                CHECK(wall.back_area == near(0.3, 1e-12));
            }
    }

    TEST_CASE("a round wall weighs and resists what its layers do together") {
        const double length = 0.4, bore_radius = 0.0625;
        for (const BuildUp& layers : build_ups) {
            Workshop shop;
            const Wall wall = add_wall(shop.builder, {.name = "w",
                                                      .layers = layers,
                                                      .face_area = 2 * pi * bore_radius * length,
                                                      .face_radius = bore_radius,
                                                      .held_face = {}});
            double mass = 0, resists = 0, radius = bore_radius;
            for (std::size_t l = 0; l < layers.size(); ++l) {
                const Layer& layer = layers[l];
                const double outer = radius + layer.thickness;
                mass +=
                    density_of(layer.material) * pi * length * (outer * outer - radius * radius);
                const double from = radius + counted_from(layers, l) * layer.thickness,
                             to = radius + counted_to(layers, l) * layer.thickness;
                resists +=
                    std::log(to / from) / (2 * pi * length * conductivity_of(layer.material));
                radius = outer;
            }
            CHECK(shop.mass("w") == near(mass, 1e-12));
            CHECK(resistance(shop.builder) == near(resists, 1e-6));
            CHECK(wall.back_area == near(2 * pi * radius * length, 1e-12));
        }
    }

    TEST_CASE("the node of a face cell stands on the face and holds half a cell") {
        Workshop shop;
        const Wall wall =
            add_wall(shop.builder,
                     {.name = "w", .layers = {{"board", 0.04}}, .face_area = 1, .held_face = {}});
        const auto& solids = shop.builder.network.solids;
        REQUIRE(solids.size() == 5);
        CHECK(index(wall.face) == 0);
        CHECK(index(wall.back) == 4);
        CHECK(solids[0].mass == near(solids[1].mass / 2, 1e-12));
        CHECK(solids[4].mass == near(solids[3].mass / 2, 1e-12));
        // Nodes are a whole cell apart, the outer ones on the faces: four times 10 mm.
        for (const ConductionLink& link : shop.builder.network.links)
            CHECK(1 / link.shape_a + 1 / link.shape_b == near(0.01, 1e-12));
        CHECK(solids[0].name == "w.0.0");
        CHECK(solids[4].name == "w.0.4");
    }

    TEST_CASE("a metal sheet is one cell with both faces") {
        Workshop shop;
        const Wall wall =
            add_wall(shop.builder,
                     {.name = "w", .layers = {{"sheet", 0.002}}, .face_area = 1, .held_face = {}});
        CHECK(shop.builder.network.solids.size() == 1);
        CHECK(wall.face == wall.back);
        CHECK(shop.builder.network.links.empty());
        CHECK(wall.face_emissivity == 0.8);
    }

    TEST_CASE("each face has the emissivity of its own layer") {
        Workshop shop;
        const Wall wall = add_wall(shop.builder, {.name = "w",
                                                  .layers = {{"brick", 0.03}, {"sheet", 0.001}},
                                                  .face_area = 1,
                                                  .held_face = {}});
        CHECK(wall.face_emissivity == 0.85);
        CHECK(wall.back_emissivity == 0.8);
    }

    TEST_CASE("a held face keeps its temperature, and the rest starts as cold as the wall") {
        Workshop shop;
        const Wall wall = add_wall(shop.builder, {.name = "w",
                                                  .layers = {{"board", 0.04}},
                                                  .face_area = 1,
                                                  .temperature = 280,
                                                  .held_face = 900});
        const auto& solids = shop.builder.network.solids;
        CHECK(solids[index(wall.face)].held);
        CHECK(solids[index(wall.face)].initial_temperature == 900);
        CHECK_FALSE(solids[index(wall.back)].held);
        CHECK(solids[index(wall.back)].initial_temperature == 280);
    }

    TEST_CASE("a wall of nothing, or of something unknown, is refused") {
        Workshop shop;
        CHECK_THROWS_AS(add_wall(shop.builder, {.name = "w", .layers = {}, .held_face = {}}),
                        InputError);
        CHECK_THROWS_AS(
            add_wall(shop.builder,
                     {.name = "w", .layers = {{"cheese", 0.1}}, .face_area = 1, .held_face = {}}),
            InputError);
    }

    TEST_CASE("an outer face loses nothing to air as warm as itself, and radiates besides") {
        for (const bool outdoors : {false, true})
            for (const Facing facing : {Facing::upright, Facing::level_pipe, Facing::up}) {
                Workshop shop;
                add_outer_face(shop.builder, {.name = "f",
                                              .solids = {},
                                              .area = {},
                                              .emissivity = 0.8,
                                              .facing = facing,
                                              .length = 0.4,
                                              .outdoors = outdoors});
                const OutsideFace& face = *shop.face("f");
                CHECK(face.outdoors == outdoors);
                const double air = outdoors ? shop.stove.site.outdoor(0) : shop.stove.site.room;
                const std::vector<double> temperature{air, air + 200, air - 20};
                std::vector<double> flux(3);
                face.flux(0, temperature, flux);
                CHECK(flux[0] == doctest::Approx(0));
                const double radiated =
                    0.8 * constants::stefan_boltzmann * (std::pow(air + 200, 4) - std::pow(air, 4));
                // Natural convection from 200 K over the air: 4 to 12 W/(m2 K).
                CHECK(flux[1] > radiated + 4 * 200);
                CHECK(flux[1] < radiated + 12 * 200);
                CHECK(flux[2] < 0);
            }
    }

    TEST_CASE("under a cover heat crosses cover and air film one after the other") {
        constexpr double resistance = 0.5, hot = 600;  // [m2 K/W], [K]
        const auto flux_of = [&](const Workshop& shop, double time, double temperature) {
            const std::vector<double> face{temperature};
            std::vector<double> flux(1);
            shop.face("f")->flux(time, face, flux);
            return flux[0];
        };
        const auto add = [&](Workshop& shop, const Steps& cover) {
            add_outer_face(shop.builder, {.name = "f",
                                          .solids = {},
                                          .area = {},
                                          .emissivity = 0.8,
                                          .facing = Facing::up,
                                          .length = 0.4,
                                          .cover = cover,
                                          .cover_resistance = resistance});
        };
        Workshop bare, covered, half;
        add(bare, Steps(0));
        add(covered, Steps({0, 60}, {0, 1}));
        add(half, Steps(0.5));
        CHECK(flux_of(covered, 59, hot) == near(flux_of(bare, 0, hot), 1e-12));
        const double flux = flux_of(covered, 60, hot);
        // What leaves the cover's top is what crosses it. The search halves 300 K thirty times.
        CHECK(flux_of(bare, 0, hot - flux * resistance) == near(flux, 1e-4));
        // Films of 8 to 12 W/(m2 K), radiation included, near room temperature.
        const double room = covered.stove.site.room;
        CHECK(flux > (hot - room) / (resistance + 1.0 / 8));
        CHECK(flux < (hot - room) / (resistance + 1.0 / 14));
        CHECK(flux_of(half, 0, hot) == near((flux_of(bare, 0, hot) + flux) / 2, 1e-12));
        CHECK(flux_of(covered, 60, room) == doctest::Approx(0));
        CHECK(flux_of(covered, 60, room - 50) < 0);
    }
}
