#include <doctest/doctest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <string>

#include "cli/read/visible_text.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

/// A bare pipe over a steady fire, computed in a moment.
const std::string pipe_stove =
    "[riser]\nbore = \"100 mm\"\ntop = \"1 m\"\n[heat]\npower = \"2 kW\"\n"
    "[burn]\nduration = \"7 min\"\nreserve_every = \"0 s\"\n";

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

/// Whether all that was printed may go to a terminal: lines of what is seen.
bool harmless(const ProgramRun& run) {
    return visible_lines(run.out) == run.out && visible_lines(run.err) == run.err;
}

/// Runs the program with a word that no shell need quote, `$word` in the arguments.
ProgramRun run_with(const ScratchFolder& folder, const std::string& word,
                    const std::string& arguments) {
    put(folder / ".word", word);
    return run_program(folder, arguments, "word=\"$(cat .word)\" && rm .word && $drawwell");
}

bool coloured(const ProgramRun& run) {
    return contains(run.out, "\x1b[");
}

}  // namespace

TEST_SUITE("cli/terminal_text") {
    TEST_CASE("a stove's texts hold nothing that a terminal would obey") {
        const ScratchFolder folder;
        for (const char* letter : {"\\n", "\\u001b", "\\u0007", "\\u007f", "\\u009b", "\\u202e",
                                   "\\u2066", "\\u2028", "\\t"}) {
            INFO(std::string(letter));
            put(folder / "pipe.toml",
                "title = \"kitchen" + std::string(letter) + "[31m\"\n" + pipe_stove);
            const ProgramRun run = run_program(folder, "burn pipe.toml");
            CHECK(run.code == 2);
            CHECK(contains(run.err, "pipe.toml:1:1: title = "));
            CHECK(contains(run.err, "a text can't hold the control character \\x"));
            CHECK(std::count(run.err.begin(), run.err.end(), '\n') == 1);
            CHECK(harmless(run));
        }
        CHECK_FALSE(std::filesystem::exists(folder / "pipe.h5"));
    }

    TEST_CASE("names of parts and keys hold none either, in the file or on the command line") {
        const ScratchFolder folder;
        put(folder / "pipe.toml", pipe_stove +
                                      "[flue.\"a\\u001b[31m\\nb\"]\nlength = \"1 m\"\n"
                                      "[\"x\\u001by\"]\nz = 1\n");
        ProgramRun run = run_program(folder, "burn pipe.toml");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "[flue.a\\x1b[31m\\x0ab]: a name is made of letters"));
        CHECK(std::count(run.err.begin(), run.err.end(), '\n') == 2);
        CHECK(harmless(run));
        put(folder / "pipe.toml", pipe_stove);
        for (const char* set : {"title=a\x1b[31mb", "title=a\nIt draws.", "ti\x1btle=a",
                                "pot.a\x1b.mass=1kg", "pot.a\nb.mass=1kg"}) {
            INFO(visible(set));
            run = run_with(folder, set, "burn pipe.toml --set \"$word\"");
            CHECK(run.code == 2);
            CHECK(harmless(run));
        }
    }

    TEST_CASE("file names are shown as they can be seen, in pages, errors and JSON") {
        const ScratchFolder folder;
        const std::string name = "a\x1b[31m\nIT DRAWS\xc2\x9b\xff.toml";
        put(folder / name, pipe_stove);
        const auto run = [&](const std::string& arguments) {
            return run_with(folder, name, arguments);
        };
        ProgramRun page = run("burn \"$word\"");
        CHECK(page.code == 0);
        CHECK(contains(page.out, "a\\x1b[31m\\x0aIT DRAWS\\xc2\\x9b\\xff.h5"));
        CHECK(harmless(page));
        ProgramRun json = run("burn \"$word\" --json");
        REQUIRE(nlohmann::json::accept(json.out));
        CHECK(harmless(json));
        CHECK(contains(nlohmann::json::parse(json.out)["stove"].get<std::string>(), "\x1b[31m"));
        for (const char* wrong :
             {"burn \"$word\" --set riser.top=1", "burn \"$word.none\"",
              "burn \"$word\" \"--$word\"", "\"$word\"", "export \"$word\" --columns \"$word\"",
              "compare \"$word\" --vary \"riser.top=$word\"",
              "find \"$word\" --smallest \"$word\" --where draws", "report \"$word\"",
              "burn \"$word\" -o \"$word\"",
              "compare \"$word\" --vary riser.top=1m:2m:1m --sort \"$word\"",
              "list keys \"$word\""}) {
            INFO(std::string(wrong));
            const ProgramRun refused = run(wrong);
            CHECK((refused.code == 2 || refused.code == 4));
            CHECK(refused.err != "");
            CHECK(harmless(refused));
            CHECK_FALSE(contains("\n" + refused.err, "\nIT DRAWS"));
        }
        const ProgramRun compared = run("compare \"$word\" --vary riser.top=1m,2cm");
        CHECK(harmless(compared));
        CHECK_FALSE(contains(compared.out, "\nIT DRAWS"));
    }

    TEST_CASE("colour is for terminals that take it and nobody who refuses it") {
        const ScratchFolder folder;
        put(folder / "pipe.toml", pipe_stove);
        const auto on_terminal = [&](const std::string& environment) {
            return run_program(folder, "",
                               "env -u NO_COLOR TERM=xterm " + environment +
                                   " script -qec \"$drawwell burn pipe.toml\" /dev/null");
        };
        CHECK(coloured(on_terminal("")));
        CHECK(coloured(on_terminal("NO_COLOR=")));
        CHECK_FALSE(coloured(on_terminal("NO_COLOR=1")));
        CHECK_FALSE(coloured(on_terminal("TERM=dumb")));
        CHECK_FALSE(coloured(run_program(folder, "burn pipe.toml")));
    }

    TEST_CASE("an unknown command is refused with the nearest") {
        const ScratchFolder folder;
        ProgramRun run = run_program(folder, "brun pipe.toml");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "no command is called \"brun\"; did you mean \"burn\"?"));
        run = run_program(folder, "xyzzy");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "`drawwell --help` names all"));
        run = run_program(folder, "burn pipe.toml --frce");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "--frce"));
        run = run_program(folder, "--verson");
        CHECK(run.code == 2);
    }
}
