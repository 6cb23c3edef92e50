#include "cli/commands/find_command.h"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "tests/cli/run_program.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

/// A bare pipe over a steady fire, computed in a moment.
constexpr std::string_view pipe =
    "[riser]\nbore = \"100 mm\"\ntop = \"1 m\"\n[heat]\npower = \"2 kW\"\n";

ProgramRun find(const ScratchFolder& folder, const std::string& arguments) {
    put(folder / "pipe.toml", pipe);
    return run_program(folder, " find pipe.toml --for 2min --quiet " + arguments);
}

/// The figure [mm] that stands behind a key.
double told(const ProgramRun& run, const std::string& key) {
    for (std::size_t at = run.out.find(key); at != std::string::npos;
         at = run.out.find(key, at + 1)) {
        const std::size_t figure = run.out.find_first_not_of(" =", at + key.size());
        const std::size_t end = run.out.find_first_not_of("0123456789.", figure);
        if (end > figure && end != std::string::npos && run.out.compare(end, 3, " mm") == 0)
            return std::stod(run.out.substr(figure));
    }
    return 0;
}

double gas_at(const ScratchFolder& folder, double bore, double top) {
    const ProgramRun run = run_program(
        folder, " burn pipe.toml --for 2min --quiet --json --set riser.bore=" +
                    std::to_string(bore) + "mm --set riser.top=" + std::to_string(top) + "mm");
    return nlohmann::json::parse(run.out)["riser_gas_max_c"].get<double>();
}

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/commands/find") {
    TEST_CASE(
        "the shortest pipe that keeps its gas cool enough does, and one a hundredth shorter "
        "does not") {
        const ScratchFolder folder;
        const ProgramRun run = find(
            folder, "--smallest riser.top --between 300mm:3m --where 'riser_gas_max_c <= 150'");
        CHECK(run.code == 0);
        const double top = told(run, "riser.top");
        CHECK(gas_at(folder, 100, top) <= 150);
        CHECK(gas_at(folder, 100, 0.99 * top) > 150);
        CHECK(contains(run.out, "How sure that is"));
        CHECK(contains(run.out, "day.outdoor"));
    }

    TEST_CASE("freed as well, a wider bore lets the pipe be shorter, up to its end") {
        const ScratchFolder folder;
        const ProgramRun run = find(folder,
                                    "--smallest riser.top --between 300mm:3m --vary "
                                    "riser.bore=60mm:105mm --where 'riser_gas_max_c <= 150'");
        CHECK(run.code == 0);
        const double top = told(run, "riser.top"), bore = told(run, "riser.bore");
        CHECK(bore == near(105, 5e-3));
        CHECK(contains(run.out, "the end of what was looked at"));
        CHECK(gas_at(folder, bore, top) <= 150.05);  // told to four digits
        CHECK(gas_at(folder, bore, 0.98 * top) > 150);
        CHECK(contains(run.out, "day.outdoor"));
    }

    TEST_CASE("a target that two keys may meet is met by a little of both") {
        const ScratchFolder folder;
        const ProgramRun run =
            find(folder,
                 "--target riser_gas_max_c=200 --by riser.top --between 300mm:2m --vary "
                 "riser.bore=50mm:150mm --likely 3");
        CHECK(run.code == 0);
        const double top = told(run, "riser.top"), bore = told(run, "riser.bore");
        CHECK(gas_at(folder, bore, top) == near(200, 0.01));
        CHECK(top < 1000);
        CHECK(bore < 100);
        CHECK(contains(run.out, "riser_gas_max moves with"));
        CHECK(contains(run.out, "0 of 3 days"));
    }

    TEST_CASE("what holds nowhere is told so, and what can't be asked is refused") {
        const ScratchFolder folder;
        const std::string two = "--smallest riser.top --between 300mm:3m --vary ";
        const ProgramRun none =
            find(folder, two + "riser.bore=60mm:105mm --where 'riser_gas_max_c <= 20'");
        CHECK(none.code == 0);
        CHECK(contains(none.out, "Nowhere that was looked at"));
        CHECK(contains(none.out, "Least far off is riser.top = 3000 mm"));
        const std::string where = " --where 'riser_gas_max_c <= 150'";
        CHECK(contains(find(folder, two + "riser.bore=60mm,105mm" + where).err, "FROM:TO"));
        CHECK(contains(find(folder, two + "riser.top=1m:2m" + where).err, "named twice"));
        CHECK(find(folder, two + "riser.top=1m:2m" + where).code == 2);
    }

    TEST_CASE("a burn too short to answer a condition does not fulfil it, and that is said") {
        const ScratchFolder folder;
        const ProgramRun run =
            find(folder, "--smallest riser.top --between 1m:2m --where 'reserve_draw_min_pa >= 1'");
        CHECK(run.code == 0);
        CHECK(contains(run.out, "Nowhere from 1000 mm to 2000 mm"));
        CHECK(contains(run.out, "draws                   too short"));
        CHECK(contains(run.out, "No answer to reserve_draw_min_pa: the burn is too short"));
    }

    TEST_CASE(
        "an answer that no stove gives is refused with the nearest before anything is burned") {
        const ScratchFolder folder;
        const auto refused = [&](const std::string& where) {
            const ProgramRun run =
                find(folder, "--smallest riser.top --between 1m:2m --where '" + where + "'");
            CHECK(run.code == 2);
            CHECK(run.out == "");
            return run.err;
        };
        CHECK(contains(refused("smoke_bak_s = 0"), "did you mean \"smoke_back_s\""));
        CHECK(contains(refused("pot.kettle/boils_after_s <= 600"), "the stove has no pot"));
        put(folder / "kitchen.toml",
            bytes_of(std::string(DRAWWELL_SOURCES) + "/data/stoves/workshop-kitchen.toml"));
        const ProgramRun run = run_program(
            folder,
            "find kitchen.toml --smallest riser.top --where 'pot.kettle/boil_after_s <= 9'");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "did you mean \"pot.kettle/boils_after_s\"?"));
    }

    TEST_CASE("the outdoor temperature is sought between two, below nothing too") {
        const ScratchFolder folder;
        const ProgramRun run = find(folder,
                                    "--largest site.outdoor --between -10°C:20°C --where "
                                    "'flue_top_max_c <= 200'");
        CHECK(run.code == 0);
        CHECK(contains(run.out, "site.outdoor = "));
        CHECK(find(folder, "--largest site.outdoor --where 'flue_top_max_c <= 200'").code == 2);
        CHECK(find(folder,
                   "--smallest riser.top --between 1m:2m --where draws --vary "
                   "site.outdoor=-10°C:20°C:15°C")
                  .code == 2);
    }
}
