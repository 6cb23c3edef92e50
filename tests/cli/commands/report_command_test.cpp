#include "cli/commands/report_command.h"

#include <doctest/doctest.h>

#include "cli/report/file_kind.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

const std::string burn = " burn $sources/data/stoves/allotment-kitchen.toml --for 5min --quiet ";

}  // namespace

TEST_SUITE("cli/commands/report") {
    TEST_CASE("a burn leaves its page when asked, and the same page is made of its result later") {
        const ScratchFolder folder;
        CHECK(run_program(folder, burn + "-o a.h5 --report").code == 0);
        CHECK(kind_of_file(folder / "a.html") == FileKind::page);
        const ProgramRun report = run_program(folder, " report a.h5 -o later.html");
        CHECK(report.code == 0);
        CHECK(report.out == "");
        CHECK(report.err == "");
        CHECK(bytes_of(folder / "later.html") == bytes_of(folder / "a.html"));
        CHECK(run_program(folder, " report a.h5").code == 0);  // over its own
        CHECK(files_in(folder / "") == 3);
    }

    TEST_CASE("results of the same name are told apart by their folders") {
        const ScratchFolder folder;
        std::filesystem::create_directory(folder / "old");
        CHECK(run_program(folder, burn + "-o a.h5").code == 0);
        std::filesystem::copy_file(folder / "a.h5", folder / "old/a.h5");
        CHECK(run_program(folder, " report a.h5 old/a.h5 -o both.html").code == 0);
        CHECK(contains(bytes_of(folder / "both.html"), "<th scope=\"col\">old/a.h5</th>"));
    }

    TEST_CASE("what cannot be shown is refused, and a file of another's is kept") {
        const ScratchFolder folder;
        put(folder / "a.html", "<!DOCTYPE html><p>a letter</p>");
        put(folder / "a.h5", "no result");
        CHECK(run_program(folder, " report none.h5").code == 4);
        CHECK(run_program(folder, " report a.h5 -o b.html").code == 2);
        CHECK(run_program(folder, burn + "-o a.h5 --force").code == 0);
        CHECK(run_program(folder, " report a.h5").code == 2);
        CHECK(bytes_of(folder / "a.html") == "<!DOCTYPE html><p>a letter</p>");
        CHECK(run_program(folder, " report a.h5 -o a.h5 --force").code == 2);
        const ProgramRun many = run_program(folder, " report a.h5 a.h5 a.h5 a.h5 a.h5 -o b.html");
        CHECK(many.code == 2);
        CHECK(contains(many.err, "4 results at most"));
    }

    TEST_CASE("a table that burn or export wrote is laid over as a log, its mark passed over") {
        const ScratchFolder folder;
        CHECK(run_program(folder, burn + "-o run.h5").code == 0);
        CHECK(run_program(folder,
                          " export run.h5 --columns plate_temperature --every 60s --csv log.csv")
                  .code == 0);
        const ProgramRun run = run_program(folder, " report run.h5 --log log.csv");
        CHECK(run.err == "");
        CHECK(run.code == 0);
        // And none of the two is replaced by the page.
        for (const char* input : {"run.h5", "./log.csv"})
            CHECK(
                run_program(folder, std::string(" report run.h5 --log log.csv --force -o ") + input)
                    .code == 2);
    }

    TEST_CASE("a log that can't be read is refused by its name and line") {
        const ScratchFolder folder;
        CHECK(run_program(folder, burn + "-o run.h5").code == 0);
        put(folder / "log.csv", "time_min,nothing_known\n1,2\n");
        const ProgramRun run = run_program(folder, " report run.h5 --log log.csv");
        CHECK(run.code == 2);
        CHECK(run.err.find("--log log.csv: nothing_known: the result has no such column") !=
              std::string::npos);
        CHECK(run_program(folder, " report run.h5 --log missing.csv").code == 4);
    }
}
