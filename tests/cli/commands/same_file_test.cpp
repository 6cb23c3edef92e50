#include "cli/commands/same_file.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <string>

#include "cli/report/pending_file.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

namespace fs = std::filesystem;

/// A file system that folds letters, as those of other systems do.
bool folding(const fs::path&, const fs::path& a, const fs::path& b) {
    const auto folded = [](std::string text) {
        for (char& c : text) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        return text;
    };
    return folded(a.string()) == folded(b.string());
}

}  // namespace

TEST_SUITE("cli/commands/same_file") {
    TEST_CASE("spelling and links hide no file, whether it is there or not") {
        const ScratchFolder folder;
        fs::create_directory(folder / "sub");
        fs::create_directory_symlink("sub", folder / "way");
        fs::create_symlink("y.h5", folder / "link");
        fs::create_symlink("link", folder / "link of link");
        fs::create_symlink("loop", folder / "loop");
        for (const bool there : {false, true}) {
            CAPTURE(there);
            if (there) put(folder / "y.h5", "y");
            CHECK(same_file(folder / "y.h5", folder / "./y.h5"));
            CHECK(same_file(folder / "y.h5", folder / "sub/../y.h5"));
            CHECK(same_file(folder / "sub/a", folder / "way/a"));
            CHECK(same_file(folder / "y.h5", folder / "link"));
            CHECK(same_file(folder / "link of link", folder / "y.h5"));
            CHECK_FALSE(same_file(folder / "y.h5", folder / "sub/y.h5"));
            CHECK_FALSE(same_file(folder / "y.h5", folder / "z.h5"));
            CHECK_THROWS_AS(same_file(folder / "loop", folder / "y.h5"), FileError);
        }
        fs::create_hard_link(folder / "y.h5", folder / "sub/hard");
        CHECK(same_file(folder / "y.h5", folder / "sub/hard"));
        CHECK(same_file(folder / "absent/y", folder / "absent/./y"));
        CHECK_FALSE(same_file(folder / "absent/y", folder / "absent/z"));
    }

    TEST_CASE("names in other letters are one file just where the folder folds them") {
        const ScratchFolder folder;
        CHECK(same_file(folder / "y.h5", folder / "Y.H5", folding));
        CHECK_FALSE(same_file(folder / "y.h5", folder / "z.h5", folding));
        // The folder itself is asked by default, and keeps no trace of it.
        put(folder / "trial", "");
        const bool folds = fs::exists(folder / "TRIAL");
        CHECK(same_file(folder / "y.h5", folder / "Y.H5") == folds);
        CHECK(takes_for_one(folder / "", "y", "y"));
        CHECK_FALSE(takes_for_one(folder / "", "y", "z"));
        CHECK_FALSE(takes_for_one(folder / "absent", "y", "y"));
        CHECK(files_in(folder / "") == 1);
    }
}
