#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>

#include "validation/compare.h"
#include "validation/measured/cone_slab.h"
#include "validation/measured/stove_runs.h"

using namespace drawwell;

namespace {

constexpr auto name = "measured/spruce_heat_release";
constexpr auto light = "the bed does not know that a light wood loses less mass";
constexpr auto no_char = "the bed has no char that grows and ends the first peak";

constexpr struct {
    double flux;                  // [kW/m2]
    double seconds;               // of the record
    double mean, plateau, first;  // [kW/m2] of the record, see cone_figures
} records[] = {
    {25, 1990, 49.6, 45.6, 141.8}, {35, 1780, 52.9, 51.6, 151.3}, {50, 1440, 63.6, 58.0, 161.5}};

std::vector<double> computed(double flux, double seconds, const Library& library) {
    return cone_figures(cone_release({.wood = "spruce",
                                      .density = 408,
                                      .thickness = 0.02,
                                      .moisture = 0.09,
                                      .flux = 1000 * flux},
                                     seconds, library));
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a spruce slab under a cone heater gives the heat that was measured") {
        std::vector<double> plateau;
        for (const auto& record : records) {
            const auto figures = with_spread([&](const Library& library) {
                return computed(record.flux, record.seconds, library);
            });
            plateau.push_back(figures[1].value);
            compare_beside({name,
                            fmt::format("mean of the record at {} kW/m2 [kW/m2]", record.flux),
                            record.mean, figures[0].value, 0.25, figures[0].spread});
            show_beside({name, fmt::format("plateau, 300-600 s, at {} kW/m2 [kW/m2]", record.flux),
                         record.plateau, figures[1].value, 0.25, figures[1].spread},
                        light);
            show_beside({name, fmt::format("first peak at {} kW/m2 [kW/m2]", record.flux),
                         record.first, figures[2].value, 0.25, figures[2].spread},
                        no_char);
        }
        show_beside({name, "plateau, 50 over 25 kW/m2 [-]", records[2].plateau / records[0].plateau,
                     plateau[2] / plateau[0], 0.1},
                    light);
    }
}
