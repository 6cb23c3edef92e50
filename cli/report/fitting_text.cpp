#include "cli/report/fitting_text.h"

#include <fmt/format.h>

#include "cli/read/units.h"
#include "cli/report/page_text.h"

namespace drawwell {

std::pair<std::string, double> fitting_figure(const FittingAnswer& answer) {
    const std::string key(answer.key);
    const double value = answer.value.value_or(0);
    if (answer.unit == "K") return {key + "_c", to_celsius(value)};
    if (answer.unit == "J") return {key + "_mj", to_megajoules(value)};
    if (answer.unit == "1") return {key, value};
    return {key + "_" + std::string(answer.unit), value};
}

std::string fitting_text(const FittingAnswer& answer, UnitSystem system) {
    if (!answer.value) return "never in this burn";
    if (answer.unit == "s") return show_duration(*answer.value);
    if (answer.unit == "K") return show_temperature(*answer.value, system);
    if (answer.unit == "J") return fmt::format("{:.2f} MJ", to_megajoules(*answer.value));
    if (answer.unit == "1") return fmt::format("{:.0f} %", to_percent(*answer.value));
    const ShownUnit unit = shown_unit(answer.unit, system);
    return fmt::format("{:.2f} {}", unit.from_si(*answer.value), unit.label);
}

}  // namespace drawwell
