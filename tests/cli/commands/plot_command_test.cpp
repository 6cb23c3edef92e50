#include "cli/commands/plot_command.h"

#include <doctest/doctest.h>

#include "cli/report/write_hdf5.h"
#include "tests/cli/report/sample_run.h"
#include "tests/cli/report/svg_reading.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

TEST_SUITE("cli/commands/plot") {
    TEST_CASE("a figure is written, named after the result unless told otherwise") {
        const ScratchFolder folder;
        write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record());
        CHECK(run_program(folder, " plot run.h5 --columns plate_temperature").code == 0);
        CHECK(well_formed(bytes_of(folder / "run.svg")));
        // Of two units, and over the first, which is ours.
        CHECK(run_program(folder, " plot run.h5 --columns plate_temperature,spare_draw").code == 0);
        CHECK(run_program(folder, " plot run.h5 --columns spare_draw -o run.svg").code == 0);
        CHECK(run_program(folder, " plot run.h5 --columns spare_draw -o b.svg").code == 0);
        CHECK(files_in(folder / "") == 3);
    }

    TEST_CASE("a figure without series is refused, and so is another's file in its place") {
        const ScratchFolder folder;
        write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record());
        put(folder / "run.svg", "<svg>a drawing</svg>");
        CHECK(run_program(folder, " plot run.h5 -o a.svg").code == 2);
        CHECK(run_program(folder, " plot run.h5 --columns spare_draw").code == 2);
        CHECK(bytes_of(folder / "run.svg") == "<svg>a drawing</svg>");
        CHECK(run_program(folder, " plot run.h5 --columns spare_draw --force").code == 0);
    }
}
