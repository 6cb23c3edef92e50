#include "cli/report/file_name.h"

#include <doctest/doctest.h>

using namespace drawwell;

TEST_SUITE("cli/report/file_name") {
    TEST_CASE("a name takes another ending, in its folder") {
        CHECK(with_ending("a/kitchen.h5", ".csv") == "a/kitchen.csv");
        CHECK(with_ending("kitchen.two.h5", ".rows.jsonl") == "kitchen.two.rows.jsonl");
        CHECK(with_ending("kitchen", "-draw.svg") == "kitchen-draw.svg");
    }

    TEST_CASE("long names are cut to what file systems take, between letters, and stay apart") {
        const std::string stem(248, 'x');
        const auto name = [](const std::string& file) {
            return with_ending(file, ".rows.jsonl").filename().string();
        };
        CHECK(name(stem.substr(0, 244) + ".h5") == stem.substr(0, 244) + ".rows.jsonl");
        CHECK(name("a/" + stem + "a.h5").size() == 255);
        CHECK(name(stem + "a.h5") != name(stem + "b.h5"));
        CHECK(name(stem + "a.h5").ends_with(".rows.jsonl"));
        std::string umlauts = "x";
        for (int i = 0; i < 125; ++i) umlauts += "ü";
        const std::string cut = name(umlauts + ".h5");
        CHECK(cut.substr(0, cut.find('~')).size() % 2 == 1);  // x and whole letters of two bytes
    }
}
