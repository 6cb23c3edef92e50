#include "cli/read/stove_checks.h"

#include <doctest/doctest.h>

#include "tests/cli/read/small_stove.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

/// Whether exactly one problem is found, beginning and containing as said.
bool only_problem(const std::vector<std::string>& lines, std::string_view begins,
                  std::string_view contains) {
    std::string all;
    for (const std::string& line : lines) all += line + "\n";
    INFO(all);
    CHECK(lines.size() == 1);
    CHECK(all.find(contains) != std::string::npos);
    return !lines.empty() && lines[0].find(begins) == 0;
}

bool refused(std::string_view line, std::string_view instead, std::string_view begins,
             std::string_view contains) {
    return only_problem(problems_of(with(line, instead)), begins, contains);
}

}  // namespace

TEST_SUITE("cli/read/stove_checks") {
    TEST_CASE("a riser through the plate is refused") {
        CHECK(refused(
            "[plate]", "[plate]\nunderside = \"700 mm\"", "s.toml:8:1: riser.top = \"725 mm\": ",
            "the riser goes through the plate: its top is at 725 mm, the plate's underside at "
            "700 mm"));
        CHECK(refused("[plate]", "[plate]\nunderside = \"725 mm\"",
                      "s.toml:8:1: ", "through the plate"));
    }

    TEST_CASE("a barrel narrower than the riser's outside is refused") {
        // 125 mm bore and 26 mm of wall on each side are 177 mm.
        CHECK(refused("\"400 mm\"", "\"175 mm\"", "s.toml:10:1: barrel.diameter = \"175 mm\": ",
                      "narrower inside (172.6 mm) than the riser outside (177 mm)"));
    }

    TEST_CASE("a barrel that ends above the riser, and a plate that leaves it open, are refused") {
        CHECK(only_problem(problems_of(small_stove, {"plate.underside=1500mm"}),
                           "--set plate.underside=1500mm: ", "above the riser's top"));
        CHECK(refused("[plate]", "[plate]\ndiameter = \"300 mm\"", "s.toml:13:1: plate.diameter",
                      "does not cover the barrel"));
    }

    TEST_CASE("a hole in the plate needs a pot over it or a cover in it, and a plate round it") {
        const std::string hole = "[plate]\nhole = \"160 mm\"";
        CHECK(refused("[plate]", hole, "s.toml:13:1: plate.hole = \"160 mm\": ",
                      "the hole is open to fire and flue gas"));
        CHECK(problems_of(with("[plate]", hole + "\n[pot.a]")).empty());
        CHECK(problems_of(with("[plate]", hole + "\nhole_cover = \"5 mm\"")).empty());
        CHECK(refused("[plate]", hole + "\n[pot.a]\ndiameter = \"150 mm\"",
                      "s.toml:13:1: plate.hole", "covers it all round"));
        CHECK(refused("[plate]", hole + "\n[pot.a]\ntaken_off = \"9 min\"",
                      "s.toml:15:1: pot.a.taken_off", "hole is open to the fire"));
        CHECK(refused("[plate]", "[plate]\nhole_cover = \"5 mm\"", "s.toml:13:1: plate.hole_cover",
                      "no hole to cover"));
        CHECK(refused("[plate]", "[plate]\nhole_cover = \"5 mm\"\nhole = \"398 mm\"",
                      "s.toml:14:1: plate.hole", "as wide as the barrel"));
    }

    TEST_CASE("what overlaps on the plate, or comes and goes out of turn, is refused") {
        CHECK(refused("[plate]", "[plate]\n[pot.a]\n[griddle.b]\ndiameter = \"150 mm\"",
                      "s.toml:15:1: griddle.b.diameter", "it overlaps pot.a"));
        CHECK(refused("[plate]",
                      "[plate]\n[pot.a]\nput_on = [\"9 min\", \"20 min\"]\ntaken_off = \"30 min\"",
                      "s.toml:15:1: pot.a.taken_off", "in turns"));
    }

    TEST_CASE("a barrel without a plate and a plate without a barrel are refused") {
        CHECK(refused("[plate]\n", "", "s.toml:9:2: [barrel]: ", "hangs from a plate"));
        CHECK(refused("[barrel]\ndiameter = \"400 mm\"\nheight = \"620 mm\"\n", "",
                      "s.toml:9:2: [plate]: ", "needs a barrel"));
    }

    TEST_CASE("a feed that opens below the tunnel's roof, or stands in the riser, is refused") {
        CHECK(refused("\"240 mm\"", "\"100 mm\"", "s.toml:3:1: feed.mouth",
                      "not above the tunnel's roof"));
        CHECK(refused("[tunnel]", "[tunnel]\nlength = \"100 mm\"", "s.toml:5:1: tunnel.length",
                      "stand in each other"));
    }

    TEST_CASE("a firebox without a ledge, smaller than the tunnel, or full of ash is refused") {
        const auto tunnel = [](const std::string& keys) { return "[tunnel]\n" + keys; };
        CHECK(refused("[tunnel]", tunnel("firebox_width = \"150 mm\""),
                      "s.toml:5:1: tunnel.firebox_width", "say tunnel.firebox_length"));
        CHECK(refused("[tunnel]", tunnel("firebox_length = \"900 mm\""),
                      "s.toml:5:1: tunnel.firebox_length", "takes the whole tunnel"));
        CHECK(refused("[tunnel]", tunnel("firebox_length = \"150 mm\"\nfirebox_width = \"90 mm\""),
                      "s.toml:6:1: tunnel.firebox_width", "smaller than the tunnel"));
        CHECK(refused("[tunnel]", tunnel("ash = \"80 mm\""), "s.toml:5:1: tunnel.ash",
                      "clean it before lighting"));
    }

    TEST_CASE("a bypass that joins no section of the flue is refused") {
        CHECK(refused("[riser]", "[bypass]\ninto = \"stak\"\n[riser]", "s.toml:7:1: bypass.into",
                      "did you mean \"stack\""));
    }

    TEST_CASE("a port larger than what it throttles is refused") {
        CHECK(refused("[port]", "[port]\nwidth = \"150 mm\"", "s.toml:6:1: port.width",
                      "wider than the tunnel"));
        CHECK(refused("[port]", "[port]\nheight = \"150 mm\"", "s.toml:6:1: port.height",
                      "higher than the tunnel"));
        CHECK(only_problem(
            problems_of("[riser]\nbore='60 mm'\ntop='2 m'\n[heat]\npower='1 kW'\n[port]\n"
                        "width='60 mm'\nheight='60 mm'\n"),
            "s.toml:7:1: port.width", "larger than the riser's inner section"));
    }

    TEST_CASE("a riser without a section, without height, or lower than the tunnel is refused") {
        CHECK(refused("bore = \"125 mm\"\n", "",
                      "s.toml:6:2: riser.bore is missing: ", "or riser.width and riser.depth"));
        CHECK(only_problem(
            problems_of("[riser]\ntop='2 m'\nwidth='9 mm'\nwall_temperature='60 °C'\n"),
            "s.toml:1:2: riser.depth is missing", "both"));
        CHECK(only_problem(problems_of("[riser]\nbore='60 mm'\ntop='2 m'\nfoot='2.5 m'\n"
                                       "wall_temperature='60 °C'\n"),
                           "s.toml:3:1: riser.top", "not above its foot"));
    }

    TEST_CASE("a flue outlet outside the barrel and an impossible rise are refused") {
        CHECK(refused("[flue.level]", "[flue]\noutlet = \"50 mm\"\n[flue.level]",
                      "s.toml:14:1: flue.outlet", "reaches outside the barrel"));
        CHECK(refused("[flue.level]", "[flue]\noutlet = \"600 mm\"\n[flue.level]",
                      "s.toml:14:1: flue.outlet", "reaches outside the barrel"));
        CHECK(refused("length = \"2.2 m\"", "length = \"2.2 m\"\nrise = \"2.3 m\"",
                      "s.toml:18:1: flue.stack.rise", "can't rise or fall by 2300 mm"));
    }

    TEST_CASE("a flue outlet above the riser's top is refused") {
        // The barrel's foot is at 146.7 mm; the outlet would be at 666.7 mm, the riser ends at 600.
        CHECK(only_problem(
            problems_of(with("[flue.level]", "[flue]\noutlet = \"520 mm\"\n[flue.level]"),
                        {"riser.top=600mm", "plate.underside=766.7mm"}),
            "--set riser.top=600mm: ", "must be below the riser's top"));
    }

    TEST_CASE("wood that can never fit the feed, or has nowhere to burn, is refused") {
        const std::string many = std::string(small_stove) + "pieces = 10\n";
        CHECK(only_problem(problems_of(many), "s.toml:20:1: load.main.pieces", "it takes 9"));
        CHECK(only_problem(problems_of(small_stove, {"wood.side=150mm"}),
                           "--set wood.side=150mm: ", "never fit a feed"));
        CHECK(only_problem(problems_of("[riser]\nbore='60 mm'\ntop='2 m'\n[load.a]\nat='0 s'\n"),
                           "", "wood needs a [feed]"));
        CHECK(only_problem(problems_of("[riser]\nbore='60 mm'\ntop='2 m'\n"),
                           "s.toml:1:1: ", "nothing heats this stove"));
    }

    TEST_CASE("side air needs one kind of opening, below the feed's mouth") {
        CHECK(refused("[port]", "[port]\n[side_air.a]\nwidth = \"90 mm\"",
                      "s.toml:7:1: side_air.a.width",
                      "a slot (width and height) or a row of holes"));
        CHECK(refused("[port]",
                      "[port]\n[side_air.a]\nholes = 6\ndiameter = \"8 mm\"\nat = \"300 mm\"",
                      "s.toml:9:1: side_air.a.at", "above the feed's mouth"));
    }

    TEST_CASE("a bypass and joints that are not tight need the part they are at") {
        const std::string duct = "[riser]\nbore='60 mm'\ntop='2 m'\n[heat]\npower='1 kW'\n";
        CHECK(only_problem(problems_of(duct + "[bypass]\n"),
                           "s.toml:6:2: [bypass]: ", "goes round a barrel"));
        CHECK(only_problem(problems_of(duct + "[leak.a]\narea='9 mm2'\nplace='under_plate'\n"),
                           "s.toml:8:1: leak.a.place", "needs a [barrel] and a [plate]"));
        CHECK(only_problem(problems_of(duct + "[leak.a]\narea='9 mm2'\nplace='flue_outlet'\n"),
                           "s.toml:8:1: leak.a.place", "needs a [flue.NAME]"));
        CHECK(only_problem(problems_of(duct + "[leak.a]\narea='9 mm2'\nplace='tunnel'\n"),
                           "s.toml:8:1: leak.a.place", "needs a [tunnel]"));
        CHECK(problems_of(duct + "[leak.a]\nplace='lid'\n").size() == 2);
        const Stove stove = read(small_stove, {"leak.lid.area=2 cm2", "leak.lid.place=tunnel"});
        CHECK(stove.leaks.at(0).area == doctest::Approx(2e-4));
        CHECK(stove.leaks.at(0).place == LeakPlace::tunnel);
    }

    TEST_CASE("a thing said twice is refused") {
        CHECK(refused("[flue.level]",
                      "[site]\naltitude = \"1 m\"\npressure = \"1000 hPa\"\n[flue.level]",
                      "s.toml:14:1: site.altitude", "site.pressure says it too"));
        CHECK(refused("direction = \"level\"", "direction = \"level\"\nrise = \"0 mm\"",
                      "s.toml:15:1: flue.level.direction", "says it too"));
        CHECK(refused("[port]", "[port]\n[heat]\npower = \"3 kW\"",
                      "s.toml:20:7: [load.main]: ", "heat.power stands instead of loads"));
    }

    TEST_CASE("the order of the flue's sections must name each of them") {
        const std::string swapped =
            with("[flue.level]", "[flue]\norder = [\"stack\", \"level\"]\n[flue.level]");
        CHECK(read(swapped).flue.sections.at(0).name == "stack");
        CHECK(refused("[flue.level]", "[flue]\norder = [\"stack\"]\n[flue.level]",
                      "s.toml:14:1: flue.order", "\"level\" is left out"));
        CHECK(
            problems_of(with("[flue.level]", "[flue]\norder = [\"stack\", \"lvl\"]\n[flue.level]"))
                .size() == 2);
    }

    TEST_CASE("no check is made on a value that was itself refused") {
        CHECK(problems_of(with("\"240 mm\"", "\"240 kg\"")).size() == 1);
        CHECK(problems_of(with("\"125 mm\"", "\"125 kg\"")).size() == 1);
        CHECK(problems_of(with("\"725 mm\"", "nan")).size() == 1);
        CHECK(problems_of(with("\"400 mm\"", "nan")).size() == 1);
        CHECK(problems_of(std::string(small_stove) + "side = \"1 kg\"\n").size() == 1);
    }

    TEST_CASE("a jacket that is upside down, off the barrel, or none, is refused") {
        CHECK(only_problem(
            problems_of(small_stove, {"barrel.jacket=blanket", "barrel.jacket_from=600 mm",
                                      "barrel.jacket_to=400 mm"}),
            "--set barrel.jacket_from=600 mm: ", "is not below its upper one, at 400 mm"));
        CHECK(only_problem(
            problems_of(small_stove, {"barrel.jacket=blanket", "barrel.jacket_from=20 mm"}),
            "--set barrel.jacket_from=20 mm: ", "below the barrel's foot at"));
        CHECK(only_problem(
            problems_of(small_stove, {"barrel.jacket=blanket", "barrel.jacket_to=1.5 m"}),
            "--set barrel.jacket_to=1.5 m: ", "above the barrel's top at"));
        CHECK(only_problem(problems_of(small_stove, {"barrel.jacket_to=500 mm"}),
                           "--set barrel.jacket_to=500 mm: ", "there is no jacket to place"));
        const Stove whole = read(small_stove, {"barrel.jacket=blanket"});
        CHECK(whole.barrel->jacket_from == whole.barrel_foot());
        CHECK(whole.barrel->jacket_to == whole.plate->underside);
        CHECK(problems_of(small_stove, {"barrel.jacket=blanket", "barrel.jacket_from=300 mm"})
                  .empty());
        std::string bare =
            with("[barrel]\ndiameter = \"400 mm\"\nheight = \"620 mm\"\n[plate]\n", "");
        CHECK_FALSE(problems_of(bare, {"barrel.jacket=blanket"}).empty());
    }

    TEST_CASE("an octagon's corners reach farther than a round riser's wall") {
        // 177 mm from flat to flat outside are 191.6 mm from corner to corner.
        CHECK(problems_of(with("\"400 mm\"", "\"185 mm\"")).empty());
        CHECK(only_problem(
            problems_of(with("\"400 mm\"", "\"185 mm\""), {"riser.section=octagonal"}),
            "s.toml:10:1: barrel.diameter = \"185 mm\": ", "than the riser outside (191.6 mm)"));
        const Stove eight = read(small_stove, {"riser.section=octagonal"});
        CHECK(eight.riser.octagonal);
        CHECK(eight.flue.sections[0].bore > eight.riser.bore);  // of the octagon's section
        CHECK_FALSE(read(small_stove).riser.octagonal);
        const std::string slot =
            with("bore = \"125 mm\"", "width = \"125 mm\"\ndepth = \"125 mm\"");
        CHECK(only_problem(problems_of(slot, {"riser.section=octagonal"}),
                           "--set riser.section=octagonal: ", "has a bore"));
    }

    TEST_CASE("a section that begins at a tee says so") {
        CHECK(read(small_stove, {"flue.stack.entry=tee"}).flue.sections[1].tee);
        CHECK_FALSE(read(small_stove).flue.sections[1].tee);
        CHECK_FALSE(problems_of(small_stove, {"flue.stack.entry=te"}).empty());
    }

    TEST_CASE("a room's volume without what it loses is refused") {
        CHECK(only_problem(problems_of(small_stove, {"site.room_volume=50 m3"}),
                           "--set site.room_volume=50 m3: ", "say site.room_loss too"));
        CHECK(read(small_stove, {"site.room_volume=50 m3", "site.room_loss=150 W/K"})
                  .site.room_volume == 50);
    }
}
