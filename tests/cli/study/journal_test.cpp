#include "cli/study/journal.h"

#include <doctest/doctest.h>

#include "cli/report/pending_file.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

Row row(const std::string& identity, double spare) {
    Row made;
    made.identity = identity;
    made.done = true;
    made.answers =
        Answers(std::vector<std::pair<std::string, Answer>>{{"draws", true},
                                                            {"reserve_draw_min_pa", spare},
                                                            {"draw_limit", "exchange"},
                                                            {"room_warmest_c", {}}});
    return made;
}

}  // namespace

TEST_SUITE("cli/study/journal") {
    TEST_CASE("rows come back as they were, to the last digit") {
        const ScratchFolder folder;
        {
            Journal journal(folder / "a.rows.jsonl");
            journal.add(row("one", 1.0 / 3));
            Row failed;
            failed.identity = "two";
            failed.error = "the riser goes through the plate";
            journal.add(failed);
        }
        const Journal again(folder / "a.rows.jsonl");
        REQUIRE(again.finished() == 2);
        const Row* one = again.find("one");
        REQUIRE(one);
        CHECK(one->answers.all() == row("one", 1.0 / 3).answers.all());
        CHECK(again.find("two")->error == "the riser goes through the plate");
        CHECK(again.find("three") == nullptr);
    }

    TEST_CASE("a last line cut short is dropped, and the next row begins a line of its own") {
        const ScratchFolder folder;
        {
            Journal journal(folder / "a.rows.jsonl");
            journal.add(row("one", 1));
        }
        std::ofstream(folder / "a.rows.jsonl", std::ios::app) << "{\"id\":\"tw";
        {
            Journal journal(folder / "a.rows.jsonl");
            CHECK(journal.finished() == 1);
            journal.add(row("two", 2));
        }
        CHECK(Journal(folder / "a.rows.jsonl").finished() == 2);
    }

    TEST_CASE("a file that holds something else is refused and left as it is") {
        const ScratchFolder folder;
        put(folder / "a.rows.jsonl", "my diary\nof stoves\n");
        CHECK_THROWS_AS(Journal(folder / "a.rows.jsonl"), FileError);
        CHECK(bytes_of(folder / "a.rows.jsonl") == "my diary\nof stoves\n");
    }

    TEST_CASE("equal stoves have one identity, others another") {
        CHECK(identity_of("a") == identity_of("a"));
        CHECK(identity_of("a") != identity_of("b"));
    }
}
