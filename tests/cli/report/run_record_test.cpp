#include "cli/report/run_record.h"

#include <doctest/doctest.h>

#include <filesystem>

#include "tests/cli/run_program.h"

using namespace drawwell;

namespace fs = std::filesystem;
using Names = std::vector<std::string>;

TEST_SUITE("cli/report/run_record") {
    TEST_CASE("of an absolute path only the last part is told, a relative one as it was typed") {
        CHECK(told_name("/home/someone/stoves/kitchen.toml") == "kitchen.toml");
        CHECK(told_name("stoves/kitchen.toml") == "stoves/kitchen.toml");
        CHECK(told_name("standard input") == "standard input");
        CHECK(told_name("").empty());
        CHECK(told_text("see /a/b/w.csv, /a/b/w.csv", {"/a/b/w.csv"}) == "see w.csv, w.csv");
        CHECK(told_text("see b/w.csv", {"b/w.csv", "/"}) == "see b/w.csv");
    }

    TEST_CASE("files called alike are told apart by as few of their folders as that takes") {
        CHECK(told_names({"/x/a/s.toml", "/x/b/s.toml", "/x/t.toml"}) ==
              Names{"a/s.toml", "b/s.toml", "t.toml"});
        CHECK(told_names({"/x/1/a/s.toml", "/x/2/a/s.toml"}) == Names{"1/a/s.toml", "2/a/s.toml"});
        CHECK(told_names({"s.toml", "/x/s.toml"}) == Names{"s.toml", "x/s.toml"});
        CHECK(told_names({"a/s.toml", "b/s.toml"}) == Names{"a/s.toml", "b/s.toml"});
        // The same file twice can't be told apart.
        CHECK(told_names({"/x/s.toml", "/x/s.toml"}) == Names{"s.toml", "s.toml"});
    }

    TEST_CASE("no file that may be handed on tells where its owner keeps it") {
        const ScratchFolder folder;
        const fs::path here = fs::canonical(folder / "");
        const std::string sample =
            bytes_of(std::string(DRAWWELL_SOURCES) + "/data/stoves/allotment-kitchen.toml");
        const std::string outdoor = "outdoor = \"6 °C\"\n";
        REQUIRE(sample.find(outdoor) != std::string::npos);
        std::string weathered = sample;
        weathered.replace(weathered.find(outdoor), outdoor.size(),
                          "weather = \"" + (here / "in/w.csv").string() + "\"\n");
        for (const char* name : {"in", "in/more", "out", "out/more"})
            fs::create_directory(here / name);
        put(here / "in/s.toml", sample);
        put(here / "in/more/s.toml", weathered);
        put(here / "in/w.csv", "time_min,outdoor_c\n0,5\n60,4\n");
        put(here / "in/log.csv", "time_min,plate_temperature_c\n2,30\n4,60\n");
        const auto run = [&](const std::string& words) {
            setenv("here", here.c_str(), 1);
            const ProgramRun ran = run_program(folder, words);
            CHECK(ran.code == 0);
            CHECK(ran.err == "");
        };
        const std::string burn = " burn --quiet --for 5min ";
        run(burn +
            "$here/in/s.toml -o $here/out/a.h5 --report --csv "
            "--set site.weather=$here/in/w.csv");
        run(burn +
            "$here/in/more/s.toml -o $here/out/more/a.h5 --start-from $here/out/a.h5 "
            "--report --csv");
        run(" report $here/out/a.h5 $here/out/more/a.h5 -o $here/out/both.html "
            "--log $here/in/log.csv");
        run(" compare --quiet --series $here/in/s.toml $here/in/more/s.toml --for 5min "
            "--vary site.weather=$here/in/w.csv -o $here/out/rows.h5 --csv");
        run(" sheet --quiet $here/in/more/s.toml -o $here/out/s.html");
        std::size_t seen = 0;
        for (const auto& file : fs::recursive_directory_iterator(here / "out")) {
            if (!file.is_regular_file()) continue;
            CAPTURE(file.path().string());
            CHECK(bytes_of(file.path()).find(here.string()) == std::string::npos);
            ++seen;
        }
        CHECK(seen == 10);
        // Told apart all the same.
        CHECK(bytes_of(here / "out/both.html").find("more/a.h5") != std::string::npos);
        CHECK(bytes_of(here / "out/rows.csv").find("in/s.toml") != std::string::npos);
    }
}
