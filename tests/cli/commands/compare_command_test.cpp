#include "cli/commands/compare_command.h"

#include <doctest/doctest.h>

#include <H5Cpp.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "cli/report/schema_versions.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

const std::string three =
    " compare $sources/data/stoves/allotment-kitchen.toml --for 3min "
    "--set burn.reserve_every=60s --vary riser.top=600mm:700mm:50mm "
    "--follow 'plate.underside = riser.top + 45mm' ";

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

std::vector<double> values_in(const std::filesystem::path& file, const std::string& name) {
    const H5::DataSet data = H5::H5File(file.string(), H5F_ACC_RDONLY).openDataSet(name);
    std::vector<double> values(static_cast<std::size_t>(data.getSpace().getSimpleExtentNpoints()));
    data.read(values.data(), H5::PredType::NATIVE_DOUBLE);
    return values;
}

/// Wraps the program: killed as soon as two rows stand in its journal.
const std::string killed =
    "sh -c '\"$drawwell\" \"$@\" & i=0; while [ $i -lt 3000 ] && [ \"$(cat c.rows.jsonl "
    "2>/dev/null | grep -ac ^.\\\"id)\" -lt 2 ]; do i=$((i + 1)); sleep 0.01; done; kill -9 $!; "
    "true' sh";

}  // namespace

TEST_SUITE("cli/commands/compare") {
    TEST_CASE("a comparison prints its table and leaves no file behind") {
        const ScratchFolder folder;
        const ProgramRun run = run_program(folder, three);
        CHECK(run.code == 0);
        CHECK(run.err == "");
        CHECK(contains(run.out, "as filed"));
        CHECK(contains(run.out, "650 mm"));
        CHECK(contains(run.out, "Against the stove as filed"));
        CHECK(contains(run.out, "plate.underside follows: riser.top + 45mm"));
        CHECK(files_in(folder / "") == 0);
    }

    TEST_CASE("rows are the same on one thread and on four, and as those of single burns") {
        const ScratchFolder folder;
        const ProgramRun one = run_program(folder, three + "--json --threads 1"),
                         four = run_program(folder, three + "--json --threads 4");
        REQUIRE(nlohmann::json::accept(one.out));
        CHECK(one.out == four.out);
        CHECK(nlohmann::json::parse(one.out)["schema_version"] == json_schema_version);
        const auto rows = nlohmann::json::parse(one.out)["rows"];
        REQUIRE(rows.size() == 4);
        const ProgramRun alone = run_program(
            folder,
            " burn $sources/data/stoves/allotment-kitchen.toml --for 3min --set "
            "burn.reserve_every=60s --set riser.top=650mm --set plate.underside=695mm --json");
        const auto burn = nlohmann::json::parse(alone.out);
        for (const char* answer : {"reserve_draw_min_pa", "plate_centre_max_c", "heat_to_room_mj"})
            CHECK(rows[2]["answers"][answer] == burn[answer]);
    }

    TEST_CASE("a variant that can't be is told in its row, and the others go on") {
        const ScratchFolder folder;
        const ProgramRun run =
            run_program(folder,
                        " compare $sources/data/stoves/allotment-kitchen.toml --for 1min "
                        "--set burn.reserve_every=0s --vary riser.top=700mm,900mm --json");
        CHECK(run.code == 0);
        const auto rows = nlohmann::json::parse(run.out)["rows"];
        CHECK(rows[1]["error"] == nullptr);
        CHECK(contains(rows[2]["error"].get<std::string>(), "goes through the plate"));
        CHECK(rows[2]["answers"].empty());
    }

    TEST_CASE("what was finished before a kill is not computed again, and the table is the same") {
        const ScratchFolder folder;
        const std::string files = "-o c.h5 --csv c.csv";
        CHECK(run_program(folder, three + files).code == 0);
        const std::string table = bytes_of(folder / "c.csv"), result = bytes_of(folder / "c.h5");
        std::filesystem::remove(folder / "c.csv");
        std::filesystem::remove(folder / "c.h5");

        run_program(folder, three + files + " --threads 1", killed);
        REQUIRE(std::filesystem::exists(folder / "c.rows.jsonl"));
        const ProgramRun refused = run_program(folder, three + files);
        CHECK(refused.code == 2);
        CHECK(contains(refused.err, "--resume"));
        CHECK(run_program(folder, three + files + " --resume").code == 0);
        CHECK(bytes_of(folder / "c.csv") == table);
        CHECK(bytes_of(folder / "c.h5") == result);
        CHECK_FALSE(std::filesystem::exists(folder / "c.rows.jsonl"));
    }

    TEST_CASE("series stand in a group a stove, as its own burn has them, also after a kill") {
        const ScratchFolder folder;
        const std::string files = "-o c.h5 --series";
        REQUIRE(run_program(folder, three + files).code == 0);
        CHECK(files_in(folder / "") == 1);
        run_program(folder,
                    " burn $sources/data/stoves/allotment-kitchen.toml --for 3min --set "
                    "burn.reserve_every=60s --set riser.top=650mm --set plate.underside=695mm "
                    "--quiet -o burn.h5");
        for (const char* name : {"time", "plate_temperature", "riser_cell", "drive"})
            CHECK(values_in(folder / "c.h5", std::string("series/2/") + name) ==
                  values_in(folder / "burn.h5", name));
        const std::string result = bytes_of(folder / "c.h5");
        std::filesystem::remove(folder / "c.h5");
        run_program(folder, three + files + " --threads 1", killed);
        REQUIRE(std::filesystem::exists(folder / "c.rows.jsonl"));
        CHECK(run_program(folder, three + files + " --resume").code == 0);
        CHECK(bytes_of(folder / "c.h5") == result);
        CHECK(files_in(folder / "") == 2);  // nothing but the two results
        CHECK(run_program(folder, three + "--series").code == 2);
        CHECK(run_program(folder, three + "--series -o d.h5 --likely 2").code == 2);
    }

    TEST_CASE("no table or file of others is replaced, and none of the stoves compared") {
        const ScratchFolder folder;
        const std::string prices = "stove,price\nallotment kitchen,30\n";
        put(folder / "prices.csv", prices);
        const ProgramRun run = run_program(folder, three + "--csv prices.csv");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "prices.csv exists and is not a table of a comparison"));
        CHECK(bytes_of(folder / "prices.csv") == prices);
        put(folder / "b.toml", bytes_of(DRAWWELL_SOURCES "/data/stoves/workshop.toml"));
        for (const char* outputs : {"-o c.h5 --csv ./c.h5", "-o c.h5 --csv c.rows.jsonl",
                                    "--csv b.toml", "b.toml -o ./b.toml"}) {
            CAPTURE(outputs);
            const ProgramRun same = run_program(folder, three + "b.toml --force " + outputs);
            CHECK(same.code == 2);
            CHECK((contains(same.err, "are one file") || contains(same.err, "would replace")));
        }
        CHECK(files_in(folder / "") == 2);
    }

    TEST_CASE("rows of a killed run that kept no series are computed again for them") {
        const ScratchFolder folder;
        REQUIRE(run_program(folder, three + "-o c.h5 --series --quiet").code == 0);
        const std::string result = bytes_of(folder / "c.h5");
        run_program(folder, three + "-o c.h5 --threads 1", killed);
        REQUIRE(std::filesystem::exists(folder / "c.rows.jsonl"));
        CHECK(run_program(folder, three + "-o c.h5 --series --quiet --resume").code == 0);
        CHECK(bytes_of(folder / "c.h5") == result);
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("files of others that are called like those of an unfinished study are left alone") {
        const ScratchFolder folder;
        std::filesystem::create_directory(folder / "c.rows.series");
        put(folder / "c.rows.series/letter", "mine");
        CHECK(run_program(folder, three + "-o c.h5 --series --quiet").code == 0);
        CHECK(bytes_of(folder / "c.rows.series/letter") == "mine");
        put(folder / "c.rows.jsonl", "a letter without an end");
        for (const char* way : {"", " --resume", " --force"}) {
            const ProgramRun run = run_program(folder, three + "-o c.h5 --quiet" + way);
            CHECK(run.code == 4);
            CHECK(contains(run.err, "c.rows.jsonl"));
            CHECK(bytes_of(folder / "c.rows.jsonl") == "a letter without an end");
        }
    }

    TEST_CASE("where only the folder of its output can be written a comparison works") {
        const ScratchFolder folder;
        // Nobody can make a file in /proc.
        const std::string there = "sh -c 'cd /proc && exec \"$drawwell\" \"$@\"' sh";
        const std::string output = (folder / "c").string();
        for (const std::string& words : {"-o " + output + ".h5", "--csv " + output + ".csv"}) {
            const ProgramRun run = run_program(folder, three + words, there);
            CHECK(run.code == 0);
            CHECK(run.err == "");
        }
        CHECK(files_in(folder / "") == 2);
        const ProgramRun run = run_program(folder, three, there);
        CHECK(run.code == 0);
        CHECK(contains(run.out, "as filed"));
        CHECK(contains(run.err, "if this is stopped, nothing is kept"));
        CHECK(run_program(folder, three + "--csv", there).code == 4);
    }

    TEST_CASE("a stopped comparison says that it can go on only where it kept its rows") {
        const ScratchFolder folder;
        const std::string long_one =
            " compare $sources/data/stoves/allotment-kitchen.toml --for 240h --vary "
            "riser.top=600mm,650mm --quiet";
        const std::string stop = "timeout --foreground --preserve-status -s INT 2 ";
        const ProgramRun kept = run_program(folder, long_one, stop + "$drawwell");
        CHECK(kept.code == 130);
        CHECK(contains(kept.err, "--resume"));
        const ProgramRun lost = run_program(
            folder, long_one, stop + "sh -c 'cd /proc && exec \"$drawwell\" \"$@\"' sh");
        CHECK(lost.code == 130);
        CHECK(contains(lost.err, "nothing of them is kept"));
    }

    TEST_CASE("a table that found no room takes no rows with it") {
        const ScratchFolder folder;
        const ProgramRun run =
            run_program(folder, three, "sh -c '\"$drawwell\" \"$@\" >/dev/full' sh");
        CHECK(run.code == 4);
        REQUIRE(files_in(folder / "") == 1);
        CHECK(contains(run_program(folder, three + "--resume").out, "as filed"));
        CHECK(files_in(folder / "") == 0);
    }

    TEST_CASE("nothing to compare, and a misspelled answer or key, are refused") {
        const ScratchFolder folder;
        const std::string stove = " compare $sources/data/stoves/allotment-kitchen.toml ";
        CHECK(contains(run_program(folder, stove).err, "nothing to compare"));
        CHECK(run_program(folder, stove).code == 2);
        CHECK(contains(
            run_program(folder, stove + "--vary riser.top=600mm,700mm --sort plate_max_c").err,
            "plate_"));
        // Here, since floating-point traps of the tests would stop the formula itself.
        CHECK(contains(run_program(folder, stove + "--for 1min --vary riser.top=600mm,650mm "
                                                   "--follow 'plate.underside = riser.top / 0'")
                           .err,
                       "no finite figure"));
        CHECK(contains(run_program(folder, stove + "--vary riser.tup=1m,2m").err, "riser.top"));
    }

    TEST_CASE("what can never be right is refused once, before anything is burned") {
        const ScratchFolder folder;
        put(folder / "pipe.toml",
            "[riser]\nbore = \"100 mm\"\ntop = \"1 m\"\n[heat]\npower = \"2 kW\"\n");
        const auto refused = [&](const std::string& arguments) {
            const ProgramRun run = run_program(folder, "compare pipe.toml --for 1min " + arguments);
            CHECK(run.code == 2);
            CHECK(run.out == "");
            CHECK(std::count(run.err.begin(), run.err.end(), '\n') == 1);
            return run.err;
        };
        const std::string vary = "--vary riser.top=1m:2m:500mm ";
        CHECK(contains(refused(vary + "--vary riser.top=1m,2m"), "riser.top is varied already"));
        CHECK(contains(refused(vary + "--follow 'riser.bore = riser.top * (0.1'"), "--follow"));
        CHECK(contains(refused(vary + "--follow 'riser.bore = riser.top / 10 + 3'"),
                       "without its unit"));
        CHECK(contains(refused(vary + "--follow 'riser.bore = plate.underside / 8'"),
                       "no figure plate.underside"));
        CHECK(contains(refused(vary + "--follow 'riser.top = 1m'"), "varied as well"));
        CHECK(contains(refused(vary + "--show smoke_bak_s"), "did you mean \"smoke_back_s\""));
        CHECK(contains(refused(vary + "--sort draw_limit"), "in words"));
        CHECK(contains(refused(vary + "--show pot.kettle/steam_kg"), "no pot"));
        CHECK(contains(refused("--vary riser.top=1m,2,5m"), "decimal point"));
        CHECK(contains(refused("--vary load.main.pieces=1:3:0.5"), "whole numbers"));
        const ProgramRun run = run_program(
            folder, "compare pipe.toml --for 1min --vary site.outdoor=-10°C:20°C:15°C --json");
        CHECK(run.code == 0);
        const auto rows = nlohmann::json::parse(run.out)["rows"];
        REQUIRE(rows.size() == 4);
        CHECK(rows[1]["settings"]["site.outdoor"] == "-10 °C");
        CHECK(rows[1]["answers"]["draws"].is_null());
    }
}
