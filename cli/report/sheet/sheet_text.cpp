#include "cli/report/sheet/sheet_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/units.h"

namespace drawwell {
namespace {

std::string tenths(double value) {
    std::string text = fmt::format("{:.1f}", value);
    if (text.ends_with(".0")) text.resize(text.size() - 2);
    return text == "-0" ? "0" : text;
}

template <class Show>
std::string joined(std::initializer_list<double> lengths, Show show) {
    std::string text;
    for (const double length : lengths) text += (text.empty() ? "" : " x ") + show(length);
    return text;
}

}  // namespace

std::string mm_text(double length) {
    return tenths(to_millimetres(length)) + " mm";
}

std::string both_text(double length) {
    return fmt::format("{} ({})", mm_text(length), show_inches(length));
}

std::string sizes_mm(std::initializer_list<double> lengths) {
    return joined(lengths, [](double length) { return tenths(to_millimetres(length)); }) + " mm";
}

std::string sizes_inch(std::initializer_list<double> lengths) {
    return joined(lengths,
                  [](double length) {
                      std::string text = show_inches(length);
                      text.resize(text.size() - 3);  // " in" stands once, at the end
                      return text;
                  }) +
           " in";
}

std::string spoken(std::string name) {
    std::replace(name.begin(), name.end(), '_', ' ');
    return name;
}

std::string three_digits(double value) {
    if (!(std::abs(value) > 0)) return "0";
    const int above = static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
    return fmt::format("{:.{}f}", value, std::clamp(3 - above, 0, 6));
}

}  // namespace drawwell
