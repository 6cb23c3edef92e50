#include "cli/commands/interrupt_watch.h"

namespace drawwell {
namespace {

// A signal handler can reach nothing but static storage.
std::atomic<bool> interrupted = false;
static_assert(std::atomic<bool>::is_always_lock_free, "a signal handler may not wait");

extern "C" void raise_flag(int) {
    interrupted = true;
}

}  // namespace

InterruptWatch::InterruptWatch() {
    interrupted = false;
    struct sigaction action = {};
    action.sa_handler = raise_flag;
    action.sa_flags = static_cast<int>(SA_RESETHAND);
    sigemptyset(&action.sa_mask);
    sigaction(SIGINT, &action, &old_interrupt_);
    sigaction(SIGTERM, &action, &old_terminate_);
}

InterruptWatch::~InterruptWatch() {
    sigaction(SIGINT, &old_interrupt_, nullptr);
    sigaction(SIGTERM, &old_terminate_, nullptr);
}

const std::atomic<bool>& InterruptWatch::raised() const {
    return interrupted;
}

}  // namespace drawwell
