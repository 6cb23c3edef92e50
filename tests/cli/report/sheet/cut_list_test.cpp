#include "cli/report/sheet/cut_list.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "cli/report/section/geometry.h"
#include "solver/constants.h"
#include "tests/cli/report/sheet/sheet_stoves.h"

using namespace drawwell;
using namespace drawwell::tests;
using constants::pi;

namespace {

const Piece* piece(const std::vector<Piece>& all, std::string_view part,
                   std::string_view material) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const Piece& each) {
        return each.part.starts_with(part) && each.material == material;
    });
    return found == all.end() ? nullptr : &*found;
}

}  // namespace

TEST_SUITE("cli/report/sheet/cut_list") {
    TEST_CASE("the allotment kitchen's pieces are those one would mark out by hand") {
        const auto all = cut_list(sample_stove("allotment-kitchen"), sheet_library());
        // Feed 110 x 110, 30 mm of board from the roof at 110 to the mouth at 240.
        const Piece* front = piece(all, "feed wall, front", "vermiculite_board");
        REQUIRE(front);
        CHECK(front->count == 2);
        CHECK(front->a == doctest::Approx(0.110));
        CHECK(front->b == doctest::Approx(0.130));
        const Piece* side = piece(all, "feed wall, sides", "vermiculite_board");
        REQUIRE(side);
        CHECK(side->a == doctest::Approx(0.170));
        // The floor runs from behind the 32 mm wall at the back to the riser's far outside: 55 +
        // 32 + 340 + 88.5.
        const Piece* floor = piece(all, "tunnel floor", "firebrick");
        REQUIRE(floor);
        CHECK(floor->a == doctest::Approx(0.110 + 2 * 0.032));
        CHECK(floor->b == doctest::Approx(0.5155));
        // Skin of 1 mm round 25 mm of board round 125 mm, along its middle.
        const Piece* skin = piece(all, "riser", "stainless_304");
        REQUIRE(skin);
        CHECK(skin->form == Piece::Form::flat);
        CHECK(skin->a == doctest::Approx(pi * 0.176));
        CHECK(skin->b == doctest::Approx(0.725));
        const Piece* plate = piece(all, "cooking plate", "mild_steel");
        REQUIRE(plate);
        CHECK(plate->a == doctest::Approx(0.420));
        CHECK(plate->volume() == doctest::Approx(pi / 4 * 0.42 * 0.42 * 0.005));
        const Piece* ring = piece(all, "floor of the space", "mild_steel");
        REQUIRE(ring);
        CHECK(ring->a == doctest::Approx(0.3976));
        CHECK(ring->b == doctest::Approx(0.177));
    }

    TEST_CASE("eight staves of a wall fill the ring between its two octagons") {
        const Stove stove = sample_stove(
            "workshop", {"riser.section=octagonal", R"(riser.lining=["25 mm aes_board"])"});
        const auto all = cut_list(stove, sheet_library());
        const Piece* stave = piece(all, "riser stave", "aes_board");
        REQUIRE(stave);
        CHECK(stave->count == 8);
        const double side = std::tan(pi / 8);
        CHECK(stave->a == doctest::Approx(side * 0.250));
        // Outer face and inner face, as the bevel leaves it.
        const double ring = 8 * (stave->a + side * 0.200) / 2 * 0.025;
        CHECK(ring == doctest::Approx(2 * side * (0.250 * 0.250 - 0.200 * 0.200)));
    }

    TEST_CASE("boards of a square riser meet at its corners without gap or overlap") {
        const Stove stove = sheet_stove(
            "[riser]\nwidth = \"100 mm\"\ndepth = \"120 mm\"\ntop = \"1 m\"\n"
            "lining = [\"25 mm aes_board\", \"30 mm firebrick\"]\n"
            "[heat]\npower = \"2 kW\"\n");
        double volume = 0;
        for (const Piece& each : cut_list(stove, sheet_library())) volume += each.volume();
        CHECK(volume == doctest::Approx((0.210 * 0.230 - 0.100 * 0.120) * 1.0));
    }

    TEST_CASE("holes are listed with diameter and count") {
        const std::string text =
            bytes_of(std::string(DRAWWELL_SOURCES) + "/data/stoves/allotment-kitchen.toml") +
            "\n[side_air.row]\nholes = 6\ndiameter = \"8 mm\"\n";
        const auto all = holes(sheet_stove(text));
        const auto row = std::find_if(
            all.begin(), all.end(), [](const Hole& hole) { return hole.what == "side air, row"; });
        REQUIRE(row != all.end());
        CHECK(row->count == 6);
        CHECK(row->diameter == doctest::Approx(0.008));
        const auto outlet = std::find_if(
            all.begin(), all.end(), [](const Hole& hole) { return hole.what == "flue outlet"; });
        REQUIRE(outlet != all.end());
        CHECK(outlet->diameter == doctest::Approx(0.125 + 2 * 0.0007));
    }

    TEST_CASE("stock gathers every piece once, and weighs it by its density") {
        for (std::uint32_t i = 0; i < 60; ++i) {
            const auto stove = made_up_stove(i);
            if (!stove) continue;
            const auto pieces = cut_list(*stove, sheet_library());
            double volume = 0, mass = 0, stock_volume = 0, stock_mass = 0;
            for (const Piece& each : pieces) {
                CHECK(each.face() > 0);
                CHECK(each.count > 0);
                volume += each.volume();
                mass += each.volume() * sheet_library().materials.at(each.material).density;
            }
            for (const Stock& stock : stock_for(pieces, sheet_library())) {
                stock_volume += stock.volume;
                stock_mass += stock.mass;
            }
            CHECK(stock_volume == doctest::Approx(volume));
            CHECK(stock_mass == doctest::Approx(mass));
        }
    }

    TEST_CASE("every material is worked in some way, metals as metal") {
        for (const auto& entry : sheet_library().materials) {
            const Material& material = entry.second;
            CAPTURE(material.name);
            CHECK((stuff_of(material) == Stuff::metal) == (material.density > 5000));
        }
        CHECK(stuff_of(sheet_library().materials.at("aes_blanket")) == Stuff::blanket);
        CHECK(stuff_of(sheet_library().materials.at("ceramic_glass")) == Stuff::glass);
        CHECK(stuff_of(sheet_library().materials.at("insulating_firebrick_23")) == Stuff::brick);
    }

    TEST_CASE("rope goes round the barrel's rim, a pane and an oven's doors") {
        const auto all = ropes(sample_stove("kitchen-window"));
        REQUIRE(all.size() == 2);
        CHECK(all[0].length == doctest::Approx(pi * 0.4));
        CHECK(all[1].length == doctest::Approx(0.4));  // 120 x 80
        CHECK(ropes(sheet_stove(bare_stove)).empty());
    }

    TEST_CASE("a ring's face leaves out its hole") {
        const Piece ring{"ring", 2, "mild_steel", 1.2e-3, Piece::Form::ring, 0.4, 0.2, ""};
        CHECK(ring.face() == doctest::Approx(2 * pi / 4 * (0.16 - 0.04)));
    }
}
