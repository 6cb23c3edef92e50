#include "cli/read/read_stove.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "solver/constants.h"
#include "tests/cli/read/small_stove.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// The only problem of a text; a mismatch shows all of them.
std::string problem_of(std::string_view text) {
    std::string all;
    for (const std::string& line : problems_of(text)) all += (all.empty() ? "" : " | ") + line;
    return all;
}

}  // namespace

TEST_SUITE("cli/read/read_stove") {
    TEST_CASE("a file with the main dimensions alone is a whole stove") {
        CHECK(std::count(small_stove.begin(), small_stove.end(), '\n') < 40);
        const Stove stove = read(small_stove);
        CHECK(stove.title == "small");
        CHECK(stove.feed->width == doctest::Approx(0.9 * 0.125));
        CHECK(stove.tunnel->width == stove.feed->width);
        CHECK(stove.port->width < stove.tunnel->width);
        CHECK(stove.plate->underside > stove.riser.top);
        CHECK(stove.riser.lining.size() == 2);
        CHECK(stove.flue.sections.size() == 2);
        CHECK(stove.flue.sections[0].name == "level");
        CHECK(stove.flue.sections[0].rise == 0);
        CHECK(stove.flue.sections[1].rise == doctest::Approx(2.2));
        CHECK(stove.flue.sections[1].entry_angle == doctest::Approx(constants::pi / 2));
        CHECK(stove.loads.at(0).times.size() == 2);
        CHECK(stove.loads.at(0).mass ==
              doctest::Approx(690 * 3 * 0.035 * 0.035 * 0.3));  // ash, data/woods.toml
        CHECK(stove.kindling->mass == doctest::Approx(0.307).epsilon(0.01));
        CHECK(stove.burn.duration == 3 * 3600);
    }

    TEST_CASE("a bare duct over a heat source is a stove") {
        const Stove round = read(
            "[riser]\nbore='60 mm'\ntop='2 m'\n[heat]\npower='500 W'\n[port]\nwidth='30 "
            "mm'\nheight='30 mm'\n");
        CHECK_FALSE(round.feed);
        CHECK_FALSE(round.barrel);
        CHECK(round.riser.foot == 0);
        CHECK((*round.heat_source)(100) == 500);
        const Stove slot =
            read("[riser]\nwidth='1.5 m'\ndepth='0.3 m'\ntop='2 m'\nwall_temperature='60 °C'\n");
        CHECK(slot.riser.bore == 0);
        CHECK(*slot.riser.wall_temperature == doctest::Approx(333.15));
        CHECK(slot.loads.empty());
        CHECK_FALSE(slot.kindling);
    }

    TEST_CASE("parts that are only named take the defaults of the trade") {
        const Stove stove = read(with("[flue.level]", "[bypass]\n[flue.level]") +
                                 "[side_air.duct]\nholes = 4\ndiameter = '9 mm'\n");
        CHECK(stove.bypass->bore == stove.riser.bore);
        CHECK(stove.bypass->length == stove.barrel->height);
        CHECK(stove.plate->cover_resistance == 0.5);
        CHECK_FALSE(stove.side_air.at(0).outdoors);
        CHECK(stove.side_air.at(0).duct_length == 0);
        CHECK(stove.loads.at(0).standing == Standing::apart);
        CHECK(stove.burn.sustained_every == 900);
        CHECK_FALSE(stove.burn.lit_at);
        CHECK(stove.leaks.empty());
        const Stove ducted = read(small_stove, {"side_air.a.holes=4", "side_air.a.diameter=9 mm",
                                                "side_air.a.from=outdoors", "side_air.a.duct=3 m"});
        CHECK(ducted.side_air.at(0).outdoors);
        CHECK(ducted.side_air.at(0).duct_length == 3);
    }

    TEST_CASE("tables in time are read row by row") {
        const Stove stove = read(
            "[riser]\nbore='60 mm'\ntop='2 m'\n[heat]\npower=[['0 min','1 kW'],['10 min','3 "
            "kW']]\n");
        CHECK((*stove.heat_source)(300) == doctest::Approx(2000));
    }

    TEST_CASE("a table in time that is no table is refused, and only for that") {
        const std::string duct = "[riser]\nbore='60 mm'\ntop='2 m'\n[heat]\npower=";
        CHECK(problem_of(duct + "[]\n") == "s.toml:5:1: heat.power = []: the list is empty");
        CHECK(problem_of(duct + "[['0 s','1 kW'],[3]]\n").find("a list of rows") !=
              std::string::npos);
        CHECK(problem_of(duct + "[['5 s','1 kW'],['0 s','1 kW']]\n")
                  .find("the times must increase") != std::string::npos);
        CHECK(problem_of(duct + "'3 mm'\n").find("mm is a unit of length") != std::string::npos);
    }

    TEST_CASE("an unknown key is named with its place and the nearest spelling") {
        CHECK(problem_of(with("mouth = ", "widht = \"110 mm\"\nmouth = ")) ==
              "s.toml:3:1: feed.widht = \"110 mm\": unknown key; did you mean \"feed.width\"?");
        CHECK(problem_of(with("[plate]", "[plate]\n  thicknes = \"5 mm\"")) ==
              "s.toml:13:3: plate.thicknes = \"5 mm\": unknown key; did you mean "
              "\"plate.thickness\"?");
        CHECK(problem_of(with("length = \"2.2 m\"", "length = \"2.2 m\"\nrice = \"1 m\"")) ==
              "s.toml:18:1: flue.stack.rice = \"1 m\": unknown key; did you mean "
              "\"flue.stack.rise\"?");
    }

    TEST_CASE("an unknown table is named once, with the nearest one") {
        CHECK(problem_of(with("[plate]", "[plate]\n[kindlin]\nmass = \"1 kg\"\nplce = 3")) ==
              "s.toml:13:2: [kindlin]: unknown table; did you mean \"[kindling]\"?");
        CHECK(problem_of(with("[plate]", "[plate]\n[plate.edge]\na = 1")) ==
              "s.toml:13:8: [plate.edge]: unknown table; [plate] has no tables inside");
        CHECK(problem_of(with("[port]", "[[side_air]]\nwidth = \"1 mm\""))
                  .find("write [side_air.NAME]") != std::string::npos);
        CHECK(problem_of(with("[flue.level]", "[flue.\"my level\"]"))
                  .find("a name is made of letters") != std::string::npos);
    }

    TEST_CASE("a wrong, missing or foreign unit is refused with the units there are") {
        CHECK(problem_of(with("\"240 mm\"", "\"240 kg\"")) ==
              "s.toml:3:1: feed.mouth = \"240 kg\": kg is a unit of mass; a length is in mm, cm, "
              "m, in, ft");
        CHECK(problem_of(with("\"240 mm\"", "240")) ==
              "s.toml:3:1: feed.mouth = 240: the unit is missing: write a text such as \"240 mm\" "
              "(mm, cm, "
              "m, in, ft)");
        CHECK(problem_of(with("\"240 mm\"", "\"240\"")).find("the unit is missing") !=
              std::string::npos);
        CHECK(problem_of(with("\"240 mm\"", "true")).find("here stands one length") !=
              std::string::npos);
    }

    TEST_CASE("numbers that are not finite are refused wherever they stand") {
        for (const char* value : {"nan", "inf", "-inf", "\"nan mm\"", "\"inf m\""}) {
            INFO(value);
            CHECK(problem_of(with("\"240 mm\"", value)).find("must be finite") !=
                  std::string::npos);
        }
        CHECK(problem_of(std::string(small_stove) + "[burn]\nrefine = nan\n") ==
              "s.toml:21:1: burn.refine = nan: the number must be finite");
    }

    TEST_CASE("values outside their range, choices and names nobody knows are refused") {
        CHECK(problem_of(with("\"620 mm\"", "\"-20 mm\"")) ==
              "s.toml:11:1: barrel.height = \"-20 mm\": it can't be negative; 50 mm to 10 m is "
              "allowed");
        CHECK(problem_of(with("\"level\"", "\"levl\"")) ==
              "s.toml:15:1: flue.level.direction = \"levl\": unknown name \"levl\"; did you mean "
              "\"level\"?");
        CHECK(
            problem_of(with("[plate]", "[plate]\nmaterial = \"mild_stel\"")) ==
            "s.toml:13:1: plate.material = \"mild_stel\": unknown name \"mild_stel\"; did you mean "
            "\"mild_steel\"?");
        CHECK(problem_of(std::string(small_stove) + "kind = \"asch\"")
                  .find("did you mean \"ash\"?") != std::string::npos);
        CHECK(problem_of(std::string(small_stove) + "[site]\naltitude = \"90 km\"")
                  .find("unknown unit") != std::string::npos);
        CHECK(
            problem_of(std::string(small_stove) + "[site]\naltitude = \"9 000 m\"").find("unit") !=
            std::string::npos);
        CHECK(problem_of(std::string(small_stove) + "[site]\naltitude = \"9000 m\"")
                  .find("-450 m to 5500 m is allowed") != std::string::npos);
    }

    TEST_CASE("a layer that is wrong is shown at its own place in the list") {
        CHECK(problem_of(with("[barrel]",
                              "lining = [\"25 mm aes_board\", \"1 mm stainles_304\"]\n[barrel]")) ==
              "s.toml:9:30: riser.lining = [\"25 mm aes_board\", \"1 mm stainles_304\"]: \"1 mm "
              "stainles_304\": unknown name \"stainles_304\"; did you mean \"stainless_304\"?");
    }

    TEST_CASE("a required key that is missing is asked for at its table") {
        CHECK(
            problem_of(with("height = \"620 mm\"\n", "")) ==
            "s.toml:9:2: barrel.height is missing: height of the barrel; it hangs from the plate's "
            "underside");
    }

    TEST_CASE("an error of syntax comes alone, with its place") {
        const auto lines = problems_of("[feed]\nmouth = \"240 mm\"\nwidth = = 3\nnonsense = 4\n");
        REQUIRE(lines.size() == 1);
        CHECK(lines[0].find("s.toml:3:9: this is not TOML: ") == 0);
    }

    TEST_CASE("all that is wrong is told in one go, down the file") {
        std::string text = with("\"240 mm\"", "\"240 kg\"");
        text.replace(text.find("\"2.2 m\""), 7, "nan");
        text.replace(text.find("height = \"620"), 6, "heigth");
        text += "moisture = \"16 mm\"\n";
        const auto lines = problems_of(text);
        REQUIRE(lines.size() == 5);
        CHECK(lines[0].find("s.toml:3:1: feed.mouth") == 0);
        CHECK(lines[1].find("s.toml:9:2: barrel.height is missing") == 0);
        CHECK(lines[2].find("s.toml:11:1: barrel.heigth") == 0);
        CHECK(lines[3].find("s.toml:17:1: flue.stack.length") == 0);
        CHECK(lines[4].find("s.toml:20:1: load.main.moisture") == 0);
    }
}
