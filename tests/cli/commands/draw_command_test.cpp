#include "cli/commands/draw_command.h"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "cli/report/file_kind.h"
#include "tests/cli/report/svg_reading.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

// Minutes after lighting: enough for a draw, soon computed.
const std::string sample = " draw $sources/data/stoves/allotment-kitchen.toml --at 5min ";

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/commands/draw") {
    TEST_CASE("a draw prints its page and leaves a figure named after the stove") {
        const ScratchFolder folder;
        const ProgramRun run = run_program(folder, sample);
        CHECK(run.code == 0);
        CHECK(run.err == "");
        CHECK(contains(run.out, "allotment kitchen, 5 min after lighting"));
        CHECK(contains(run.out, "Spare draw"));
        CHECK(contains(run.out, "allotment-kitchen-draw.svg"));
        CHECK(kind_of_file(folder / "allotment-kitchen-draw.svg") == FileKind::figure);
        CHECK(well_formed(bytes_of(folder / "allotment-kitchen-draw.svg")));
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("with --json standard output is JSON and nothing else, and --csv adds the curve") {
        const ScratchFolder folder;
        const ProgramRun run =
            run_program(folder, sample + "--json --csv -o a.svg --set 'flue.stack.length=1.1 m'");
        REQUIRE(nlohmann::json::accept(run.out));
        const auto json = nlohmann::json::parse(run.out);
        CHECK(json["time_s"] == 300);
        CHECK(json["figure"] == "a.svg");
        CHECK(json["overrides"] == nlohmann::json{"flue.stack.length=1.1 m"});
        CHECK_FALSE(json["walls_held"]["points"].empty());
        CHECK(kind_of_file(folder / "a.csv") == FileKind::draw_table);
        CHECK(run_program(folder, sample + "--quiet --csv table.txt").out == "");
        CHECK(kind_of_file(folder / "table.txt") == FileKind::draw_table);
    }

    TEST_CASE("an earlier figure is replaced, another's file only with --force") {
        const ScratchFolder folder;
        CHECK(run_program(folder, sample + "-o a.svg").code == 0);
        CHECK(run_program(folder, sample + "-o a.svg").code == 0);
        put(folder / "a.svg", "<svg>a drawing</svg>");
        const ProgramRun run = run_program(folder, sample + "-o a.svg");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "a.svg exists and is not a figure that drawwell wrote"));
        CHECK(bytes_of(folder / "a.svg") == "<svg>a drawing</svg>");
        put(folder / "log.csv", "time_s,thermometer\n");
        CHECK(run_program(folder, sample + "-o b.svg --csv log.csv").code == 2);
        CHECK(run_program(folder, sample + "-o a.svg --force").code == 0);
        CHECK(kind_of_file(folder / "a.svg") == FileKind::figure);
    }

    TEST_CASE(
        "a moment that is missing, without unit, before lighting or past the burn is refused") {
        const ScratchFolder folder;
        const std::string stove = " draw $sources/data/stoves/allotment-kitchen.toml ";
        CHECK(run_program(folder, stove).code == 2);
        const ProgramRun unit = run_program(folder, stove + "--at 60");
        CHECK(unit.code == 2);
        CHECK(contains(unit.err, "--at 60: the unit is missing"));
        const ProgramRun before = run_program(folder, stove + "--at=-5min");
        CHECK(before.code == 2);
        CHECK(contains(before.err, "before lighting"));
        CHECK(run_program(folder, stove + "--at 5min --set burn.duration=2min").code == 2);
        CHECK(files_in(folder / "") == 0);
    }

    TEST_CASE("a stove to mend ends with code 2, one that is not there with code 4") {
        const ScratchFolder folder;
        put(folder / "bad.toml", "[riser]\nboar = \"125 mm\"\n");
        const ProgramRun run = run_program(folder, " draw bad.toml --at 5min");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "bad.toml:2:"));
        CHECK(run_program(folder, " draw absent.toml --at 5min").code == 4);
        CHECK(run_program(folder, sample + "-o absent/a.svg").code == 4);
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("a stove is read from standard input") {
        const ScratchFolder folder;
        const ProgramRun run =
            run_program(folder, " draw - --at 2min <$sources/data/stoves/allotment-kitchen.toml");
        CHECK(run.code == 0);
        CHECK(kind_of_file(folder / "draw.svg") == FileKind::figure);
    }

    TEST_CASE("Ctrl-C during a draw leaves no file, and an earlier figure alone") {
        const ScratchFolder folder;
        CHECK(run_program(folder, sample + "--quiet -o a.svg").code == 0);
        const std::string before = bytes_of(folder / "a.svg");
        const ProgramRun run = run_program(
            folder,
            " draw $sources/data/stoves/allotment-kitchen.toml --at 240h --set burn.duration=240h "
            "--set burn.output_every=1s -o a.svg --csv",
            "timeout --foreground --preserve-status -s INT 2 $drawwell");
        CHECK(run.code == 130);
        CHECK(contains(run.err, "nothing was written"));
        CHECK(bytes_of(folder / "a.svg") == before);
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("help of the draw teaches with an example") {
        const ScratchFolder folder;
        const ProgramRun run = run_program(folder, " draw --help");
        CHECK(run.code == 0);
        CHECK(contains(run.out, "drawwell draw kitchen.toml --at 60min"));
    }
}
