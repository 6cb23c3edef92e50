#include "cli/report/cell_labels.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <system_error>

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

std::string did_you_mean_cell(const Results& results, const Column& column,
                              std::string_view label) {
    const std::vector<std::string> labels = cell_labels(results, column);
    const auto place_of = [](std::string_view text) -> std::optional<double> {
        if (text.starts_with('[')) text.remove_prefix(1);
        double place = 0;
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), place);
        return error == std::errc() && std::isfinite(place) ? std::optional(place) : std::nullopt;
    };
    const std::optional<double> wanted = place_of(label);
    if (column.axis.empty() || labels.empty() || !wanted) return "";
    const auto off = [&](const std::string& each) {
        return std::abs(place_of(each).value_or(0) - *wanted);
    };
    const auto nearest =
        std::min_element(labels.begin(), labels.end(),
                         [&](const auto& a, const auto& b) { return off(a) < off(b); });
    return fmt::format("; did you mean \"{}{}\"?", column.name, *nearest);
}

}  // namespace drawwell
