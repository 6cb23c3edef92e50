#include "solver/results.h"

#include <algorithm>

namespace drawwell {

const Column* Results::find(std::string_view name) const {
    const auto it = std::find_if(columns.begin(), columns.end(),
                                 [&](const Column& column) { return column.name == name; });
    return it == columns.end() ? nullptr : &*it;
}

}  // namespace drawwell
