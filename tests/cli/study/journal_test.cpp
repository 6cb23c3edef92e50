#include "cli/study/journal.h"

#include <doctest/doctest.h>

#include <fstream>

#include "cli/report/pending_file.h"
#include "cli/study/series_bytes.h"
#include "solver/errors.h"
#include "tests/cli/scratch_folder.h"
#include "tests/cli/study/some_series.h"

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

void append(const std::filesystem::path& file, std::string_view text) {
    std::ofstream(file, std::ios::app) << text;
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
        append(folder / "a.rows.jsonl", "{\"id\":\"tw");
        {
            Journal journal(folder / "a.rows.jsonl");
            CHECK(journal.finished() == 1);
            journal.add(row("two", 2));
        }
        CHECK(Journal(folder / "a.rows.jsonl").finished() == 2);
    }

    TEST_CASE("a file that is not of drawwell is left as it is, also where all begins anew") {
        const ScratchFolder folder;
        for (const char* text :
             {"my diary\nof stoves\n", "my diary, a single line without an end",
              "{\"id\":\"one\",\"answers\":\"to life\"}\n", "{\"drawwell_rows\":\"are long\"}\n"}) {
            CAPTURE(text);
            put(folder / "a.rows.jsonl", text);
            for (const bool anew : {false, true}) {
                CHECK_THROWS_WITH_AS(Journal(folder / "a.rows.jsonl", anew),
                                     doctest::Contains("not drawwell's"), FileError);
                CHECK(bytes_of(folder / "a.rows.jsonl") == text);
            }
        }
        std::filesystem::remove(folder / "a.rows.jsonl");
        std::filesystem::create_directory(folder / "a.rows.jsonl");
        CHECK_THROWS_AS(Journal(folder / "a.rows.jsonl", true), FileError);
    }

    TEST_CASE(
        "a journal of another version is refused in words, and replaced where all begins anew") {
        const ScratchFolder folder;
        const std::string unmarked =
            "{\"id\":\"" + identity_of("a") + "\",\"answers\":{\"draws\":true}}\n";
        Journal(folder / "a.rows.jsonl", true).add(row("one", 1));
        std::string of_another_model = bytes_of(folder / "a.rows.jsonl");
        of_another_model.replace(of_another_model.find("model_version\":") + 15, 1, "99");
        for (const auto& [text, author] :
             {std::pair{unmarked, "an older drawwell, which noted no version, began it"},
              {std::string("{\"drawwell_rows\":99}\n"),
               "drawwell ? (model version ?, journal version 99;"},
              {of_another_model, "drawwell 0.1.0 (model version 99, journal version"}}) {
            CAPTURE(text);
            put(folder / "a.rows.jsonl", text);
            CHECK_THROWS_WITH_AS(Journal(folder / "a.rows.jsonl"), doctest::Contains(author),
                                 InputError);
            CHECK_THROWS_WITH_AS(Journal(folder / "a.rows.jsonl"),
                                 doctest::Contains("begin it anew with --force"), InputError);
            CHECK(bytes_of(folder / "a.rows.jsonl") == text);
            CHECK(Journal(folder / "a.rows.jsonl", true).finished() == 0);
            CHECK(Journal(folder / "a.rows.jsonl").finished() == 0);
        }
    }

    TEST_CASE("a damaged journal is refused with its line, and replaced where all begins anew") {
        const ScratchFolder folder;
        Journal(folder / "a.rows.jsonl").add(row("one", 1));
        append(folder / "a.rows.jsonl", "?\n");
        CHECK_THROWS_WITH_AS(Journal(folder / "a.rows.jsonl"),
                             doctest::Contains("a.rows.jsonl:3: this is no row"), FileError);
        CHECK(Journal(folder / "a.rows.jsonl", true).finished() == 0);
    }

    TEST_CASE("series come back with their rows") {
        const ScratchFolder folder;
        Row burned = row("one", 1);
        burned.series = series_bytes(some_series());
        {
            Journal journal(folder / "a.rows.jsonl");
            journal.add(row("none", 0));
            journal.add(burned);
            CHECK(journal.series_of("one").columns[1].values == some_series().columns[1].values);
        }
        Journal again(folder / "a.rows.jsonl");
        CHECK(again.finished() == 2);
        CHECK(again.has_series_of("one"));
        CHECK_FALSE(again.has_series_of("none"));
        CHECK_THROWS_AS(again.series_of("none"), FileError);
        again.add(row("two", 2));
        CHECK(again.series_of("one").time == some_series().time);
    }

    TEST_CASE(
        "wherever a kill cuts it short the rows before are kept, and no series without a row") {
        const ScratchFolder folder;
        Row burned = row("one", 1);
        burned.series = series_bytes(some_series());
        {
            Journal journal(folder / "whole");
            journal.add(row("none", 0));
            journal.add(burned);
        }
        const std::string whole = bytes_of(folder / "whole");
        const std::size_t first = whole.find("{\"series_of\"");
        REQUIRE(first < whole.size());
        for (std::size_t size = first; size < whole.size(); ++size) {
            put(folder / "cut", whole.substr(0, size));
            Journal journal(folder / "cut");
            REQUIRE(journal.finished() == 1);
            REQUIRE_FALSE(journal.has_series_of("one"));
            journal.add(burned);
            REQUIRE(journal.series_of("one").time == some_series().time);
        }
        CHECK(bytes_of(folder / "cut") == whole);
    }

    TEST_CASE("a journal that another run is at work on is not touched") {
        const ScratchFolder folder;
        Journal journal(folder / "a.rows.jsonl");
        journal.add(row("one", 1));
        const std::string before = bytes_of(folder / "a.rows.jsonl");
        for (const bool anew : {false, true})
            CHECK_THROWS_WITH_AS(Journal(folder / "a.rows.jsonl", anew),
                                 doctest::Contains("another drawwell"), InputError);
        CHECK(bytes_of(folder / "a.rows.jsonl") == before);
    }

    TEST_CASE("a done study deletes its journal and no file that took its name") {
        const ScratchFolder folder;
        Journal journal(folder / "a.rows.jsonl");
        std::filesystem::rename(folder / "a.rows.jsonl", folder / "mine");
        put(folder / "a.rows.jsonl", "a letter");
        journal.remove();
        CHECK(bytes_of(folder / "a.rows.jsonl") == "a letter");
        Journal other(folder / "mine");
        other.remove();
        CHECK_FALSE(std::filesystem::exists(folder / "mine"));
    }

    TEST_CASE("equal stoves have one identity, others another") {
        CHECK(identity_of("a") == identity_of("a"));
        CHECK(identity_of("a") != identity_of("b"));
    }
}
