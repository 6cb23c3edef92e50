#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/report/sheet/paper.h"

namespace drawwell {

/// A dimension written in the column beside a drawing, so that no text ever stands in it.
struct LedgerRow {
    PaperPoint from;  // where its line leaves the drawing
    std::string name;
    double length = 0;  // [m]
};

/// The column: rows are spread between top and bottom, near where their lines come from.
struct Ledger {
    PaperBox box;

    static constexpr double pitch = 4.2;  // [mm] from row to row
};

/// Puts rows at least a pitch apart, each as near to its wish as its neighbours let it; in the
/// order of the wishes. Gives as many as fit between top and bottom.
std::vector<double> spread(const std::vector<double>& wishes, double top, double bottom,
                           double pitch);

/// A title over the column, its base line at a height.
void add_ledger_title(PaperPage& page, const Ledger& ledger, std::string_view text, double y);

/// Writes the rows with the lines that lead to them; those that find no room are left out. Gives
/// how many were.
std::size_t add_ledger(PaperPage& page, const Ledger& ledger, std::vector<LedgerRow> rows);

/// One row at a height of its own, with its line straight to it.
void add_ledger_row(PaperPage& page, const Ledger& ledger, const LedgerRow& row, double y);

}  // namespace drawwell
