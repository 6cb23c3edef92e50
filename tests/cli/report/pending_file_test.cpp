#include "cli/report/pending_file.h"

#include <doctest/doctest.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include <csignal>

#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

namespace fs = std::filesystem;

/// While it lives, no file of this process grows beyond a size: as on a full disk.
class SizeLimit {
  public:
    explicit SizeLimit(rlim_t bytes) : handler_(std::signal(SIGXFSZ, SIG_IGN)) {
        getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit limit{bytes, before_.rlim_max};
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~SizeLimit() {
        setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }
    SizeLimit(const SizeLimit&) = delete;
    SizeLimit& operator=(const SizeLimit&) = delete;

  private:
    rlimit before_ = {};
    void (*handler_)(int);
};

}  // namespace

TEST_SUITE("cli/report/pending_file") {
    TEST_CASE("a file is written, or replaces an earlier one, and nothing else is left") {
        const ScratchFolder folder;
        write_whole(folder / "run", "old");
        CHECK(bytes_of(folder / "run") == "old");
        write_whole(folder / "run", "new");
        CHECK(bytes_of(folder / "run") == "new");
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("what could not be written whole leaves the earlier file and nothing besides") {
        const ScratchFolder folder;
        put(folder / "run", "old");
        {
            const SizeLimit limit(100);
            CHECK_THROWS_WITH_AS(write_whole(folder / "run", std::string(101, 'x')),
                                 doctest::Contains("run (File too large)"), FileError);
            CHECK_THROWS_AS(write_whole(folder / "other", std::string(5000, 'x')), FileError);
        }
        CHECK(bytes_of(folder / "run") == "old");
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("through a symlink what it names is written, be it there or not") {
        const ScratchFolder folder;
        fs::create_directory(folder / "sub");
        put(folder / "sub/run", "old");
        fs::create_symlink("sub/run", folder / "link");
        fs::create_symlink("link", folder / "chain");
        fs::create_symlink(folder / "sub/absent", folder / "ahead");
        write_whole(folder / "chain", "new");
        write_whole(folder / "ahead", "first");
        for (const char* link : {"link", "chain", "ahead"}) CHECK(fs::is_symlink(folder / link));
        CHECK(bytes_of(folder / "sub/run") == "new");
        CHECK(bytes_of(folder / "sub/absent") == "first");
        fs::create_symlink("round", folder / "round");
        CHECK_THROWS_WITH_AS(check_writable(folder / "round"), doctest::Contains("symbolic links"),
                             FileError);
    }

    TEST_CASE("a file keeps who may read it") {
        const ScratchFolder folder;
        put(folder / "run", "old");
        fs::permissions(folder / "run", fs::perms::owner_read | fs::perms::owner_write);
        write_whole(folder / "run", "new");
        CHECK(fs::status(folder / "run").permissions() ==
              (fs::perms::owner_read | fs::perms::owner_write));
    }

    TEST_CASE("a name may be as long as file systems take it") {
        const ScratchFolder folder;
        const std::string longest(255, 'x');
        write_whole(folder / longest, "new");
        CHECK(bytes_of(folder / longest) == "new");
        CHECK_THROWS_WITH_AS(check_writable(folder / (longest + "x")),
                             doctest::Contains("File name too long"), FileError);
    }

    TEST_CASE("a target that cannot be written is refused with its name and the reason") {
        const ScratchFolder folder;
        CHECK_THROWS_WITH_AS(check_writable(folder / "absent/run"),
                             doctest::Contains("absent/run (No such file or directory)"),
                             FileError);
        CHECK_THROWS_WITH_AS(check_writable(folder / ""), doctest::Contains("Is a directory"),
                             FileError);
        REQUIRE(mkfifo((folder / "pipe").c_str(), 0600) == 0);
        CHECK_THROWS_WITH_AS(write_whole(folder / "pipe", "text"),
                             doctest::Contains("not a plain file"), FileError);
        CHECK(fs::is_fifo(folder / "pipe"));
    }

    TEST_CASE("asking whether a file can be written creates none") {
        const ScratchFolder folder;
        check_writable(folder / "run");
        CHECK(files_in(folder / "") == 0);
    }
}
