#include "cli/commands/burn_command.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "cli/report/file_kind.h"
#include "cli/report/read_result.h"
#include "cli/report/schema_versions.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

const std::string any_time = " burn $sources/data/stoves/allotment-kitchen.toml ";
// Six minutes of the sample: enough for every answer to be worked out.
const std::string sample = any_time + "--for 6min ";

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/commands/burn") {
    TEST_CASE("a burn prints its page and leaves a result named after the stove") {
        const ScratchFolder folder;
        const ProgramRun run = run_program(folder, sample);
        CHECK(run.code == 0);
        CHECK(run.err == "");
        CHECK(contains(run.out, "raw"));
        CHECK(contains(run.out, "Before you light it"));
        CHECK(contains(run.out, "allotment-kitchen.h5"));
        CHECK(kind_of_file(folder / "allotment-kitchen.h5") == FileKind::result);
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("with --json standard output is JSON and nothing else") {
        const ScratchFolder folder;
        const ProgramRun run = run_program(folder, sample + "--json -o other.h5");
        REQUIRE(nlohmann::json::accept(run.out));
        const auto json = nlohmann::json::parse(run.out);
        CHECK(json["result_file"] == "other.h5");
        CHECK(json["overrides"] == nlohmann::json{"burn.duration=6min"});
        CHECK(json["schema_version"] == json_schema_version);
        CHECK(json["steps"].get<int>() > 0);
        CHECK(kind_of_file(folder / "other.h5") == FileKind::result);
    }

    TEST_CASE("--csv adds a table beside the result, or where it is told") {
        const ScratchFolder folder;
        CHECK(run_program(folder, sample + "-o a.h5 --csv").code == 0);
        CHECK(kind_of_file(folder / "a.csv") == FileKind::series_table);
        CHECK(run_program(folder, sample + "--quiet --csv table.txt").out == "");
        CHECK(kind_of_file(folder / "table.txt") == FileKind::series_table);
    }

    TEST_CASE("an earlier result is replaced, another's file only with --force") {
        const ScratchFolder folder;
        CHECK(run_program(folder, sample + "-o a.h5 --csv").code == 0);
        CHECK(run_program(folder, sample + "-o a.h5 --csv").code == 0);
        put(folder / "a.h5", "a letter");
        ProgramRun run = run_program(folder, sample + "-o a.h5");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "a.h5 exists and is not a result that drawwell wrote"));
        CHECK(contains(run.err, "--force"));
        CHECK(bytes_of(folder / "a.h5") == "a letter");
        // A log headed as the help of `report` says, and with nothing but columns of the model.
        const std::string log = "time_s,plate_temperature_c,outlet_gas_temperature_c\n60,150,210\n";
        put(folder / "log.csv", log);
        run = run_program(folder, sample + "-o b.h5 --csv log.csv");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "name another with --csv"));
        CHECK(bytes_of(folder / "log.csv") == log);
        CHECK_FALSE(std::filesystem::exists(folder / "b.h5"));
        CHECK(run_program(folder, sample + "-o a.h5 --force").code == 0);
        CHECK(kind_of_file(folder / "a.h5") == FileKind::result);
    }

    TEST_CASE("two outputs that are one file are refused before anything is computed") {
        const ScratchFolder folder;
        const std::string long_burn = any_time + "--for 240h --force ";
        std::filesystem::create_symlink("y.h5", folder / "link.csv");
        for (const char* outputs :
             {"-o y.h5 --csv y.h5", "-o y.h5 --csv ./y.h5", "-o y.h5 --csv link.csv",
              "-o y.h5 --csv y.partial.h5", "-o y.csv --csv", "-o y.h5 --csv z --report ./z"}) {
            CAPTURE(outputs);
            const ProgramRun run = run_program(folder, long_burn + outputs);
            CHECK(run.code == 2);
            CHECK(contains(run.err, "are one file"));
            CHECK(contains(run.err, "--csv"));
        }
        put(folder / "y.h5", "");
        std::filesystem::create_hard_link(folder / "y.h5", folder / "hard.csv");
        CHECK(run_program(folder, long_burn + "-o y.h5 --csv hard.csv").code == 2);
        CHECK(files_in(folder / "") == 3);
    }

    TEST_CASE("no file that the burn is made of is replaced, by force neither") {
        const ScratchFolder folder;
        const std::string stove = bytes_of(DRAWWELL_SOURCES "/data/stoves/allotment-kitchen.toml"),
                          weather = "time_min,outdoor_c\n0,5\n1,4\n";
        std::filesystem::create_directory(folder / "stoves");
        put(folder / "stoves/a.toml", stove);
        put(folder / "stoves/night.csv", weather);
        for (const char* arguments :
             {"stoves/a.toml -o ./stoves/a.toml", "- -o stoves/a.toml <stoves/a.toml",
              "stoves/a.toml --csv stoves/night.csv --set site.weather=night.csv",
              "stoves/a.toml --report kept >kept"}) {
            CAPTURE(arguments);
            const ProgramRun run = run_program(
                folder, "-c '\"$drawwell\" burn --for 5s --force " + std::string(arguments) + "'",
                "bash");
            CHECK(run.code == 2);
            CHECK(contains(run.err, "would replace"));
        }
        CHECK(bytes_of(folder / "stoves/a.toml") == stove);
        CHECK(bytes_of(folder / "stoves/night.csv") == weather);
    }

    TEST_CASE("a result that could not be written is refused before computing") {
        const ScratchFolder folder;
        const ProgramRun run = run_program(folder, any_time + "-o absent/a.h5 --for 240h");
        CHECK(run.code == 4);
        CHECK(contains(run.err, "absent/a.h5"));
    }

    TEST_CASE("what the user can mend ends with code 2 and says where it is") {
        const ScratchFolder folder;
        put(folder / "bad.toml", "[riser]\nboar = \"125 mm\"\n");
        ProgramRun run = run_program(folder, " burn bad.toml");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "bad.toml:2:"));
        CHECK(run_program(folder, sample + "--set nonsense").code == 2);
        CHECK(run_program(folder, sample + "--set 'riser.top=10 kg'").code == 2);
        CHECK(run_program(folder, sample + "--no-such-option").code == 2);
        CHECK(run_program(folder, " burn").code == 2);
        CHECK(run_program(folder, " brun").code == 2);
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("a file of weather is found beside the stove file that names it") {
        const ScratchFolder folder;
        std::filesystem::create_directory(folder / "stoves");
        put(folder / "stoves/night.csv", "time_min,outdoor_c\n0,5\n1,x\n");
        put(folder / "stoves/a.toml",
            bytes_of(DRAWWELL_SOURCES "/data/stoves/allotment-kitchen.toml"));
        const std::string burn = " burn stoves/a.toml --for 5s --set site.weather=";
        ProgramRun run = run_program(folder, burn + "night.csv");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "site.weather=night.csv: night.csv:3: outdoor_c = x"));
        run = run_program(folder, burn + "day.csv");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "cannot read stoves/day.csv"));
        put(folder / "stoves/night.csv", "time_min,outdoor_c\n0,5\n1,4\n");
        run = run_program(folder, burn + "night.csv --json");
        CHECK(run.err == "");
        CHECK(run.code == 0);
    }

    TEST_CASE("a stove file that is not there ends with code 4") {
        const ScratchFolder folder;
        const ProgramRun run = run_program(folder, " burn absent.toml");
        CHECK(run.code == 4);
        CHECK(contains(run.err, "absent.toml (No such file or directory)"));
        CHECK(run_program(folder, " burn .").code == 4);
    }

    TEST_CASE("a stove is read from standard input, and --set beats what it says") {
        const ScratchFolder folder;
        const ProgramRun run =
            run_program(folder,
                        " burn - --for 2min --json --set 'flue.stack.length=0.5 m' "
                        "<$sources/data/stoves/allotment-kitchen.toml");
        REQUIRE(run.code == 0);
        CHECK(kind_of_file(folder / "burn.h5") == FileKind::result);
        CHECK(nlohmann::json::parse(run.out)["overrides"][0] == "flue.stack.length=0.5 m");
    }

    TEST_CASE("Ctrl-C keeps what was computed, marked, and leaves an earlier result alone") {
        const ScratchFolder folder;
        CHECK(run_program(folder, sample + "--quiet -o a.h5").code == 0);
        const std::string before = bytes_of(folder / "a.h5");
        const ProgramRun run =
            run_program(folder, any_time + "-o a.h5 --for 240h --set burn.output_every=10s",
                        "timeout --foreground --preserve-status -s INT 2 $drawwell");
        CHECK(run.code == 130);
        CHECK(contains(run.err, "a.partial.h5"));
        CHECK(bytes_of(folder / "a.h5") == before);
        CHECK(kind_of_file(folder / "a.partial.h5") == FileKind::result);
        CHECK(files_in(folder / "") == 2);
    }

    TEST_CASE("a disk that is full is an error") {
        const ScratchFolder folder;
        CHECK(run_program(folder, "-c '$drawwell" + sample + " --json >/dev/full'", "bash").code ==
              4);
    }

    TEST_CASE("help teaches with examples, and the version is told") {
        const ScratchFolder folder;
        const ProgramRun help = run_program(folder, " --help");
        CHECK(help.code == 0);
        CHECK(contains(help.out, "drawwell new kitchen.toml"));
        for (const char* command : {"", " burn", " compare", " find", " explain", " draw", " sheet",
                                    " report", " export", " plot", " new", " list"}) {
            const std::string text = run_program(folder, std::string(command) + " --help").out;
            CAPTURE(command);
            for (std::size_t at = 0; at < text.size();) {
                const std::size_t end = std::min(text.find('\n', at), text.size());
                const std::string line = text.substr(at, end - at);
                CAPTURE(line);
                const auto letters = std::count_if(line.begin(), line.end(),
                                                   [](char c) { return (c & 0xC0) != 0x80; });
                CHECK(letters <= 80);
                at = end + 1;
            }
        }
        CHECK(contains(help.out, "drawwell burn kitchen.toml"));
        CHECK(contains(help.out, "Exit codes"));
        CHECK(run_program(folder, " --version").out == "drawwell 0.1.0\n");
        CHECK(run_program(folder, " burn --help").code == 0);
        CHECK(run_program(folder, "").code == 2);
    }

    TEST_CASE("the page is in US units when they are asked for, and in no others") {
        const ScratchFolder folder;
        const std::string burn = " burn $sources/data/stoves/allotment-kitchen.toml --for 3min ";
        const ProgramRun us = run_program(folder, burn + "--units us");
        CHECK(us.code == 0);
        CHECK(us.out.find("°F") != std::string::npos);
        CHECK(us.out.find("°C") == std::string::npos);
        CHECK(run_program(folder, burn + "--units metric").out.find("°C") != std::string::npos);
        CHECK(run_program(folder, burn + "--units imperial").code == 2);
    }

    TEST_CASE("what is called like the days of a result is left alone") {
        const ScratchFolder folder;
        std::filesystem::create_directory(folder / "a.days");
        put(folder / "a.days/letter", "mine");
        CHECK(run_program(folder, sample + "--quiet -o a.h5").code == 0);
        CHECK(run_program(folder, sample + "--quiet -o a.h5 --likely 2").code == 0);
        CHECK(bytes_of(folder / "a.days/letter") == "mine");
        CHECK(files_in(folder / "") == 2);
    }

    TEST_CASE("bands of days do not depend on another run beside it whose result is called alike") {
        const ScratchFolder folder;
        const std::string burn = "$drawwell" + sample + "--quiet ";
        put(folder / "both", burn + "--likely 24 -o a.h5 & " + burn + "--likely 3 -o a.hdf5; wait");
        run_program(folder, "both", "sh");
        CHECK(run_program(folder, sample + "--quiet --likely 24 -o alone.h5").code == 0);
        const auto low = [&](const char* name) {
            return read_result(folder / name).likely.low.find("plate_temperature")->values;
        };
        CHECK(low("a.h5") == low("alone.h5"));
    }

    TEST_CASE("other days and fires are told on its report page and kept in the result") {
        const ScratchFolder folder;
        CHECK(run_program(folder,
                          " burn $sources/data/stoves/allotment-kitchen.toml --for 6min --quiet "
                          "--likely 3 --report -o a.h5")
                  .code == 0);
        CHECK(bytes_of(folder / "a.html").find("On 3 other days and fires it draws on ") !=
              std::string::npos);
        CHECK(run_program(folder, " report a.h5 -o again.html").code == 0);
        CHECK(bytes_of(folder / "again.html").find("On 3 other days") != std::string::npos);
    }
}
