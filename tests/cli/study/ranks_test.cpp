#include "cli/study/ranks.h"

#include <doctest/doctest.h>

#include <cstdlib>
#include <map>
#include <thread>

using namespace drawwell;

// `ctest` runs this also under mpirun, where the others take part; see ranks_test beside it.
TEST_SUITE("cli/study/ranks") {
    TEST_CASE("every number is handed out once, and each rank gets its share of them") {
        constexpr std::size_t all = 400;
        const std::unique_ptr<Ranks> ranks = launched_ranks();
        REQUIRE(ranks->begin());
        CHECK(ranks->threads() >= 1);
        std::map<std::size_t, std::string> taken;
        if (!ranks->writer()) {
            // The writer waits for the text, so this one is the first to take a number.
            const std::size_t first = ranks->next();
            const std::string name = ranks->share("");
            for (std::size_t i = first; i < all; i = ranks->next())
                ranks->hand_in(i, name + std::to_string(i) + std::string(20000, 'x'));
            return ranks->finish();
        }
        ranks->share("number ");
        std::thread working([&] {
            for (std::size_t i = ranks->next(); i < all; i = ranks->next()) taken[i] = "own";
        });
        std::map<std::size_t, std::string> received;
        ranks->collect([&](std::size_t i, const std::string& text) { received[i] = text; });
        working.join();
        for (const auto& [i, text] : received) {
            CHECK(text == "number " + std::to_string(i) + std::string(20000, 'x'));
            CHECK(taken.insert({i, "other"}).second);
        }
        CHECK(taken.size() == all);
        CHECK(taken.rbegin()->first == all - 1);
        const bool others = std::getenv("OMPI_COMM_WORLD_SIZE") != nullptr;
        CHECK(received.empty() == !others);
    }

    TEST_CASE("after skipping the rest no number is a row's") {
        OneRank rank;
        CHECK(rank.next() == 0);
        rank.skip_rest();
        CHECK(rank.next() > 1'000'000'000);
        CHECK(rank.next() > 1'000'000'000);
    }
}
