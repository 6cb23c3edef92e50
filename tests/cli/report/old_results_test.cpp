#include <H5Cpp.h>
#include <doctest/doctest.h>

#include "cli/report/read_result.h"
#include "cli/report/schema_versions.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

namespace fs = std::filesystem;

const std::string kept = "$sources/tests/cli/report/results/";

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

/// Sets a version in a result's root or in one of its groups.
void set_version(const fs::path& file, const std::string& group, const char* name, int version) {
    const H5::H5File hdf5(file.string(), H5F_ACC_RDWR);
    hdf5.openGroup(group).openAttribute(name).write(H5::PredType::NATIVE_INT, &version);
}

}  // namespace

TEST_SUITE("cli/report/old_results") {
    TEST_CASE("results of every version there was open in report and export and plot") {
        const ScratchFolder folder;
        int versions = 0;
        for (const auto& each :
             fs::directory_iterator(DRAWWELL_SOURCES "/tests/cli/report/results")) {
            if (each.path().extension() != ".h5") continue;
            ++versions;
            CAPTURE(each.path().string());
            const std::string file = kept + each.path().filename().string();
            ProgramRun run = run_program(folder, " report " + file + " -o page.html");
            CHECK(run.err == "");
            CHECK(run.code == 0);
            CHECK(contains(bytes_of(folder / "page.html"), "invented demo"));
            run = run_program(folder, " export " + file + " --columns plate_temperature");
            CHECK(run.code == 0);
            CHECK(contains(run.out, "\n120,"));
            run = run_program(folder, " plot " + file + " --columns plate_temperature -o a.svg");
            CHECK(run.code == 0);
            const BurnResult old = read_result(each.path());
            CHECK(old.results.time.back() == 120);
            CHECK(old.summary.heat_released > 0);
            CHECK(old.results.find("plate_temperature") != nullptr);
        }
        // One is added whenever the version is raised.
        CHECK(versions == result_schema_version);
    }

    TEST_CASE("a burn does not begin from a result of another model version and says what to do") {
        const ScratchFolder folder;
        const std::string stove = " burn $sources/data/stoves/allotment-kitchen.toml --for 1min ";
        REQUIRE(run_program(folder, stove + "--quiet -o first.h5").code == 0);
        set_version(folder / "first.h5", "end_state", "model_version", model_version + 1);
        const ProgramRun run = run_program(folder, stove + "--start-from first.h5 -o then.h5");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "of model version " + std::to_string(model_version + 1)));
        CHECK(contains(run.err, "burn it again with this program"));
        // To be looked at, it is as good as ever.
        CHECK(run_program(folder, " report first.h5").code == 0);
    }

    TEST_CASE("a state that says no version is of the first") {
        const ScratchFolder folder;
        const fs::path old = DRAWWELL_SOURCES "/tests/cli/report/results/schema-1.h5";
        std::string text = read_result(old).record.stove_text;
        put(folder / "demo.toml", text);
        const ProgramRun run =
            run_program(folder,
                        " burn demo.toml --set burn.refine=0.25 --for 1min --quiet -o then.h5 "
                        "--start-from " +
                            kept + "schema-1.h5");
        CHECK(run.code == (model_version == 1 ? 0 : 2));
        CHECK(contains(run.err, "of model version 1") == (model_version != 1));
    }

    TEST_CASE("a result in a later layout is refused with the program that wrote it") {
        const ScratchFolder folder;
        const std::string stove = " burn $sources/data/stoves/allotment-kitchen.toml --for 1min ";
        REQUIRE(run_program(folder, stove + "--quiet -o first.h5").code == 0);
        set_version(folder / "first.h5", "/", "schema_version", result_schema_version + 1);
        for (const std::string& arguments :
             {std::string(" report first.h5"), std::string(" export first.h5"),
              stove + "--start-from first.h5 -o then.h5"}) {
            CAPTURE(arguments);
            const ProgramRun run = run_program(folder, arguments);
            CHECK(run.code == 2);
            CHECK(contains(run.err, "drawwell 0.1.0 wrote it in a layout of version " +
                                        std::to_string(result_schema_version + 1)));
            CHECK(contains(run.err, "use that drawwell, or a later one"));
        }
    }
}
