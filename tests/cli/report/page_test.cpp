#include "cli/report/page.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>

#include "cli/report/cautions.h"
#include "cli/report/page_text.h"
#include "tests/cli/report/sample_run.h"

using namespace drawwell;

namespace {

std::string page_of(const Summary& summary) {
    return burn_page(summary, {"test stove", 10800, true, false, {{"series", "run.h5"}}});
}

bool says(const std::string& page, std::string_view words) {
    // Lines are broken anywhere between words.
    std::string flat;
    for (const char c : page)
        if (c != '\n' && (c != ' ' || !flat.ends_with(' ')))
            flat += c;
        else if (!flat.ends_with(' '))
            flat += ' ';
    return flat.find(words) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/report/page") {
    TEST_CASE("a stove that draws: verdict, then draw, cooking, heat, cautions, books, files") {
        const std::string page = page_of(sample_summary());
        std::size_t at = 0;
        for (const char* words :
             {"test stove, 3 h", "It draws.", "5 min after lighting; 5.4 Pa of spare draw",
              "smoke back              none", "at most 470 °C, 2 h 20 min after lighting",
              "after 18 min", "best ring, 40 mm out", "200 mm pot", "at most 930 °C",
              "to the room               29.0 MJ    56 %", "Before you light it",
              "The books balance", "run.h5"}) {
            CAPTURE(words);
            const std::size_t found = page.find(words, at);
            REQUIRE(found != std::string::npos);
            at = found;
        }
        CHECK_FALSE(says(page, "What often helps"));
    }

    TEST_CASE("a stove that does not draw: said first, with what often helps") {
        Summary summary = sample_summary();
        summary.draws = false;
        summary.reserve_draw_min.reset();
        const std::string page = page_of(summary);
        CHECK(page.find("IT DOES NOT DRAW.") < page.find("What often helps"));
        CHECK(page.find("What often helps") < page.find("Cooking plate"));
        CHECK_FALSE(says(page, "It draws"));
    }

    TEST_CASE("smoke in the room is part of the verdict, with its time") {
        Summary summary = sample_summary();
        summary.smoke_back = 75;
        summary.smoke_back_first = 130;
        const std::string page = page_of(summary);
        CHECK(says(page, "It draws, but smoke came back out of the feed."));
        CHECK(says(page, "for 75 s in all, first 2 min after lighting"));
    }

    TEST_CASE("a stove with little spare draw is not simply said to draw") {
        Summary summary = sample_summary();
        summary.reserve_draw_min = 0.8;
        CHECK(says(page_of(summary), "It draws, but with little to spare."));
    }

    TEST_CASE("stretched laws are told before the cautions, where they matter") {
        Summary summary = sample_summary();
        CHECK_FALSE(says(page_of(summary), "Judge with care"));
        summary.stretched = {{.law = "aes_board",
                              .where = "riser lining",
                              .what = "tabled temperature",
                              .unit = "K",
                              .low = 0,
                              .high = 1273.15,
                              .worst = 1403.15,
                              .share_of_burn = 0.2,
                              .weight = 0.1,
                              .effect = Effect::judge_with_care,
                              .on = "exit gas"}};
        const std::string page = page_of(summary);
        CHECK(says(page, "Judge with care - riser lining up to 1130 °C;"));
        CHECK(page.find("Judge with care") < page.find("Before you light it"));
        summary.stretched[0].effect = Effect::nothing;
        CHECK_FALSE(says(page_of(summary), "Judge with care"));
    }

    TEST_CASE("a burn that begins in another says so first, and what its walls gave") {
        Summary summary = sample_summary();
        summary.heat_stored = -13e6;
        PageFrame frame{"test stove", 3600, true, false, {}};
        frame.begun_from = "begun from run.h5 as it stood after 3 h";
        const std::string page = burn_page(summary, frame);
        CHECK(page.starts_with("test stove, 1 h\n  begun from run.h5 as it stood after 3 h;"));
        CHECK(says(page, "given by the walls 13.0 MJ 20 %"));  // of 52 MJ of wood and these
        CHECK_FALSE(says(page, "still in the stove"));
        CHECK_FALSE(says(page_of(sample_summary()), "begun from"));
        CHECK_FALSE(says(page_of(sample_summary()), "given by the walls"));
    }

    TEST_CASE("how warm the room gets is told where it is known") {
        Summary summary = sample_summary();
        CHECK_FALSE(says(page_of(summary), "stove alone"));
        summary.room_warmest = 299.15;
        summary.room_warmest_time = 4800;
        CHECK(says(page_of(summary), "room, stove alone at most 26 °C, 1 h 20 min after lighting"));
    }

    TEST_CASE("every page carries every caution") {
        for (const std::string_view caution : standing_cautions())
            CHECK(says(page_of(Summary{}), caution));
        for (const char* word : {"Carbon monoxide", "alarm", "outdoors first", "burn skin",
                                 "local codes", "licensed", "galvanised", "ceramic fibre"})
            CHECK(says(page_of(Summary{}), word));
    }

    TEST_CASE("books that do not balance are not passed over") {
        Summary summary = sample_summary();
        summary.element_residual = -0.02;
        CHECK(says(page_of(summary), "THE BOOKS DO NOT BALANCE off by"));
        summary.element_residual = std::numeric_limits<double>::quiet_NaN();
        CHECK(says(page_of(summary), "THE BOOKS DO NOT BALANCE"));
    }

    TEST_CASE("a bowed plate is told in millimetres, with what it hangs on and when") {
        Summary summary = sample_summary();
        summary.plate_bow_high.reset();
        CHECK_FALSE(says(page_of(summary), "bow by heat"));
        summary.plate_bow_high = -0.0072;
        CHECK(says(page_of(summary), "bow by heat"));
        CHECK(says(page_of(summary), "dishes at most 0.4 mm where its rim can slide"));
        CHECK(says(page_of(summary), "7.2 mm"));
        summary.plate_bow_high = 0.0072;
        CHECK(says(page_of(summary), "domes"));
        summary.plate_bow_low = summary.plate_bow_high = -1e-5;
        CHECK(says(page_of(summary), "stays flat"));
    }

    TEST_CASE("where a pot fills its hole the plate begins at the hole's edge") {
        Summary summary = sample_summary();
        CHECK_FALSE(says(page_of(summary), "at the hole"));
        summary.plate_hole = 0.09;
        CHECK(says(page_of(summary), "at the hole"));
    }

    TEST_CASE("a plate that never cooks, and a stove without plate") {
        Summary summary = sample_summary();
        summary.plate_time_to_fry.reset();
        CHECK(says(page_of(summary), "never in this burn"));
        summary.plate_centre_max.reset();
        CHECK_FALSE(says(page_of(summary), "Cooking plate"));
    }

    TEST_CASE("no line is wider than 80 characters and none is coloured unless asked") {
        Summary summary = sample_summary();
        summary.draws = false;
        summary.remarks = {
            "the load of 0.73 kg at 1 h 4 min did not fit the feed and waited until 1 h 9 min; "
            "the riser's convection was used at 5200 1/m beyond its range for 12 % of the time"};
        summary.heat_up_flue_unburnt = 2e6;
        summary.room_demand = 20e6;
        summary.heat_lost_outdoors = 3e6;
        summary.heat_from_room_air = 1e6;
        std::istringstream lines(page_of(summary));
        for (std::string line; std::getline(lines, line);) {
            CAPTURE(line);
            CHECK(std::count_if(line.begin(), line.end(), [](char c) {
                      return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
                  }) <= 80);
            CHECK(line.find('\x1b') == std::string::npos);
        }
        CHECK(burn_page(summary, {"", 60, true, true, {}})
                  .find("\x1b[1;31mIT DOES NOT DRAW.\x1b[0m\n") != std::string::npos);
    }

    TEST_CASE("durations are told as people tell them") {
        CHECK(show_duration(45) == "45 s");
        CHECK(show_duration(1080) == "18 min");
        CHECK(show_duration(3600) == "1 h");
        CHECK(show_duration(3599) == "1 h");
        CHECK(show_duration(8400) == "2 h 20 min");
    }

    TEST_CASE("in US units it has inches, pounds and degrees Fahrenheit, draw in pascals") {
        PageFrame frame;
        frame.units = UnitSystem::us;
        const std::string page = burn_page(sample_summary(), frame);
        CHECK(says(page, "at most 878 °F"));  // 470 °C
        CHECK(says(page, "cooks (347 °F)"));  // 175 °C
        CHECK(says(page, "140-248"));         // the band from 60 to 120 °C
        CHECK(says(page, "best ring, 1 9/16 in out"));
        CHECK(says(page, "7 7/8 in pot, centred"));
        CHECK(says(page, "5.4 Pa of spare draw"));
        CHECK(says(page, " lb of it, dry"));
        CHECK(page.find("°C") == std::string::npos);
        CHECK(page.find(" mm") == std::string::npos);
        CHECK(page.find(" kg") == std::string::npos);
    }
}
