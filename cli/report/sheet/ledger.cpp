#include "cli/report/sheet/ledger.h"

#include <algorithm>

#include "cli/read/units.h"
#include "cli/report/sheet/sheet_text.h"

namespace drawwell {
namespace {

constexpr double size = 2.5;                        // [mm] of letters
constexpr double bend = 7, gap = 1.2;               // [mm] where lines slant, and end before a text
constexpr double inch_column = 25, mm_column = 17;  // [mm] widths
constexpr double middle = 0.27;  // [-] of the size, of a letter over its base line

void write_row(PaperPage& page, const Ledger& ledger, const LedgerRow& row, double y) {
    const PaperBox& box = ledger.box;
    const double base = y + middle * size;
    const double name_width = box.width() - inch_column - mm_column - 1;
    page.texts.push_back({{box.left, base}, cut_to(row.name, name_width, size), size});
    page.texts.push_back({{box.right - inch_column, base},
                          cut_to(mm_text(row.length), mm_column - 1, size),
                          size,
                          true,
                          PaperAnchor::end});
    page.texts.push_back({{box.right, base},
                          cut_to(show_inches(row.length), inch_column - 1, size),
                          size,
                          false,
                          PaperAnchor::end});
}

}  // namespace

std::vector<double> spread(const std::vector<double>& wishes, double top, double bottom,
                           double pitch) {
    const auto fit = static_cast<std::size_t>(std::max((bottom - top) / pitch + 1, 0.0));
    std::vector<double> places(wishes.begin(),
                               wishes.begin() + static_cast<long>(std::min(fit, wishes.size())));
    // Down as far as needed, then up from the bottom.
    double least = top;
    for (double& place : places) {
        place = std::max(place, least);
        least = place + pitch;
    }
    double most = bottom;
    for (std::size_t i = places.size(); i-- > 0;) {
        places[i] = std::min(places[i], most);
        most = places[i] - pitch;
    }
    return places;
}

void add_ledger_title(PaperPage& page, const Ledger& ledger, std::string_view text, double y) {
    page.texts.push_back({{ledger.box.left, y}, cut_to(text, ledger.box.width(), 2.5), 2.5, true});
}

std::size_t add_ledger(PaperPage& page, const Ledger& ledger, std::vector<LedgerRow> rows) {
    std::stable_sort(rows.begin(), rows.end(),
                     [](const LedgerRow& a, const LedgerRow& b) { return a.from.y < b.from.y; });
    std::vector<double> wishes;
    wishes.reserve(rows.size());
    for (const LedgerRow& row : rows) wishes.push_back(row.from.y);
    const std::vector<double> places =
        spread(wishes, ledger.box.top, ledger.box.bottom, Ledger::pitch);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const double turn = ledger.box.left - bend;
        page.lines.push_back({{rows[i].from,
                               {std::max(turn, rows[i].from.x), rows[i].from.y},
                               {ledger.box.left - gap, places[i]}},
                              Pen::measure});
        write_row(page, ledger, rows[i], places[i]);
    }
    return rows.size() - places.size();
}

void add_ledger_row(PaperPage& page, const Ledger& ledger, const LedgerRow& row, double y) {
    page.lines.push_back({{row.from, {ledger.box.left - gap, y}}, Pen::measure});
    write_row(page, ledger, row, y);
}

}  // namespace drawwell
