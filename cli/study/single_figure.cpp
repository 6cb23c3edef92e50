#include "cli/study/single_figure.h"

namespace drawwell {

bool takes_figure(const Key& key) {
    return key.kind == Kind::quantity || key.kind == Kind::table || key.kind == Kind::steps;
}

std::optional<double> figure_of(const Stove& stove, std::string_view key) {
    const std::optional<Value> value = get_value(stove, key);
    if (!value) return {};
    if (const double* number = std::get_if<double>(&*value)) return *number;
    if (const Table* table = std::get_if<Table>(&*value); table && table->y().size() == 1)
        return table->y().front();
    if (const Steps* steps = std::get_if<Steps>(&*value); steps && steps->value().size() == 1)
        return steps->value().front();
    return {};
}

}  // namespace drawwell
