#include "cli/commands/start_from.h"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/report/write_hdf5.h"
#include "tests/cli/read/small_stove.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

EndState with_embers(double embers) {
    EndState end;
    end.state.time = 3 * 3600;
    LeftLot left;
    left.state[2] = embers;
    end.state.left = {left};
    return end;
}

/// A folder with the small stove and a result of some minutes of it.
void prepare(const ScratchFolder& folder) {
    put(folder / "s.toml", tests::small_stove);
    REQUIRE(run_program(folder, " burn s.toml --for 20min --quiet -o first.h5").code == 0);
}

}  // namespace

TEST_SUITE("cli/commands/start_from") {
    TEST_CASE("kindling is spared over embers unless somebody names it") {
        Stove silent = tests::read(tests::small_stove);
        CHECK(begin_from(with_embers(0.05), silent).size() == 1);
        CHECK_FALSE(silent.kindling);
        Stove named = tests::read(tests::small_stove, {"kindling.side=10 mm"});
        CHECK(begin_from(with_embers(0.05), named).empty());
        CHECK(named.kindling);
        Stove table = tests::read(std::string(tests::small_stove) + "[kindling]\n");
        CHECK(begin_from(with_embers(0.05), table).empty());
        Stove out = tests::read(tests::small_stove);
        CHECK(begin_from(with_embers(0), out).empty());
        CHECK(out.kindling);
    }

    TEST_CASE("a run that was stopped early is owned up to") {
        EndState end = with_embers(0);
        end.complete = false;
        Stove stove = tests::read(tests::small_stove);
        const auto remarks = begin_from(end, stove);
        REQUIRE(remarks.size() == 1);
        CHECK(contains(remarks[0], "stopped early"));
    }

    TEST_CASE("a burn goes on from a result, and page, JSON and file say from which") {
        const ScratchFolder folder;
        prepare(folder);
        const ProgramRun run =
            run_program(folder, " burn s.toml --start-from first.h5 --for 10min -o then.h5");
        CHECK(run.err == "");
        REQUIRE(run.code == 0);
        CHECK(contains(run.out, "small, 10 min\n  begun from first.h5 as it stood after 20 min"));
        CHECK(contains(run.out, "no kindling was lit"));
        CHECK_FALSE(contains(run.out, "from lighting"));
        CHECK(read_end_state(folder / "then.h5").state.time == 600);
        const ProgramRun again = run_program(
            folder, " burn s.toml --start-from first.h5 --for 10min --json -o again.h5");
        CHECK(nlohmann::json::parse(again.out)["started_from"] == "first.h5");
        CHECK(contains(bytes_of(folder / "again.h5"), "started_from_created"));
        CHECK_FALSE(contains(bytes_of(folder / "first.h5"), "started_from"));
    }

    TEST_CASE("a mismatched stove, an unfit file and the run's own name are refused") {
        const ScratchFolder folder;
        prepare(folder);
        const std::string from = " burn s.toml --for 10min --start-from ";
        ProgramRun run = run_program(folder, from + "first.h5 -o x.h5 --set burn.refine=2");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "another stove"));
        CHECK(run_program(folder, from + "s.toml").code == 2);
        CHECK(run_program(folder, from + "none.h5").code == 4);
        const std::string before = bytes_of(folder / "first.h5");
        run = run_program(folder, from + "first.h5 -o first.h5");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "name another with -o"));
        CHECK(bytes_of(folder / "first.h5") == before);
        CHECK(run_program(folder, from + "first.h5 -o first.h5 --force --quiet").code == 0);
    }

    TEST_CASE("help shows how to go on from an earlier burn") {
        const ScratchFolder folder;
        CHECK(contains(run_program(folder, " burn --help").out, "--start-from kitchen.h5"));
    }
}
