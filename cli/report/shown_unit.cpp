#include "cli/report/shown_unit.h"

#include "cli/read/units.h"

namespace drawwell {

ShownUnit shown_unit(std::string_view unit) {
    if (unit == "K") return {"°C", to_celsius};
    if (unit == "kg/s") return {"g/s", to_grams};
    if (unit == "W") return {"kW", to_kilowatts};
    if (unit == "J") return {"MJ", to_megajoules};
    if (unit == "m") return {"mm", to_millimetres};
    return {unit == "1" ? "" : std::string(unit), [](double value) { return value; }};
}

}  // namespace drawwell
