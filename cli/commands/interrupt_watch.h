#pragma once

#include <csignal>

#include <atomic>

namespace drawwell {

/// While it lives, the first Ctrl-C or SIGTERM only raises a flag; a second one ends the program.
class InterruptWatch {
  public:
    InterruptWatch();
    /// Puts back what signals did before.
    ~InterruptWatch();
    InterruptWatch(const InterruptWatch&) = delete;
    InterruptWatch& operator=(const InterruptWatch&) = delete;

    const std::atomic<bool>& raised() const;

  private:
    struct sigaction old_interrupt_ = {};
    struct sigaction old_terminate_ = {};
};

}  // namespace drawwell
