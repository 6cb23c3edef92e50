#include "cli/commands/run_folder.h"

#include <doctest/doctest.h>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>

#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

namespace fs = std::filesystem;

/// While it lives, temporary files go to a folder.
class TemporaryFiles {
  public:
    explicit TemporaryFiles(const fs::path& folder) {
        if (const char* before = std::getenv("TMPDIR")) before_ = before;
        setenv("TMPDIR", folder.c_str(), 1);
    }
    ~TemporaryFiles() {
        if (before_.empty())
            unsetenv("TMPDIR");
        else
            setenv("TMPDIR", before_.c_str(), 1);
    }
    TemporaryFiles(const TemporaryFiles&) = delete;
    TemporaryFiles& operator=(const TemporaryFiles&) = delete;

  private:
    std::string before_;
};

/// Another process makes a folder with a file and a folder in it, and is killed.
void be_killed() {
    const pid_t other = fork();
    if (other == 0) {
        RunFolder folder;
        put(folder.place("page-1.svg"), "page");
        fs::create_directory(folder.place("profile"));
        put(folder.place("profile") / "cookies", "none");
        ::kill(getpid(), SIGKILL);
    }
    int status = 0;
    waitpid(other, &status, 0);
    REQUIRE(WIFSIGNALED(status));
}

fs::path only_one_in(const fs::path& folder) {
    REQUIRE(files_in(folder) == 1);
    return *fs::directory_iterator(folder);
}

}  // namespace

TEST_SUITE("cli/commands/run_folder") {
    TEST_CASE("a run's folder goes with all that was put there, and with nothing else") {
        const ScratchFolder scratch;
        const TemporaryFiles there(scratch / "");
        {
            RunFolder one, two;
            CHECK(one.place("a") != two.place("a"));
            put(one.place("page"), "page");
            fs::create_directory(one.place("profile"));
            put(one.place("profile") / "cookies", "none");
            CHECK(files_in(scratch / "") == 2);
        }
        CHECK(files_in(scratch / "") == 0);
        {
            RunFolder folder;
            put(folder.place("page").parent_path() / "letter", "mine");
        }
        CHECK(bytes_of(only_one_in(scratch / "") / "letter") == "mine");
    }

    TEST_CASE("what killed runs left is cleared away, not what runs at work need") {
        const ScratchFolder scratch;
        const TemporaryFiles there(scratch / "");
        be_killed();
        be_killed();
        CHECK(files_in(scratch / "") == 1);  // the second cleared the first's away
        RunFolder working;
        put(working.place("page"), "page");
        CHECK(files_in(scratch / "") == 1);
        clear_run_folders(scratch / "");
        CHECK(bytes_of(working.place("page")) == "page");
    }

    TEST_CASE("what a mark does not prove to be of a killed run stays") {
        const ScratchFolder scratch;
        const TemporaryFiles there(scratch / "");
        be_killed();
        const fs::path left = only_one_in(scratch / "");
        put(left / "letter", "mine");
        fs::create_directory(scratch / "drawwell-run-of-ponies");
        put(scratch / "drawwell-run-of-ponies/page-1.svg", "mine");
        put(scratch / "drawwell-run-of-ponies/drawwell-mark",
            "files of a drawwell at work on another machine\npage-1.svg\n");
        put(scratch / "drawwell-run-log", "mine");
        put(scratch / "outside", "mine");
        put(left / "drawwell-mark",
            bytes_of(left / "drawwell-mark") + "../outside\n..\nunfinished");
        put(left / "unfinished", "mine");
        clear_run_folders(scratch / "");
        CHECK(bytes_of(left / "letter") == "mine");
        CHECK(bytes_of(left / "unfinished") == "mine");
        CHECK_FALSE(fs::exists(left / "page-1.svg"));
        CHECK(bytes_of(scratch / "drawwell-run-of-ponies/page-1.svg") == "mine");
        CHECK(bytes_of(scratch / "drawwell-run-log") == "mine");
        CHECK(bytes_of(scratch / "outside") == "mine");
        fs::remove(left / "letter");
        fs::remove(left / "unfinished");
        clear_run_folders(scratch / "");
        CHECK_FALSE(fs::exists(left));
    }
}
