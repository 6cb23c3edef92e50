#include "cli/commands/targets.h"

#include <doctest/doctest.h>

#include <vector>

#include "cli/report/pending_file.h"
#include "cli/report/write_csv.h"
#include "solver/errors.h"
#include "tests/cli/report/sample_run.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

/// Why these are refused; empty: they are not.
std::string refusal(const std::vector<Output>& outputs, const std::vector<Input>& inputs = {},
                    bool force = false, const NameJudge& one_name = takes_for_one) {
    try {
        check_outputs(outputs, inputs, force, one_name);
    } catch (const InputError& error) {
        return error.what();
    }
    return "";
}

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/commands/targets") {
    TEST_CASE("a result is called after the stove file unless it is named") {
        CHECK(result_target("", "stoves/kitchen.toml", "-draw.svg", "draw.svg") ==
              "kitchen-draw.svg");
        CHECK(result_target("", "-", "-draw.svg", "draw.svg") == "draw.svg");
        CHECK(result_target("out/a.svg", "-", "-draw.svg", "draw.svg") == "out/a.svg");
        CHECK(table_target("", "out/a.svg") == "out/a.csv");
        CHECK(table_target("t.txt", "out/a.svg") == "t.txt");
    }

    TEST_CASE("what is not of the kind to be written is refused unless forced, a folder always") {
        const ScratchFolder folder;
        put(folder / "letter", "a letter");
        write_csv(folder / "a.csv", sample_results());
        const Output letter{"--csv", folder / "letter", FileKind::series_table};
        CHECK(contains(refusal({letter}),
                       "letter exists and is not a table of series that "
                       "drawwell wrote: name another with --csv"));
        CHECK(refusal({letter}, {}, true).empty());
        CHECK(refusal({{"--csv", folder / "a.csv", FileKind::series_table}}).empty());
        CHECK(contains(refusal({{"-o", folder / "a.csv", FileKind::result}}),
                       "but a table of series: name another with -o"));
        CHECK(refusal({{"-o", folder / "new", FileKind::result}}).empty());
        CHECK(contains(refusal({{"--save", folder / "letter", FileKind::stove}}), "exists"));
        for (const bool force : {false, true}) {
            CHECK_THROWS_AS(refusal({{"-o", folder / "", FileKind::result}}, {}, force), FileError);
            CHECK_THROWS_AS(refusal({{"-o", "/dev/null", FileKind::result}}, {}, force), FileError);
            CHECK_THROWS_AS(refusal({{"-o", folder / "absent/new", FileKind::result}}, {}, force),
                            FileError);
        }
        CHECK(files_in(folder / "") == 2);
    }

    TEST_CASE("two outputs that are one file are refused by both their names, forced or not") {
        const ScratchFolder folder;
        std::filesystem::create_symlink("y.h5", folder / "link");
        for (const char* other : {"y.h5", "./y.h5", "link"}) {
            const std::vector<Output> both{{"-o", folder / "y.h5", FileKind::result},
                                           {"--csv", folder / other, FileKind::series_table}};
            for (const bool force : {false, true}) {
                const std::string why = refusal(both, {}, force);
                CHECK(contains(why, "-o ("));
                CHECK(contains(why, "--csv ("));
                CHECK(contains(why, "are one file"));
            }
        }
        const auto folds = [](const auto&, const auto&, const auto&) { return true; };
        const std::vector<Output> cases{{"-o", folder / "y", FileKind::result},
                                        {"--csv", folder / "Y", FileKind::series_table}};
        CHECK(contains(refusal(cases, {}, false, folds), "are one file"));
    }

    TEST_CASE("an input is replaced by nothing, but by its own kind if forced") {
        const ScratchFolder folder;
        put(folder / "s.toml", "title = \"s\"\n");
        const std::vector<Input> inputs{{"the stove file", folder / "s.toml", FileKind::stove}};
        for (const bool force : {false, true})
            CHECK(contains(refusal({{"-o", folder / "./s.toml", FileKind::result}}, inputs, force),
                           "would replace the stove file: name another with -o"));
        const std::vector<Output> saved{{"--save", folder / "s.toml", FileKind::stove}};
        CHECK(contains(refusal(saved, inputs), "or replace it with --force"));
        CHECK(refusal(saved, inputs, true).empty());
    }
}
