#include <doctest/doctest.h>

#include <vector>

#include "cli/report/file_kind.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

const std::string stove = " $sources/data/stoves/allotment-kitchen.toml ";

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

/// Under a shell that lets no file grow beyond so many half kB.
std::string limited_to(int blocks) {
    return "ulimit -f " + std::to_string(blocks) + " && $drawwell";
}

}  // namespace

TEST_SUITE("cli/main") {
    TEST_CASE("what finds no room on standard output ends with code 4 whatever was printed") {
        const ScratchFolder folder;
        for (const char* words : {"--help", "--version", "burn --help", "list keys", "list woods",
                                  "list materials", "list columns", "list build-ups", "new"}) {
            CAPTURE(words);
            const ProgramRun run =
                run_program(folder, "-c '$drawwell " + std::string(words) + " >/dev/full'", "sh");
            CHECK(run.code == 4);
            CHECK(run.err == "cannot write standard output (No space left on device)\n");
            CHECK(run_program(folder, words).code == 0);
        }
    }

    TEST_CASE("a closed pipe and a closed standard output end with code 4 and a message") {
        const ScratchFolder folder;
        // A pipe without a reader.
        put(folder / "unread", "mkfifo pipe; exec 3<>pipe 4>pipe 3>&-; $drawwell list keys >&4");
        const ProgramRun pipe = run_program(folder, "unread", "sh");
        CHECK(pipe.code == 4);
        CHECK(contains(pipe.err, "Broken pipe"));
        const ProgramRun closed = run_program(folder, "-c '$drawwell list keys >&-'", "sh");
        CHECK(closed.code == 4);
        CHECK(contains(closed.err, "Bad file descriptor"));
    }

    TEST_CASE("no file takes the place of a standard stream that was closed") {
        const ScratchFolder folder;
        // Its journal would be the first to be opened.
        const ProgramRun run =
            run_program(folder,
                        "-c '$drawwell compare" + stove +
                            "--for 1min --set burn.reserve_every=0s --vary riser.top=600mm,650mm "
                            "-o c.h5 <&- >&- 2>&-'",
                        "sh");
        CHECK(run.code == 4);
        const std::string kept = bytes_of(folder / "c.rows.jsonl");
        CHECK(contains(kept, "\"answers\""));
        CHECK_FALSE(contains(kept, "as filed"));
        CHECK(kind_of_file(folder / "c.h5") == FileKind::comparison);
    }

    TEST_CASE("whatever room is left a failed result says so and leaves the earlier one") {
        const ScratchFolder folder;
        const std::string burn = " burn" + stove + "--for 5min --quiet -o a.h5 ";
        REQUIRE(run_program(folder, burn).code == 0);
        const std::string before = bytes_of(folder / "a.h5");
        const int blocks = static_cast<int>(before.size() / 512);
        for (const int room : {1, blocks / 10, blocks / 2, blocks - 20, blocks - 1}) {
            CAPTURE(room);
            const ProgramRun run = run_program(folder, burn, limited_to(room));
            CHECK(run.code == 4);
            CHECK(run.err == "cannot write a.h5 (File too large)\n");
            CHECK(bytes_of(folder / "a.h5") == before);
            CHECK(files_in(folder / "") == 1);
        }
    }

    TEST_CASE("a table and a page that find no room are told like a result") {
        const ScratchFolder folder;
        REQUIRE(run_program(folder, " burn" + stove + "--for 5min --quiet -o a.h5").code == 0);
        const std::vector<std::string> all = {" export a.h5 --csv a.csv", " report a.h5 -o a.html",
                                              " plot a.h5 --columns drive -o a.svg", " new a.toml",
                                              " sheet" + stove + "-o sheet.svg"};
        for (const std::string& words : all) {
            CAPTURE(words);
            const ProgramRun run = run_program(folder, words, limited_to(1));
            CHECK(run.code == 4);
            CHECK(contains(run.err, "(File too large)"));
            CHECK(files_in(folder / "") == 1);
        }
    }

    TEST_CASE("a comparison that finds no room keeps its rows, and goes on once there is some") {
        const ScratchFolder folder;
        const std::string compare = " compare" + stove +
                                    "--for 1min --set burn.reserve_every=0s --vary "
                                    "riser.top=600mm,650mm,700mm -o c.h5 --quiet ";
        REQUIRE(run_program(folder, compare).code == 0);
        const std::string before = bytes_of(folder / "c.h5");
        const int blocks = static_cast<int>(before.size() / 512);
        CHECK(run_program(folder, compare, limited_to(0)).code == 4);
        CHECK(files_in(folder / "") == 1);  // not even a journal could be begun
        ProgramRun run = run_program(folder, compare + "--threads 1", limited_to(9));
        CHECK(run.code == 4);
        CHECK(contains(run.err, "c.rows.jsonl (File too large); what was finished is kept"));
        CHECK(bytes_of(folder / "c.h5") == before);
        run = run_program(folder, compare + "--resume", limited_to(blocks - 1));
        CHECK(run.code == 4);
        CHECK(bytes_of(folder / "c.h5") == before);
        CHECK(files_in(folder / "") == 2);
        CHECK(run_program(folder, compare + "--resume").code == 0);
        CHECK(bytes_of(folder / "c.h5") == before);
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("a disk that is full is told likewise") {
        const ScratchFolder folder;
        std::filesystem::create_directory(folder / "disk");
        const std::string burn = "$drawwell burn" + stove + "--for 5min --quiet -o a.h5";
        put(folder / "try", "set -e\n" + burn +
                                "\n"
                                "for size in 160 200 240 280; do\n"
                                "  mount -t tmpfs -o size=${size}k none disk\n"
                                "  cp a.h5 disk && cd disk\n"
                                "  " +
                                burn +
                                " && exit 1\n"
                                "  echo $? $(ls -A)\n"
                                "  cmp a.h5 ../a.h5\n"
                                "  cd .. && umount disk\n"
                                "done\n");
        if (run_program(folder, "mount -t tmpfs none disk", "unshare -rm").code != 0) {
            MESSAGE("not tried: no file system can be mounted here");
            return;
        }
        const ProgramRun run = run_program(folder, "sh try", "unshare -rm");
        CHECK(run.code == 0);
        CHECK(run.out == "4 a.h5\n4 a.h5\n4 a.h5\n4 a.h5\n");
        CHECK(contains(run.err, "cannot write a.h5 (No space left on device)\n"));
    }

    TEST_CASE("a symlink given as a result stays one, and what it names is written") {
        const ScratchFolder folder;
        std::filesystem::create_directory(folder / "elsewhere");
        std::filesystem::create_symlink("elsewhere/run.h5", folder / "a.h5");
        for (int time = 0; time < 2; ++time) {
            CHECK(run_program(folder, " burn" + stove + "--for 1min --quiet -o a.h5").code == 0);
            CHECK(std::filesystem::is_symlink(folder / "a.h5"));
            CHECK(kind_of_file(folder / "elsewhere/run.h5") == FileKind::result);
            CHECK(files_in(folder / "elsewhere") == 1);
        }
    }

    TEST_CASE("names as long as file systems take them do for stove files and results") {
        const ScratchFolder folder;
        const std::string short_name(250, 'x'), long_name(252, 'y');
        const std::string file = short_name + ".toml", result = long_name + ".h5";
        std::filesystem::copy_file(DRAWWELL_SOURCES "/data/stoves/allotment-kitchen.toml",
                                   folder / file);
        const std::string few = " --for 1min --set burn.reserve_every=0s --quiet ";
        CHECK(run_program(folder, " burn " + file + few + "--csv --report -o " + result).code == 0);
        CHECK(kind_of_file(folder / result) == FileKind::result);
        CHECK(run_program(folder, " compare " + file + few + "--vary riser.top=600mm,650mm --csv")
                  .code == 0);
        CHECK(run_program(folder, " compare " + file + few + "--vary riser.top=600mm,650mm -o z" +
                                      result.substr(1))
                  .code == 0);
        CHECK(run_program(folder, " sheet " + file + " --quiet").code == 0);
        // The stove, a result with its table and page, two comparisons and a sheet.
        CHECK(files_in(folder / "") == 7);
    }
}
