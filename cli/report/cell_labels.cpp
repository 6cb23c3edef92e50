#include "cli/report/cell_labels.h"

#include <fmt/format.h>

#include <algorithm>

namespace drawwell {

std::vector<std::string> cell_labels(const Results& results, const Column& column) {
    if (column.axis.empty()) return {""};
    std::vector<std::string> labels;
    const auto axis = std::find_if(results.axes.begin(), results.axes.end(),
                                   [&](const Axis& a) { return a.name == column.axis; });
    if (axis != results.axes.end() && axis->positions.size() == column.width)
        for (const double position : axis->positions)
            labels.push_back(fmt::format("[{:.4g}{}]", position, axis->unit));
    std::vector<std::string> sorted = labels;
    std::sort(sorted.begin(), sorted.end());
    if (labels.empty() || std::adjacent_find(sorted.begin(), sorted.end()) != sorted.end()) {
        labels.clear();
        for (std::size_t cell = 0; cell < column.width; ++cell)
            labels.push_back(fmt::format("[{}]", cell));
    }
    return labels;
}

}  // namespace drawwell
