#include "models/fouling.h"

#include <doctest/doctest.h>

#include "models/build_network.h"
#include "tests/models/plain_stove.h"
#include "tests/models/sample_burn.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

Library with_soot() {
    Library library = plain_library();
    library.materials["soot"] = plain_material(150, 0.07, 900, 0.95);
    return library;
}

Stove sooted() {
    Stove stove = plain_stove();
    stove.riser.soot = 0.002;
    stove.barrel->soot = 0.003;
    for (FlueSection& section : stove.flue.sections) section.soot = 0.004;
    return stove;
}

const OutsideFace& face_of(const BuiltStove& built, const std::string& name) {
    for (const OutsideFace& face : built.network.outside)
        if (face.name == name) return face;
    FAIL("no such face: " << name);
    return built.network.outside.front();
}

}  // namespace

TEST_SUITE("models/fouling") {
    TEST_CASE(
        "soot takes twice its thickness of every bore, and lies on the gas's side of the wall") {
        const Stove clean = plain_stove(), lined = with_soot_layers(sooted());
        CHECK(lined.riser.bore == near(clean.riser.bore - 0.004, 1e-12));
        CHECK(lined.riser.lining.front().material == "soot");
        CHECK(lined.riser.lining.front().thickness == 0.002);
        CHECK(lined.riser.lining.back().material == "soot");  // on its skin, in the barrel
        CHECK(lined.riser.lining.back().thickness == 0.003);
        CHECK(lined.barrel->shell.front().material == "soot");
        const FlueSection &swept = clean.flue.sections[0], &section = lined.flue.sections[0];
        CHECK(section.bore == near(swept.bore - 0.008, 1e-12));
        CHECK(section.wall.front().material == "soot");
        CHECK(section.bore + 2 * thickness(section.wall) ==
              near(swept.bore + 2 * thickness(swept.wall), 1e-12));
    }

    TEST_CASE("a clean stove stays as it is") {
        const Stove clean = plain_stove(), lined = with_soot_layers(clean);
        CHECK(!is_sooted(clean));
        CHECK(is_sooted(sooted()));
        CHECK(lined.riser.bore == clean.riser.bore);
        CHECK(lined.riser.lining.size() == clean.riser.lining.size());
        CHECK(lined.barrel->shell.size() == clean.barrel->shell.size());
        CHECK(lined.flue.sections[0].wall.size() == clean.flue.sections[0].wall.size());
    }

    TEST_CASE("from outside a sooted stove is as large as a clean one") {
        const BuiltStove clean = build_network(plain_stove(), with_soot()),
                         lined = build_network(sooted(), with_soot());
        for (const char* name : {"barrel", "flue.stack", "riser"})
            CHECK(sum_of(face_of(lined, name).area) ==
                  near(sum_of(face_of(clean, name).area), 1e-9));
    }

    TEST_CASE("soot roughens a wall, a film of it no more than the wall is rough by itself") {
        CHECK(sooted_roughness(1e-3, 0) == 1e-3);
        CHECK(sooted_roughness(1e-3, 1e-3) == 1e-3);
        CHECK(sooted_roughness(1e-3, 1e-2) > 2e-3);
    }

    TEST_CASE("soot in the flue costs air, and keeps heat in what gas still passes") {
        const std::initializer_list<std::string> hour = {"burn.duration=40min"};
        const BurnOutcome clean = testing::burn_sample(hour),
                          fouled = testing::burn_sample(
                              {"burn.duration=40min", "flue.stack.soot=20mm", "barrel.soot=2mm"});
        CHECK(fouled.summary.air_flow_mean < 0.8 * clean.summary.air_flow_mean);
        CHECK(fouled.summary.exit_gas_mean > clean.summary.exit_gas_mean);
        CHECK(fouled.complete);
    }
}
