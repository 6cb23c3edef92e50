#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>

#include "validation/compare.h"
#include "validation/measured/cone_slab.h"
#include "validation/measured/stove_runs.h"

using namespace drawwell;

namespace {

constexpr auto name = "measured/pine_heat_release";
constexpr auto near = "20 to 35 % too high; the mean of the record is required";
constexpr auto no_char = "the bed has no char that grows and ends the first peak";

constexpr struct {
    double flux;                  // [kW/m2]
    double seconds;               // of the record
    double mean, plateau, first;  // [kW/m2] of the record, see cone_figures
} records[] = {
    {25, 2030, 63, 64.7, 142.8}, {35, 1780, 64.3, 68.2, 158.3}, {50, 1320, 90, 92.0, 201.4}};

std::vector<double> computed(double flux, double seconds, const Library& library) {
    return cone_figures(cone_release(
        {.wood = "pine", .density = 493, .thickness = 0.02, .moisture = 0.09, .flux = 1000 * flux},
        seconds, library));
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("a pine slab under a cone heater gives the heat that was measured") {
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
                        near);
            show_beside({name, fmt::format("first peak at {} kW/m2 [kW/m2]", record.flux),
                         record.first, figures[2].value, 0.25, figures[2].spread},
                        no_char);
        }
        compare_beside({name, "plateau, 50 over 25 kW/m2 [-]",
                        records[2].plateau / records[0].plateau, plateau[2] / plateau[0], 0.1});
    }
}
