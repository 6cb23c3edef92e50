#include "cli/read/layer_text.h"

#include <doctest/doctest.h>

#include <string>

#include "tests/cli/read/small_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

std::string why_not(std::string_view said) {
    try {
        parse_layers(said, read_library());
    } catch (const InputError& error) {
        return error.what();
    }
    return {};
}

bool says(const std::string& text, std::string_view part) {
    INFO(text);
    return text.find(part) != std::string::npos;
}

std::string materials(const BuildUp& wall) {
    std::string list;
    for (const Layer& layer : wall) list += (list.empty() ? "" : " ") + layer.material;
    return list;
}

}  // namespace

TEST_SUITE("cli/read/layer_text") {
    TEST_CASE("a name stands for all layers of the build-up, alone or among layers") {
        const BuildUp board = read_library().build_ups.at("board");
        REQUIRE(board.size() == 2);
        const Stove alone = read(std::string(small_stove), {"riser.lining=board"});
        CHECK(materials(alone.riser.lining) == "aes_board stainless_304");
        CHECK(alone.riser.lining[0].thickness == near(0.025, 1e-9));
        const Stove both = read(
            with("top = \"725 mm\"", "top = \"725 mm\"\nlining = ['5 mm mild_steel', 'blanket']"));
        CHECK(materials(both.riser.lining) == "mild_steel aes_blanket stainless_304");
        const Stove set = read(std::string(small_stove), {"flue.stack.wall=twin_wall",
                                                          "barrel.shell=2 mm mild_steel, bricks"});
        CHECK(materials(set.flue.sections[1].wall) == "stainless_304 stone_wool stainless_304");
        CHECK(materials(set.barrel->shell) == "mild_steel firebrick");
    }

    TEST_CASE("what is no build-up is told what it could be") {
        const std::string misspelt = why_not("bord");
        CHECK(says(misspelt, "unknown name \"bord\""));
        CHECK(says(misspelt, "did you mean \"board\"?"));
        CHECK(says(misspelt, "bare_steel, blanket, board, bricks"));
        CHECK(says(why_not("xyzzyxyzzy"), "a layer is a thickness and a material"));
        CHECK_FALSE(says(why_not("xyzzyxyzzy"), "did you mean"));
        CHECK(says(why_not("aes_board"), "is a material and its thickness is missing"));
        CHECK(says(why_not("25 mm board"), "has its own thickness: write its name alone"));
        CHECK(says(why_not("25 mm aes_bord"), "did you mean \"aes_board\"?"));
        CHECK(says(why_not("3 m aes_board"), "a layer is from"));
        const auto lines = problems_of(small_stove, {"riser.lining=bord"});
        REQUIRE(lines.size() == 1);
        CHECK(says(lines[0], "--set riser.lining=bord"));
    }
}
