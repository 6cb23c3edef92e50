#include "cli/read/visible_text.h"

#include <doctest/doctest.h>

using namespace drawwell;

TEST_SUITE("cli/read/visible_text") {
    TEST_CASE("text in any script stays as it is") {
        for (const char* text : {"", "kitchen", "20 °C, 7 1/8 in", "печь", "ストーブ", "🔥", "a\\b"})
            CHECK(visible(text) == text);
    }

    TEST_CASE("what a terminal would obey is shown byte by byte") {
        CHECK(visible("a\nb") == "a\\x0ab");
        CHECK(visible("\x1b[31mred") == "\\x1b[31mred");
        CHECK(visible("\t\r\x7f") == "\\x09\\x0d\\x7f");
        CHECK(visible(std::string_view("\0", 1)) == "\\x00");
        CHECK(visible("\xc2\x9b"
                      "31m") == "\\xc2\\x9b31m");  // CSI as one character
        CHECK(visible("\xe2\x80\xa8\xe2\x80\xa9") == "\\xe2\\x80\\xa8\\xe2\\x80\\xa9");
    }

    TEST_CASE("what turns the direction of reading is shown") {
        for (const char* turn : {"\xe2\x80\xaa", "\xe2\x80\xae", "\xe2\x81\xa6", "\xe2\x81\xa9"})
            CHECK(visible(turn).starts_with("\\xe2"));
        CHECK(visible("\xe2\x80\xaf") == "\xe2\x80\xaf");  // a narrow blank
    }

    TEST_CASE("bytes that are no UTF-8 are shown, what follows them stays") {
        CHECK(visible("\xff"
                      "a") == "\\xffa");
        CHECK(visible("\xc3") == "\\xc3");
        CHECK(visible("\xc3(") == "\\xc3(");
        CHECK(visible("\xc0\xaf") == "\\xc0\\xaf");                    // longer than need be
        CHECK(visible("\xed\xa0\x80") == "\\xed\\xa0\\x80");           // half a pair
        CHECK(visible("\xf4\x90\x80\x80") == "\\xf4\\x90\\x80\\x80");  // beyond the last
        CHECK(visible("\xef\xbf\xbf") == "\\xef\\xbf\\xbf");           // no character, nor in XML
    }

    TEST_CASE("lines stay lines where that is asked") {
        CHECK(visible_lines("a\x1b\nb\n") == "a\\x1b\nb\n");
        CHECK(visible_lines("") == "");
    }

    TEST_CASE("the place of the first is told, or that there is none") {
        CHECK(first_unseen("ab\x1b") == 2);
        CHECK(first_unseen("°\xff") == 2);
        CHECK(first_unseen("°C") == std::string_view::npos);
    }

    TEST_CASE("the first of them is named whole") {
        CHECK(unseen_in("a\xe2\x80\xae\n") == "\\xe2\\x80\\xae");
        CHECK(unseen_in("\xff\xff") == "\\xff");
        CHECK(unseen_in("plain") == "");
    }
}
