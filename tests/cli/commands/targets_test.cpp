#include "cli/commands/targets.h"

#include <doctest/doctest.h>

#include "cli/report/pending_file.h"
#include "solver/errors.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

TEST_SUITE("cli/commands/targets") {
    TEST_CASE("a result is called after the stove file unless it is named") {
        CHECK(result_target("", "stoves/kitchen.toml", "-draw.svg", "draw.svg") ==
              "kitchen-draw.svg");
        CHECK(result_target("", "-", "-draw.svg", "draw.svg") == "draw.svg");
        CHECK(result_target("out/a.svg", "-", "-draw.svg", "draw.svg") == "out/a.svg");
        CHECK(table_target("", "out/a.svg") == "out/a.csv");
        CHECK(table_target("t.txt", "out/a.svg") == "t.txt");
        CHECK_THROWS_AS(table_target("", "a.csv"), InputError);
    }

    TEST_CASE("a file of another's is refused unless forced, a folder always") {
        const ScratchFolder folder;
        put(folder / "letter", "a letter");
        CHECK_THROWS_AS(check_target(folder / "letter", false, false), InputError);
        CHECK_NOTHROW(check_target(folder / "letter", true, false));
        CHECK_NOTHROW(check_target(folder / "letter", false, true));
        CHECK_NOTHROW(check_target(folder / "new", false, false));
        CHECK_THROWS_AS(check_target(folder / "", true, true), FileError);
        CHECK_THROWS_AS(check_target(folder / "absent/new", false, false), FileError);
        CHECK(files_in(folder / "") == 1);
    }
}
