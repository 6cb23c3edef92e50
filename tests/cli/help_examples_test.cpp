#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>
#include <vector>

#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

/// The commands that a help text shows, each on one line: those indented by two that begin with the
/// program's name, joined where a backslash breaks them.
std::vector<std::string> examples_in(const std::string& help) {
    std::vector<std::string> examples;
    std::istringstream lines(help);
    bool goes_on = false;
    for (std::string line; std::getline(lines, line);) {
        if (!goes_on && !line.starts_with("  drawwell ")) continue;
        if (goes_on)
            examples.back() += line.substr(std::min(line.find_first_not_of(' '), line.size()));
        else
            examples.push_back(line.substr(2));
        std::string& example = examples.back();
        goes_on = example.ends_with('\\');
        if (goes_on) example.pop_back();
        // What explains it stands behind several blanks.
        if (!goes_on) example.resize(std::min(example.find("   ", 9), example.size()));
    }
    return examples;
}

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

/// A folder with what the examples name: two stoves, results of them, logs of a burn.
struct Kitchen {
    Kitchen() {
        // Short and in coarse cells, so that hundreds of burns take little time.
        const auto sample = [&](const std::string& name, const std::string& file) {
            std::string text = bytes_of(std::string(DRAWWELL_SOURCES) + "/data/stoves/" + name);
            const std::string burn = "\n[burn]\nduration = \"70 min\"\nrefine = 0.25\n";
            const std::size_t table = text.find("\n[burn]");
            if (table != std::string::npos)
                text.erase(table, std::min(text.find("\n[", table + 1), text.size()) - table);
            put(folder / file, text + burn);
        };
        sample("allotment-kitchen.toml", "kitchen.toml");
        sample("workshop-kitchen.toml", "neighbour.toml");
    }
    void burn() const {
        REQUIRE(run_program(folder, "burn kitchen.toml --quiet").code == 0);
        REQUIRE(run_program(folder, "burn neighbour.toml -o higher.h5 --quiet").code == 0);
    }
    /// A log of that burn, its clock at four minutes at lighting, and what somebody noted of it.
    void log() const {
        burn();
        const ProgramRun table =
            run_program(folder,
                        "export kitchen.h5 --columns outlet_gas_temperature,plate_temperature "
                        "--every 60s");
        REQUIRE(table.code == 0);
        std::istringstream rows(table.out);
        std::string row, log = "time_s,TC1,TC2\n";
        std::string noted = "time_min,plate_temperature_c,outlet_gas_temperature_c\n";
        std::getline(rows, row);
        // Twelve minutes of it, which match as well and take a fifth of the time.
        for (int minute = 0; minute <= 12 && std::getline(rows, row); ++minute) {
            std::istringstream cells(row);
            std::string time, gas, plate;
            std::getline(std::getline(std::getline(cells, time, ','), gas, ','), plate, ',');
            log += std::to_string(std::stod(time) + 240) + "," + gas + "," + plate + "\n";
            noted += std::to_string(std::stod(time) / 60) + "," + plate + "," + gas + "\n";
        }
        put(folder / "burn.csv", log);
        put(folder / "evening.csv", noted);
    }
    void examples_work(const std::string& command) const {
        const ProgramRun help = run_program(folder, command + " --help");
        REQUIRE(help.code == 0);
        const std::vector<std::string> examples = examples_in(help.out);
        CHECK_FALSE(examples.empty());
        for (const std::string& example : examples) {
            INFO(example);
            REQUIRE(example.starts_with("drawwell " + command));
            const ProgramRun run = run_program(folder, example.substr(8));
            CHECK(run.code == 0);
            CHECK_FALSE(contains(run.out, "ailed"));
            CHECK_FALSE(contains(run.out, "Nowhere"));
            CHECK_FALSE(contains(run.out, "could not be"));
        }
    }
    ScratchFolder folder;
};

}  // namespace

TEST_SUITE("cli/help_examples") {
    TEST_CASE("examples are found in a help text") {
        CHECK(examples_in("Text.\n  drawwell a b --c\n      why\n  drawwell d \\\n      --e\n") ==
              std::vector<std::string>{"drawwell a b --c", "drawwell d --e"});
        CHECK(examples_in("  drawwell new k.toml   a file\n") ==
              std::vector<std::string>{"drawwell new k.toml"});
    }

    TEST_CASE("every command that help shows has its examples run here") {
        const ScratchFolder folder;
        const std::string help = run_program(folder, "--help").out;
        std::istringstream lines(help.substr(help.find("Subcommands:")));
        std::vector<std::string> commands;
        std::string line;
        std::getline(lines, line);
        while (std::getline(lines, line) && line.starts_with("  "))
            if (line[2] != ' ') commands.push_back(line.substr(2, line.find(' ', 2) - 2));
        std::sort(commands.begin(), commands.end());
        CHECK(commands == std::vector<std::string>{"burn", "compare", "draw", "explain", "export",
                                                   "find", "fit", "list", "new", "plot", "report",
                                                   "sheet"});
        CHECK(examples_in(run_program(folder, "new --help").out).empty());
    }

    TEST_CASE("the two commands to begin with work in an empty folder") {
        const ScratchFolder folder;
        const std::vector<std::string> examples = examples_in(run_program(folder, "--help").out);
        CHECK(examples.size() == 2);
        for (const std::string& example : examples) {
            INFO(example);
            CHECK(run_program(folder, example.substr(8)).code == 0);
        }
        CHECK(std::filesystem::exists(folder / "kitchen.h5"));
    }

    TEST_CASE("the examples of burn work") {
        const Kitchen kitchen;
        kitchen.burn();
        kitchen.examples_work("burn");
    }

    TEST_CASE("the examples of compare work") {
        Kitchen().examples_work("compare");
    }

    TEST_CASE("the examples of find work") {
        Kitchen().examples_work("find");
    }

    TEST_CASE("the examples of explain work") {
        Kitchen().examples_work("explain");
    }

    TEST_CASE("the examples of fit work") {
        const Kitchen kitchen;
        kitchen.log();
        kitchen.examples_work("fit");
    }

    TEST_CASE("the examples of draw, sheet and list work") {
        Kitchen().examples_work("draw");
        Kitchen().examples_work("sheet");
        Kitchen().examples_work("list");
    }

    TEST_CASE("the examples of report, export and plot work") {
        const Kitchen kitchen;
        kitchen.log();
        kitchen.examples_work("report");
        kitchen.examples_work("export");
        kitchen.examples_work("plot");
    }
}
