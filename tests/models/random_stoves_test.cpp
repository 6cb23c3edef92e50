#include <doctest/doctest.h>

#include "cli/read/read_library.h"
#include "validation/random_stoves/random_burn.h"

using namespace drawwell;

namespace {

/// Burns stoves from `first` on, ten of them, for a part of the time that validation gives them;
/// gives how many ran.
int burn_ten(std::uint32_t first) {
    const Library library = read_library();
    int run = 0;
    for (std::uint32_t i = first; i < first + 10; ++i) {
        const RandomBurn burn = burn_random_stove(i, {.least = 600, .most = 1500}, library);
        CAPTURE(i);
        CAPTURE(burn.reason);
        CHECK(burn.fate != RandomBurn::Fate::failed);
        for (const std::string& complaint : burn.complaints) FAIL_CHECK(complaint);
        if (burn.fate == RandomBurn::Fate::run) ++run;
    }
    return run;
}

}  // namespace

// Ten in a case, so that they can run side by side. At most one in ten may be refused.
TEST_SUITE("models/random_stoves") {
    TEST_CASE("random stoves 0 to 9 keep within what nature allows") {
        CHECK(burn_ten(0) >= 9);
    }
    TEST_CASE("random stoves 10 to 19 keep within what nature allows") {
        CHECK(burn_ten(10) >= 9);
    }
    TEST_CASE("random stoves 20 to 29 keep within what nature allows") {
        CHECK(burn_ten(20) >= 9);
    }
    TEST_CASE("random stoves 30 to 39 keep within what nature allows") {
        CHECK(burn_ten(30) >= 9);
    }
    TEST_CASE("random stoves 40 to 49 keep within what nature allows") {
        CHECK(burn_ten(40) >= 9);
    }

    TEST_CASE("a stove in which only the wood's own gas moves keeps its books") {
        const RandomBurn burn = burn_random_stove(336, {}, read_library());
        CHECK(burn.fate == RandomBurn::Fate::run);
        CHECK(burn.worst.elements < 1e-3);
    }
}
