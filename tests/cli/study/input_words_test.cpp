#include "cli/study/input_words.h"

#include <doctest/doctest.h>

#include "cli/read/keys.h"
#include "models/uncertain_inputs.h"
#include "tests/cli/report/sheet/sheet_stoves.h"

using namespace drawwell;

TEST_SUITE("cli/study/input_words") {
    TEST_CASE("every uncertain input has words of its own") {
        for (const UncertainInput& input :
             uncertain_inputs(tests::sheet_library(), tests::sample_stove("workshop"))) {
            INFO(input.name);
            CHECK(input_in_words(input.name) != input.name);
        }
    }

    TEST_CASE("a key is told by the first clause of its help") {
        CHECK(input_in_words("barrel.height") == "height of the barrel");
        CHECK(input_in_words("aes_board.conductivity") == "how well aes_board leads heat");
        CHECK(input_in_words("no.such") == "no.such");
    }
}
