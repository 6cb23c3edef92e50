#include "validation/simulators/reference.h"

#include <algorithm>
#include <fstream>
#include <sstream>

#include "solver/errors.h"

namespace drawwell {
namespace {

std::vector<double> numbers(std::istringstream& line) {
    std::vector<double> all;
    for (std::string part; std::getline(line, part, ',');) all.push_back(std::stod(part));
    return all;
}

}  // namespace

const std::vector<double>& Reference::of(const std::string& name) const {
    const auto found = std::find(names.begin(), names.end(), name);
    if (found == names.end()) throw InputError("no quantity of the reference is called " + name);
    return values[static_cast<std::size_t>(found - names.begin())];
}

double Reference::between(double place, std::size_t time) const {
    const auto place_of = [](const std::string& name) {
        return std::stod(name.substr(name.find('.') + 1)) / 1e3;
    };
    const auto beyond =
        std::find_if(names.begin() + 1, names.end() - 1,
                     [&](const std::string& name) { return place_of(name) > place; });
    const auto i = static_cast<std::size_t>(beyond - names.begin());
    const double from = place_of(names[i - 1]), to = place_of(names[i]);
    const double share = (place - from) / (to - from);
    return (1 - share) * values[i - 1][time] + share * values[i][time];
}

Reference read_reference(const std::string& name) {
    std::ifstream file(DRAWWELL_SOURCES "/validation/" + name + "/reference.csv");
    if (!file) throw InputError(name + " has no reference.csv");
    Reference reference;
    std::string text;
    std::getline(file, text);
    reference.program = text.substr(std::min<std::size_t>(2, text.size()));  // after "# "
    bool first = true;
    while (std::getline(file, text)) {
        std::istringstream line(text);
        std::string head;
        std::getline(line, head, ',');
        if (first) {
            reference.at = numbers(line);
            first = false;
            continue;
        }
        reference.names.push_back(head);
        reference.values.push_back(numbers(line));
        if (reference.values.back().size() != reference.at.size())
            throw InputError(name + "/reference.csv: " + head + " has another number of values");
    }
    return reference;
}

}  // namespace drawwell
