#include "cli/commands/interrupt_watch.h"

#include <doctest/doctest.h>

using namespace drawwell;

TEST_SUITE("cli/commands/interrupt_watch") {
    TEST_CASE("Ctrl-C and a request to end raise the flag, anew for each watch") {
        for (const int signal : {SIGINT, SIGTERM}) {
            const InterruptWatch watch;
            CHECK_FALSE(watch.raised());
            raise(signal);
            CHECK(watch.raised());
        }
    }

    TEST_CASE("afterwards signals do what they did before") {
        struct sigaction before = {};
        sigaction(SIGTERM, nullptr, &before);
        { const InterruptWatch watch; }
        struct sigaction after = {};
        sigaction(SIGTERM, nullptr, &after);
        CHECK((after.sa_handler == before.sa_handler));
    }
}
