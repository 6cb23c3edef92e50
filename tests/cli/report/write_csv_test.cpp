#include "cli/report/write_csv.h"

#include <doctest/doctest.h>

#include <limits>

#include "cli/report/pending_file.h"
#include "tests/cli/report/sample_run.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

TEST_SUITE("cli/report/write_csv") {
    TEST_CASE("a row an instant, a field a cell, temperatures in degrees Celsius") {
        CHECK(csv_text(sample_results()) ==
              "time_s,spare_draw_pa,plate_temperature_c[0.05m],plate_temperature_c[0.15m],"
              "drawwell_table\n"
              "0,4.5,6.85,7.85,series 1\n"
              "30,5.5,106.85,87.85,series 1\n"
              "60,6.5,206.85,167.85,series 1\n");
    }

    TEST_CASE("what is not a number is left empty") {
        Results results = sample_results();
        results.columns[0].values[1] = std::numeric_limits<double>::quiet_NaN();
        results.columns[1].values[5] = std::numeric_limits<double>::infinity();
        const std::string text = csv_text(results);
        CHECK(text.find("\n30,,106.85,87.85,series 1\n") != std::string::npos);
        CHECK(text.ends_with("\n60,6.5,206.85,,series 1\n"));
    }

    TEST_CASE("cells whose positions look alike are numbered instead") {
        Results results = sample_results();
        results.axes[0].positions = {0.05, 0.0500001};
        CHECK(csv_text(results).find("plate_temperature_c[0],plate_temperature_c[1],") !=
              std::string::npos);
    }

    TEST_CASE("units end the names of columns, but shares have none") {
        Results results = sample_results();
        results.columns = {{"air_flow", "kg/s", "", "", 1, {1, 2, 3}},
                           {"oxygen", "1", "", "", 1, {0.1, 0.2, 0.2}}};
        CHECK(csv_text(results).starts_with("time_s,air_flow_kg_s,oxygen,drawwell_table\n"));
    }

    TEST_CASE("a table that cannot be written is an error") {
        const ScratchFolder folder;
        CHECK_THROWS_AS(write_csv(folder / "absent/run.csv", sample_results()), FileError);
    }
}
