#include "cli/commands/sheet_command.h"

#include <doctest/doctest.h>

#include "cli/commands/run_tool.h"
#include "cli/report/file_kind.h"
#include "tests/cli/report/svg_reading.h"
#include "tests/cli/run_program.h"

using namespace drawwell;

namespace {

const std::string sample = " sheet $sources/data/stoves/allotment-kitchen.toml ";

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/commands/sheet") {
    TEST_CASE("a sheet is HTML named after the stove unless told otherwise") {
        const ScratchFolder folder;
        const ProgramRun run = run_program(folder, sample);
        CHECK(run.code == 0);
        CHECK(run.err == "");
        CHECK(contains(run.out, "allotment-kitchen-sheet.html written"));
        CHECK(contains(bytes_of(folder / "allotment-kitchen-sheet.html"), "<!DOCTYPE html>"));
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("the name's ending says what is written, and an unknown one is refused") {
        const ScratchFolder folder;
        CHECK(run_program(folder, sample + "-o a.svg --quiet").out == "");
        CHECK(well_formed(bytes_of(folder / "a.svg")));
        const ProgramRun run = run_program(folder, sample + "-o a.dwg");
        CHECK(run.code == 2);
        CHECK(contains(run.err, ".html, .svg or .pdf"));
        CHECK(run_program(folder, sample + "--paper A5").code == 2);
    }

    TEST_CASE("an earlier sheet is replaced, another's file only with --force") {
        const ScratchFolder folder;
        CHECK(run_program(folder, sample + "-o a.svg").code == 0);
        CHECK(run_program(folder, sample + "-o a.svg --paper letter").code == 0);
        CHECK(contains(bytes_of(folder / "a.svg"), "215.9mm"));
        put(folder / "a.svg", "<svg>a drawing</svg>");
        CHECK(run_program(folder, sample + "-o a.svg").code == 2);
        CHECK(bytes_of(folder / "a.svg") == "<svg>a drawing</svg>");
        CHECK(run_program(folder, sample + "-o a.svg --force").code == 0);
    }

    TEST_CASE("author and mark stand on it as they were said") {
        const ScratchFolder folder;
        CHECK(run_program(folder, sample + "-o a.svg --no-templates --author 'M. Smith' "
                                           "--mark built")
                  .code == 0);
        const std::string svg = bytes_of(folder / "a.svg");
        CHECK(contains(svg, "M. Smith"));
        CHECK(contains(svg, "built by these figures"));
        CHECK_FALSE(contains(svg, "Template:"));
        CHECK(run_program(folder, sample + "-o a.svg --mark guessed").code == 2);
    }

    TEST_CASE("one page can be had alone, and one that is not there is refused") {
        const ScratchFolder folder;
        CHECK(run_program(folder, sample + "-o a.svg --page 1").code == 0);
        CHECK(contains(bytes_of(folder / "a.svg"), "height=\"297mm\""));
        const ProgramRun run = run_program(folder, sample + "-o b.svg --page 99");
        CHECK(run.code == 2);
        CHECK(contains(run.err, "--page 99: the sheet has pages 1 to "));
    }

    TEST_CASE("without a tool a PDF is refused with what to install, and no file is left") {
        const ScratchFolder folder;
        const ProgramRun run =
            run_program(folder, sample + "-o a.pdf", "env PATH=/nowhere \"$drawwell\"");
        CHECK(run.code == 4);
        CHECK(contains(run.err, "apt install librsvg2-bin"));
        CHECK(files_in(folder / "") == 0);
    }

    TEST_CASE("where a tool is installed a PDF is written, and replaced the next time") {
        if (!is_installed("rsvg-convert") && !is_installed("chromium")) return;
        const ScratchFolder folder;
        CHECK(run_program(folder, sample + "-o a.pdf --no-templates").code == 0);
        CHECK(bytes_of(folder / "a.pdf").starts_with("%PDF-"));
        CHECK(kind_of_file(folder / "a.pdf") == FileKind::sheet);
        CHECK(run_program(folder, sample + "-o a.pdf --no-templates").code == 0);
        CHECK(files_in(folder / "") == 1);
    }

    TEST_CASE("author, date and mark may stand in the stove file, options beat them") {
        const ScratchFolder folder;
        const std::string set =
            "-o a.svg --no-templates --set 'sheet.author=A. Weaver' --set sheet.mark=measured ";
        CHECK(run_program(folder, sample + set).code == 0);
        const std::string svg = bytes_of(folder / "a.svg");
        CHECK(contains(svg, "A. Weaver"));
        CHECK(contains(svg, "measured on the built stove"));
        CHECK(run_program(folder, sample + set + "--author 'M. Smith'").code == 0);
        CHECK(contains(bytes_of(folder / "a.svg"), "M. Smith"));
        CHECK_FALSE(contains(bytes_of(folder / "a.svg"), "A. Weaver"));
        CHECK(contains(bytes_of(folder / "a.svg"), "measured on the built stove"));
        CHECK(run_program(folder, sample + "--set sheet.mark=guessed").code == 2);
    }
}
