#pragma once

#include <cstddef>
#include <functional>
#include <iosfwd>
#include <mutex>

#include "cli/commands/progress.h"

namespace drawwell {

/// Tells how far a study is, how fast it goes and how long it will take: nothing for the first two
/// seconds; then, on a terminal, one line rewritten in place, elsewhere a line every ten seconds.
class RowsProgress {
  public:
    RowsProgress(std::ostream& out, std::size_t rows, bool terminal,
                 std::function<double()> clock = steady_seconds);
    ~RowsProgress();
    RowsProgress(const RowsProgress&) = delete;
    RowsProgress& operator=(const RowsProgress&) = delete;

    /// So many rows are finished. May be called by several threads.
    void finished(std::size_t done);

  private:
    std::ostream& out_;
    std::size_t rows_;
    bool terminal_;
    std::function<double()> clock_;
    double start_, next_;  // by the clock
    bool line_open_ = false;
    std::mutex speaking_;
};

}  // namespace drawwell
