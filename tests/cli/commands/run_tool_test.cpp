#include "cli/commands/run_tool.h"

#include <doctest/doctest.h>

#include <csignal>

using namespace drawwell;

TEST_SUITE("cli/commands/run_tool") {
    TEST_CASE("a program's exit code comes back, and -1 if there is no such program") {
        CHECK(run_tool({"true"}) == 0);
        CHECK(run_tool({"sh", "-c", "exit 3"}) == 3);
        CHECK(run_tool({"no-such-program-anywhere"}) == -1);
        CHECK(run_tool({"sh", "-c", "kill -9 $$"}) == -1);
    }

    TEST_CASE("arguments reach a program as they are, whatever they hold") {
        CHECK(run_tool({"sh", "-c", "test \"$1\" = 'a b;$(false)'", "sh", "a b;$(false)"}) == 0);
    }

    TEST_CASE("a program heeds signals that drawwell itself does not") {
        void (*before)(int) = std::signal(SIGPIPE, SIG_IGN);
        CHECK(run_tool({"sh", "-c", "kill -s PIPE $$"}) == -1);
        std::signal(SIGPIPE, before);
    }

    TEST_CASE("what is on the PATH is found") {
        CHECK(is_installed("sh"));
        CHECK_FALSE(is_installed("no-such-program-anywhere"));
    }
}
