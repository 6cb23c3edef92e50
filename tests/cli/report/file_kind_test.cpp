#include "cli/report/file_kind.h"

#include <doctest/doctest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "cli/report/chart.h"
#include "cli/report/draw_csv.h"
#include "cli/report/sheet/page_svg.h"
#include "cli/report/web/report_page.h"
#include "cli/report/write_csv.h"
#include "cli/report/write_hdf5.h"
#include "cli/study/compare_files.h"
#include "cli/study/journal.h"
#include "tests/cli/report/sample_run.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

Study two_stoves() {
    Study study;
    study.files = {{"a.toml", "", {}}, {"b, \"odd\"\n.toml", "", {}}};
    study.variants = {Variant{}};
    return study;
}

std::vector<Row> two_rows() {
    std::vector<Row> rows(2);
    rows[0].done = rows[1].done = true;
    rows[0].answers = Answers(std::vector<std::pair<std::string, Answer>>{{"draws", true}});
    rows[1].error = "the riser goes through the plate,\nand the \"plate\" through the riser";
    return rows;
}

DrawStudy draw() {
    DrawStudy study;
    study.held.points = {{-0.001, 5}, {0.001, 2.5}};
    return study;
}

FileKind kind_of_text(std::string_view text) {
    const ScratchFolder folder;
    put(folder / "file", text);
    return kind_of_file(folder / "file");
}

}  // namespace

TEST_SUITE("cli/report/file_kind") {
    TEST_CASE("every file that drawwell writes is known by its mark, whatever it is called") {
        const ScratchFolder folder;
        write_hdf5(folder / "a", sample_results(), sample_summary(), sample_record());
        CHECK(kind_of_file(folder / "a") == FileKind::result);
        write_compare_hdf5(folder / "a", two_stoves(), two_rows());
        CHECK(kind_of_file(folder / "a") == FileKind::comparison);
        Journal(folder / "rows").add(two_rows()[0]);
        CHECK(kind_of_file(folder / "rows") == FileKind::journal);
        CHECK(kind_of_text(csv_text(sample_results())) == FileKind::series_table);
        CHECK(kind_of_text(draw_csv(draw())) == FileKind::draw_table);
        CHECK(kind_of_text(compare_csv(two_stoves(), two_rows())) == FileKind::compare_table);
        const Chart chart("t", "d", {"x"}, {"y"});
        CHECK(kind_of_text(chart.svg()) == FileKind::figure);
        CHECK(kind_of_text(stacked_svg({chart, chart})) == FileKind::figure);
        const std::vector<PaperPage> pages{{210, 297, {}, {}}};
        CHECK(kind_of_text(page_svg(pages[0], "t")) == FileKind::sheet);
        CHECK(kind_of_text(pages_svg(pages, "t")) == FileKind::sheet);
        CHECK(kind_of_text(pages_html(pages, "t")) == FileKind::sheet);
        CHECK(kind_of_text("%PDF-1.5\nstream\n%%EOF\n" + pdf_origin()) == FileKind::sheet);
    }

    TEST_CASE("a log headed as the help says is the user's, and any table without a mark") {
        for (const char* text :
             {"time_s,plate_temperature_c,outlet_gas_temperature_c\n1200,150,210\n",
              "time_s,plate_temperature_c[0.105m]\n0,20\n", "stove,price\nkitchen,30\n",
              "stove,riser.top,error,draws\na.toml,600mm,,1\n",
              "flow_kg_s,push_held_pa,push_following_pa\n-0.001,5,4\n", "time_s,mine\n", "\n", ""})
            CHECK(kind_of_text(text) == FileKind::other);
    }

    TEST_CASE("a table of drawwell's that somebody wrote in is the user's") {
        const std::string ours = csv_text(sample_results());
        REQUIRE(kind_of_text(ours) == FileKind::series_table);
        const std::string heading = ours.substr(0, ours.find('\n') + 1);
        CHECK(kind_of_text(heading + "0,4.5,20,21\n60,4.1,35,33\n") == FileKind::other);
        CHECK(kind_of_text(ours + "90,4.5,20,21,\n") == FileKind::other);
        CHECK(kind_of_text(ours + "90,4.5,20,21,series 1") == FileKind::other);
        CHECK(kind_of_text("my burn\n" + ours) == FileKind::other);
        CHECK(kind_of_text(heading) == FileKind::other);
        CHECK(kind_of_text("time_s,drawwell_table\n0,series\n") == FileKind::other);
        CHECK(kind_of_text("time_s,drawwell_table\n0,series x\n") == FileKind::other);
        CHECK(kind_of_text("time_s,drawwell_table\n0,series 1\n1,draw 1\n") == FileKind::other);
        CHECK(kind_of_text("time_s,drawwell_table\n0,series 12\n") == FileKind::series_table);
    }

    TEST_CASE("what others made of our files, and what only speaks of drawwell, is theirs") {
        const std::string figure = Chart("t", "d", {"x"}, {"y"}).svg();
        CHECK(kind_of_text("<?xml version=\"1.0\"?>\n" + figure) == FileKind::other);
        CHECK(kind_of_text("<svg xmlns=\"http://www.w3.org/2000/svg\">\n<title>drawwell sheet "
                           "1</title></svg>\n") == FileKind::other);
        CHECK(kind_of_text("<svg >") == FileKind::other);
        CHECK(kind_of_text("<!DOCTYPE html>\n<p>my drawwell report 1, a drawwell sheet 2</p>") ==
              FileKind::other);
        CHECK(kind_of_text("%PDF-1.5\n%%EOF\n" + pdf_origin() + "notes of mine\n%%EOF\n") ==
              FileKind::other);
        CHECK(kind_of_text("%PDF-") == FileKind::other);
        CHECK(kind_of_text("\x89HDF\r\n\x1a\nbroken") == FileKind::other);
    }

    TEST_CASE("folders, pipes, devices and what is not there are no files of drawwell's") {
        const ScratchFolder folder;
        CHECK(kind_of_file(folder / "absent") == FileKind::other);
        CHECK(kind_of_file(folder / "") == FileKind::other);
        REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
        CHECK(kind_of_file(folder / "pipe") == FileKind::other);  // and does not wait
        CHECK(kind_of_file("/dev/zero") == FileKind::other);      // and ends
        std::filesystem::create_symlink("pipe", folder / "link");
        CHECK(kind_of_file(folder / "link") == FileKind::other);
    }

    TEST_CASE("a huge file of others is told by little of it, and one of ours by all of it") {
        const ScratchFolder folder;
        put(folder / "huge", "no,line,end,");
        std::filesystem::resize_file(folder / "huge", std::uintmax_t{1} << 40);  // takes no room
        CHECK(kind_of_file(folder / "huge") == FileKind::other);
        Results results = sample_results();
        results.time.clear();
        results.columns.resize(1);
        results.columns[0].values.clear();
        for (int i = 0; i < 40'000; ++i) {
            results.time.push_back(i);
            results.columns[0].values.push_back(i);
        }
        const std::string long_table = csv_text(results);
        CHECK(kind_of_text(long_table) == FileKind::series_table);
        CHECK(kind_of_text(long_table + "of mine\n") == FileKind::other);
    }
}
