#include "cli/report/choose_columns.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "cli/read/nearest.h"
#include "cli/report/cell_labels.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

const Axis* axis_of(const Results& results, const Column& column) {
    const auto found = std::find_if(results.axes.begin(), results.axes.end(),
                                    [&](const Axis& axis) { return axis.name == column.axis; });
    return found == results.axes.end() ? nullptr : &*found;
}

void add_axis(Results& chosen, const Axis& axis) {
    for (const Axis& known : chosen.axes)
        if (known.name == axis.name) return;
    chosen.axes.push_back(axis);
}

const Column& column_named(const Results& results, const std::string& name) {
    if (const Column* column = results.find(name)) return *column;
    std::vector<std::string> known;
    for (const Column& column : results.columns) known.push_back(column.name);
    throw InputError("--columns " + name + ": the result has no such column" +
                     did_you_mean(name, known) + "; `drawwell list columns` names all");
}

/// One cell of a column as a column over an axis of that one position.
void add_cell(Results& chosen, const Results& results, const Column& column,
              const std::string& label) {
    const std::vector<std::string> labels = cell_labels(results, column);
    const auto found = std::find(labels.begin(), labels.end(), label);
    if (found == labels.end() || label.empty()) {
        std::string all;
        for (const std::string& each : labels) all += (all.empty() ? "" : ", ") + each;
        throw InputError("--columns " + column.name + label + ": the column has no such place; " +
                         (column.axis.empty() ? "it has one value an instant" : "it has " + all) +
                         did_you_mean_cell(results, column, label));
    }
    const auto cell = static_cast<std::size_t>(found - labels.begin());
    Column one{column.name, column.unit, column.meaning, column.axis + label, 1, {}};
    for (std::size_t step = 0; step < results.time.size(); ++step)
        one.values.push_back(column.values[step * column.width + cell]);
    if (const Axis* axis = axis_of(results, column))
        add_axis(chosen, {one.axis, axis->unit, axis->meaning, {axis->positions.at(cell)}});
    chosen.columns.push_back(std::move(one));
}

std::vector<std::size_t> instants(const std::vector<double>& time, double every) {
    std::vector<std::size_t> kept;
    double next = -std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < time.size(); ++i) {
        if (time[i] < next && i + 1 < time.size()) continue;
        kept.push_back(i);
        if (every > 0) next = (std::floor(time[i] / every * (1 + 1e-12)) + 1) * every;
    }
    return kept;
}

}  // namespace

Results choose_columns(const Results& results, std::span<const std::string> names, double every) {
    Results chosen;
    if (names.empty()) {
        chosen = results;
    } else {
        chosen.time = results.time;
        for (const std::string& name : names) {
            const std::size_t bracket = name.find('[');
            const Column& column = column_named(results, name.substr(0, bracket));
            if (bracket != std::string::npos) {
                add_cell(chosen, results, column, name.substr(bracket));
                continue;
            }
            if (const Axis* axis = axis_of(results, column)) add_axis(chosen, *axis);
            chosen.columns.push_back(column);
        }
    }
    const std::vector<std::size_t> kept = instants(chosen.time, every);
    for (Column& column : chosen.columns) {
        std::vector<double> values;
        values.reserve(kept.size() * column.width);
        for (const std::size_t step : kept)
            for (std::size_t cell = 0; cell < column.width; ++cell)
                values.push_back(column.values[step * column.width + cell]);
        column.values = std::move(values);
    }
    std::vector<double> time;
    time.reserve(kept.size());
    for (const std::size_t step : kept) time.push_back(chosen.time[step]);
    chosen.time = std::move(time);
    return chosen;
}

}  // namespace drawwell
