#include "cli/report/pending_file.h"

#include <doctest/doctest.h>

#include "tests/cli/scratch_folder.h"

using namespace drawwell;

TEST_SUITE("cli/report/pending_file") {
    TEST_CASE("a file keeps its old content until the new one is committed") {
        const ScratchFolder folder;
        put(folder / "run", "old");
        PendingFile pending(folder / "run");
        put(pending.path(), "new");
        CHECK(bytes_of(folder / "run") == "old");
        pending.commit();
        CHECK(bytes_of(folder / "run") == "new");
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("what is not committed leaves nothing behind") {
        const ScratchFolder folder;
        put(folder / "run", "old");
        {
            const PendingFile pending(folder / "run");
            put(pending.path(), "half");
        }
        CHECK(bytes_of(folder / "run") == "old");
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("a target that cannot be written is refused with its name and the reason") {
        const ScratchFolder folder;
        CHECK_THROWS_WITH_AS(check_writable(folder / "absent/run"),
                             doctest::Contains("absent/run (No such file or directory)"),
                             FileError);
        CHECK_THROWS_WITH_AS(check_writable(folder / ""), doctest::Contains("Is a directory"),
                             FileError);
    }

    TEST_CASE("asking whether a file can be written creates none") {
        const ScratchFolder folder;
        check_writable(folder / "run");
        CHECK(files_in(folder / "") == 0);
    }
}
