#include "cli/report/sheet/scale_bar.h"

#include <fmt/format.h>

#include "cli/report/sheet/sheet_text.h"

namespace drawwell {

void add_scale_bar(PaperPage& page, double left, double y, double scale) {
    double length = 0.1;  // [m]
    for (const double longer : {0.2, 0.5, 1.0, 2.0, 5.0})
        if (length * 1000 / scale < 15) length = longer;
    const double paper = length * 1000 / scale;
    for (int i = 0; i < 2; ++i)
        page.lines.push_back(
            {rectangle({left + i * paper / 2, y - 1, left + (i + 1) * paper / 2, y}), Pen::outline,
             true, i == 0 ? "#1d2529" : "#ffffff"});
    page.texts.push_back(
        {{left + paper + 2, y}, fmt::format("{}; scale 1 to {:g}", both_text(length), scale), 2.5});
}

}  // namespace drawwell
