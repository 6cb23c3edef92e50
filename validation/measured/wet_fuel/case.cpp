#include <doctest/doctest.h>

#include "tests/models/sample_burn.h"
#include "validation/compare.h"
#include "validation/measured/builders_stove.h"

using namespace drawwell;

namespace {

constexpr auto name = "measured/wet_fuel";

double lid_peak(const std::string& moisture, const Library& library) {
    return *burn(builders_stove().with({"riser.bore=210 mm", "wood.moisture=" + moisture}), library)
                .summary.plate_centre_max;
}

}  // namespace

TEST_SUITE("heavy") {
    TEST_CASE("wood that hisses costs the lid tens of kelvin") {
        const auto lost = with_spread([](const Library& library) {
            const double seasoned = lid_peak("16 % wet", library);
            return std::vector{seasoned - lid_peak("25 % wet", library),
                               seasoned - lid_peak("35 % wet", library)};
        });
        compare_band({name, "lid lost, 35 against 16 % wet [K]", 56, unbounded, lost[1]});
        compare_band({name, "lid lost, 25 against 16 % wet [K]", 56, unbounded, lost[0]});
    }
}
