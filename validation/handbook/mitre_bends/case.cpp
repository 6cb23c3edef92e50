#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "models/laws/losses.h"
#include "solver/constants.h"
#include "validation/compare.h"

using namespace drawwell;

namespace {

constexpr auto name = "handbook/mitre_bends";
constexpr auto sources_differ = "sources differ: the program follows Rennels";

double fast(double degrees) {
    return mitre_bend_loss(degrees * constants::pi / 180);
}
double slow(double degrees, double reynolds) {
    return fast(degrees) * slow_bend_factor(reynolds);
}

}  // namespace

TEST_SUITE("quick") {
    TEST_CASE("mitre bends lose what handbooks give, as far as these agree") {
        double worst = 0;
        for (const auto& [degrees, loss] : {std::pair{30, 0.153},
                                            {45, 0.304},
                                            {60, 0.530},
                                            {90, 1.202},
                                            {120, 2.026},
                                            {150, 2.713}})
            worst = std::max(worst, share_off(fast(degrees), loss));
        compare({name, "Rennels, 30 to 150 degrees, worst share off [-]", worst, 3e-3});
        compare_beside({name, "Miller, right angle", 1.19, fast(90), 0.12});
        compare_beside({name, "Crane, right angle, 60 times 0.018", 1.08, fast(90), 0.12});
        compare_beside({name, "Blevins, right angle, Re 2e5", 1.1, slow(90, 2e5), 0.12});
        compare_beside({name, "Blevins, right angle, Re 5000", 2.30, slow(90, 5000), 0.12});
        show_beside({name, "Blevins, 60 degrees, Re 2e5", 0.5, slow(60, 2e5), 0.12},
                    sources_differ);
        show_beside({name, "Blevins, 30 degrees, Re 2e5", 0.1, slow(30, 2e5), 0.12},
                    sources_differ);
        show_beside({name, "Blevins, 120 degrees, Re 2e5", 1.5, slow(120, 2e5), 0.12},
                    sources_differ);
        // Hooper's two-K method: 1000/Re + 1.15 (1 + 1/D) with the bore in inches.
        show_beside({name, "Hooper, right angle, 6 in, Re 3000", 1.675, slow(90, 3000), 0.12},
                    "sources differ in slow flow: the program follows Blevins");
        show_beside({name, "Hooper, right angle, 6 in, Re 2e5", 1000 / 2e5 + 1.15 * (1 + 1 / 6.0),
                     slow(90, 2e5), 0.12},
                    sources_differ);
    }
}
