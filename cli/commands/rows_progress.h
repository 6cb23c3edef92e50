#pragma once

#include <cstddef>
#include <functional>
#include <iosfwd>
#include <mutex>

#include "cli/commands/progress_line.h"

namespace drawwell {

/// Tells how far a study is, how fast it goes and how long it will take.
class RowsProgress {
  public:
    RowsProgress(std::ostream& out, std::size_t rows, bool terminal,
                 std::function<double()> clock = steady_seconds);

    /// So many rows are finished. May be called by several threads.
    void finished(std::size_t done);

  private:
    ProgressLine line_;
    std::size_t rows_;
    std::mutex speaking_;
};

}  // namespace drawwell
