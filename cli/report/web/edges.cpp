#include "cli/report/web/edges.h"

namespace drawwell {

std::vector<double> axis_positions(const Results& results, const Column& column) {
    for (const Axis& axis : results.axes)
        if (axis.name == column.axis) return axis.positions;
    return {};
}

std::vector<double> cell_edges(const std::vector<double>& position, std::optional<double> first,
                               std::optional<double> last) {
    if (position.empty()) return {};
    std::vector<double> edge(position.size() + 1);
    for (std::size_t i = 1; i < position.size(); ++i) edge[i] = (position[i - 1] + position[i]) / 2;
    const std::size_t end = position.size();
    if (end == 1) {
        edge[0] = first.value_or(2 * position[0] - last.value_or(2 * position[0]));
        edge[1] = last.value_or(2 * position[0] - edge[0]);
        return edge;
    }
    edge[0] = first.value_or(2 * position[0] - edge[1]);
    edge[end] = last.value_or(2 * position[end - 1] - edge[end - 1]);
    return edge;
}

}  // namespace drawwell
