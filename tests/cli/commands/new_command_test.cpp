#include "cli/commands/new_command.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include "cli/report/pending_file.h"
#include "tests/cli/read/small_stove.h"

using namespace drawwell;

namespace {

std::string content(const std::filesystem::path& path) {
    std::ifstream file(path);
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

}  // namespace

TEST_SUITE("cli/commands/new_command") {
    TEST_CASE("new writes a file that reads, and replaces one only when forced") {
        const auto folder = std::filesystem::temp_directory_path() / "drawwell_new_command_test";
        std::filesystem::remove_all(folder);
        std::filesystem::create_directory(folder);
        const auto path = folder / "stove.toml";
        CHECK(run_new({.file = path.string(), .bore = "6 in", .drum = "120l"})
                  .find("drawwell burn") != std::string::npos);
        CHECK(tests::read(content(path)).riser.bore == doctest::Approx(0.1524));

        std::ofstream(path) << "mine";
        CHECK_THROWS_AS(run_new({.file = path.string(), .bore = {}, .drum = {}}), InputError);
        CHECK(content(path) == "mine");
        run_new({.file = path.string(), .bore = {}, .drum = {}, .force = true});
        CHECK(content(path) != "mine");
        CHECK_THROWS_AS(
            run_new({.file = (folder / "no" / "such").string(), .bore = {}, .drum = {}}),
            FileError);
        std::filesystem::remove_all(folder);
    }

    TEST_CASE("without a file the text itself is what is printed") {
        CHECK(tests::read(run_new({.file = {}, .bore = "125mm", .drum = {}})).riser.bore == 0.125);
    }

    TEST_CASE("sizes that can't be understood are refused with their option") {
        try {
            run_new({.file = {}, .bore = "125 kg", .drum = {}});
            FAIL("it was taken");
        } catch (const InputError& error) {
            CHECK(std::string(error.what()).find("--bore 125 kg: kg is a unit of mass") == 0);
        }
    }
}
