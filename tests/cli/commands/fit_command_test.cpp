#include "cli/commands/fit_command.h"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/report/schema_versions.h"
#include "tests/cli/read/small_stove.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

const std::string coarse = " --set burn.refine=0.25 ";

/// A folder with a stove and the log of it with drier wood, lit two minutes into the log.
struct Logged {
    Logged() {
        put(folder / "small.toml", tests::small_stove);
        const ProgramRun burn = run_program(
            folder,
            "burn small.toml --quiet --csv burn.csv --for 12min --set burn.reserve_every=0s "
            "--set 'wood.moisture=12 % wet'" +
                coarse);
        REQUIRE(burn.code == 0);
        std::string log = "time_s,stove draft (Pa),TC1\n";
        std::istringstream table(bytes_of(folder / "burn.csv"));
        std::string line;
        std::getline(table, line);
        std::vector<std::string> names = cells(line);
        while (std::getline(table, line)) {
            const auto row = cells(line);
            std::string draft, plate;
            for (std::size_t i = 0; i < names.size(); ++i) {
                if (names[i] == "flue_draft_pa") draft = row[i];
                if (plate.empty() && names[i].starts_with("plate_temperature_c")) plate = row[i];
            }
            log += std::to_string(std::stod(row[0]) + 120) + "," + draft + "," + plate + "\n";
        }
        put(folder / "log.csv", log);
    }

    static std::vector<std::string> cells(const std::string& line) {
        std::vector<std::string> all;
        std::istringstream stream(line);
        for (std::string cell; std::getline(stream, cell, ',');) all.push_back(cell);
        return all;
    }

    ProgramRun fit(const std::string& more) const {
        return run_program(folder,
                           "fit small.toml --log log.csv --map 'stove draft=flue_draft' "
                           "--map 'TC1=plate_temperature' --clock-offset 2min "
                           "--noise TC1=0.1K,0.1K --noise 'stove draft=0.05Pa,0.05Pa' "
                           "--rest-as-filed --fit day.wood_moisture" +
                               coarse + more);
    }

    ScratchFolder folder;
};

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/commands/fit") {
    TEST_CASE("a log is matched, and page, figure and matched stove say by what") {
        const Logged logged;
        const ProgramRun run = logged.fit("-o left.svg --save matched.toml");
        CHECK(run.code == 0);
        CHECK(run.err == "");
        CHECK(contains(run.out, "log.csv is matched"));
        CHECK(contains(run.out, "day.wood_moisture"));
        CHECK(contains(run.out, "burn.refine, wood.moisture"));
        CHECK(contains(bytes_of(logged.folder / "left.svg"), "as filed"));
        const Stove stove = tests::read(bytes_of(logged.folder / "matched.toml"));
        CHECK(stove.wood_moisture_wet_basis > 0.10);
        CHECK(stove.wood_moisture_wet_basis < 0.14);
        CHECK_FALSE(std::filesystem::exists(logged.folder / "small-fit.rows.jsonl"));
    }

    TEST_CASE("a match is the same on one thread and on two, and as JSON says so") {
        const Logged logged;
        const ProgramRun one = logged.fit("--json --threads 1"), two = logged.fit("--json");
        REQUIRE(nlohmann::json::accept(one.out));
        CHECK(one.out == two.out);
        CHECK(nlohmann::json::parse(one.out)["schema_version"] == json_schema_version);
        const auto input = nlohmann::json::parse(one.out)["inputs"][0];
        CHECK(input["name"] == "day.wood_moisture");
        CHECK(input["low"] < input["estimate"]);
        CHECK(input["left"] < 0.5);
    }

    TEST_CASE("a table that burn or export wrote is read as a log, its mark passed over") {
        const Logged logged;
        const ProgramRun run = run_program(
            logged.folder,
            "fit small.toml --log burn.csv --rest-as-filed --fit day.wood_moisture --json" +
                coarse);
        CHECK(run.err.find("drawwell_table") == std::string::npos);
        CHECK(run.code == 0);
    }

    TEST_CASE("no file of another's is replaced, nothing is computed before") {
        const Logged logged;
        put(logged.folder / "mine.toml", "mine");
        put(logged.folder / "mine.svg", "mine");
        CHECK(logged.fit("--save mine.toml").code == 2);
        CHECK(logged.fit("-o mine.svg").code == 2);
        CHECK(logged.fit("-o small.toml --force").code == 2);
        CHECK(logged.fit("--save log.csv --force").code == 2);
        CHECK(logged.fit("-o new.svg --save ./new.svg").code == 2);
        CHECK(tests::read(bytes_of(logged.folder / "small.toml")).title == "small");
        CHECK(bytes_of(logged.folder / "log.csv").starts_with("time_s"));
        CHECK(bytes_of(logged.folder / "mine.toml") == "mine");
        CHECK(bytes_of(logged.folder / "mine.svg") == "mine");
    }

    TEST_CASE("Ctrl-C keeps the burns, and a resumed match ends as an undisturbed one") {
        const Logged logged;
        const ProgramRun whole = logged.fit("--json");
        const std::string arguments =
            "fit small.toml --log log.csv --map 'stove draft=flue_draft' --map "
            "'TC1=plate_temperature' --clock-offset 2min --fit day.wood_moisture --json" +
            coarse;
        const ProgramRun stopped =
            run_program(logged.folder, arguments, "timeout -s INT --preserve-status 1 $drawwell");
        if (stopped.code == 0) return;  // a fast machine was done first
        CHECK(stopped.code == 130);
        CHECK(contains(stopped.err, "--resume goes on from there"));
        CHECK(std::filesystem::exists(logged.folder / "small-fit.rows.jsonl"));
        CHECK(run_program(logged.folder, arguments).code == 2);
        const ProgramRun resumed = run_program(logged.folder, arguments + " --resume");
        CHECK(resumed.code == 0);
        const ProgramRun anew = run_program(logged.folder, arguments);
        CHECK(resumed.out == anew.out);
        CHECK_FALSE(std::filesystem::exists(logged.folder / "small-fit.rows.jsonl"));
    }

    TEST_CASE("a log that is wrong is told by file, line and column") {
        const Logged logged;
        put(logged.folder / "log.csv", "time_s,stove draft,TC1\n0,1,20\n60,x,30\n");
        const ProgramRun run = logged.fit("");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "log.csv:3: column \"stove draft\": \"x\""));
    }
}
