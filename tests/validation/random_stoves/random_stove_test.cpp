#include "validation/random_stoves/random_stove.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "solver/errors.h"

using namespace drawwell;

TEST_SUITE("validation/random_stoves/random_stove") {
    TEST_CASE("a random stove depends on seed and index alone") {
        const std::string seventh = random_stove(1, 7);
        random_stove(1, 8);
        CHECK(random_stove(1, 7) == seventh);
        CHECK(random_stove(1, 8) != seventh);
        CHECK(random_stove(2, 7) != seventh);
    }

    TEST_CASE("a shorter burn leaves the rest of the stove as it is") {
        const std::string usual = random_stove(1, 7), brief = random_stove(1, 7, {60, 120});
        const auto burn = usual.find("[burn]");
        REQUIRE(burn != std::string::npos);
        CHECK(brief.substr(0, burn) == usual.substr(0, burn));
        CHECK(brief != usual);
    }

    TEST_CASE("random stoves cover bores, fuels, woods and parts") {
        const Library library = read_library();
        double least = 1, most = 0;
        int loads = 0, rates = 0, heat = 0, slots = 0, bare = 0, refused = 0;
        std::set<std::string> woods;
        std::set<std::size_t> sections;
        for (std::uint32_t i = 0; i < 300; ++i) try {
                const Stove stove = read_stove(random_stove(stove_seed, i), "", {}, library);
                if (stove.riser.bore > 0) {
                    least = std::min(least, stove.riser.bore);
                    most = std::max(most, stove.riser.bore);
                } else {
                    ++slots;
                }
                ++(stove.heat_source ? heat : stove.burn_rate ? rates : loads);
                if (!stove.barrel) ++bare;
                woods.insert(stove.wood_kind);
                sections.insert(stove.flue.sections.size());
            } catch (const InputError&) {
                ++refused;
            }
        CHECK(most > 3.5 * least);
        for (const int count : {rates, heat, slots, bare}) CHECK(count > 15);
        CHECK(loads > 150);
        CHECK(woods.size() == library.woods.size());
        CHECK(sections.size() == 4);
        CHECK(refused < 15);
    }
}
