#include "cli/commands/export_command.h"

#include <doctest/doctest.h>

#include "cli/report/write_hdf5.h"
#include "tests/cli/report/sample_run.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

void put_run(const ScratchFolder& folder) {
    write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record());
}

}  // namespace

TEST_SUITE("cli/commands/export") {
    TEST_CASE("a table is printed, or written where it is told, with its units in the header") {
        const ScratchFolder folder;
        put_run(folder);
        const ProgramRun run =
            run_program(folder, " export run.h5 --columns spare_draw --every 1min");
        CHECK(run.code == 0);
        CHECK(run.err == "");
        CHECK(run.out == "time_s,spare_draw_pa,drawwell_table\n0,4.5,series 1\n60,6.5,series 1\n");
        const ProgramRun file = run_program(
            folder, " export run.h5 --columns spare_draw,plate_temperature --csv out.csv");
        CHECK(file.code == 0);
        CHECK(file.out == "");
        CHECK(bytes_of(folder / "out.csv")
                  .starts_with("time_s,spare_draw_pa,plate_temperature_c[0.05m],"));
    }

    TEST_CASE("what cannot be exported is refused, with nothing left behind") {
        const ScratchFolder folder;
        put_run(folder);
        // Headed as the help of `report --log` says.
        put(folder / "letter.csv", "time_s,plate_temperature_c\n60,95\n");
        CHECK(run_program(folder, " export none.h5").code == 4);
        const ProgramRun unknown = run_program(folder, " export run.h5 --columns spare_drew");
        CHECK(unknown.code == 2);
        CHECK(contains(unknown.err, "did you mean \"spare_draw\"?"));
        CHECK(run_program(folder, " export run.h5 --every 0s").code == 2);
        CHECK(run_program(folder, " export run.h5 --every soon").code == 2);
        CHECK(run_program(folder, " export run.h5 --csv letter.csv").code == 2);
        CHECK(bytes_of(folder / "letter.csv") == "time_s,plate_temperature_c\n60,95\n");
        CHECK(run_program(folder, " export run.h5 --csv ./run.h5 --force").code == 2);
        CHECK(run_program(folder, " export letter.csv").code == 2);
        CHECK(files_in(folder / "") == 2);
    }
}
