#include "models/uncertain_inputs.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "tests/models/plain_stove.h"
#include "tests/near.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

const UncertainInput& named(const std::vector<UncertainInput>& inputs, const std::string& name) {
    const auto found = std::find_if(inputs.begin(), inputs.end(),
                                    [&](const UncertainInput& each) { return each.name == name; });
    REQUIRE(found != inputs.end());
    return *found;
}

}  // namespace

TEST_SUITE("models/uncertain_inputs") {
    TEST_CASE("materials the stove is made of, the fuel bed and the day, each once") {
        Library library = plain_library();
        library.materials["felt"] = library.materials["board"];
        const auto inputs = uncertain_inputs(library, plain_stove());
        std::set<std::string> names;
        for (const UncertainInput& input : inputs) CHECK(names.insert(input.name).second);
        CHECK(names.contains("board.conductivity"));
        CHECK(names.contains("sheet.emissivity"));
        CHECK(names.contains("fuel_bed.surface_rate"));
        CHECK(names.contains("day.outdoor"));
        CHECK_FALSE(names.contains("felt.conductivity"));
        CHECK(inputs.size() == 2 * 3 + bed_members.size() + 3);
    }

    TEST_CASE("none off is as it was, one off is a spread more, minus one undoes it") {
        const Library usual = plain_library();
        for (const UncertainInput& input : uncertain_inputs(usual, plain_stove())) {
            Library library = usual;
            Stove stove = plain_stove();
            input.set(0, library, stove);
            CHECK(library.bed.surface_rate.value == usual.bed.surface_rate.value);
            CHECK(stove.site.outdoor(0) == plain_stove().site.outdoor(0));
        }
        Library library = usual;
        library.bed.surface_rate = {0.006, 0.25};
        Stove stove = plain_stove();
        const auto inputs = uncertain_inputs(library, stove);
        const UncertainInput& rate = named(inputs, "fuel_bed.surface_rate");
        rate.set(1, library, stove);
        CHECK(library.bed.surface_rate.value == near(0.0075, 1e-12));
        rate.set(-1, library, stove);
        CHECK(library.bed.surface_rate.value == near(0.006, 1e-12));
        named(inputs, "board.conductivity").set(1, library, stove);
        CHECK(library.materials["board"].conductivity(300) == near(0.12, 1e-12));
    }

    TEST_CASE("shares stay shares, and an outdoor temperature is shifted in kelvin") {
        Library library = plain_library();
        library.day = {.outdoor = 5, .pressure = 0.01, .wood_moisture = 0.15};
        library.bed.wood_absorptivity.spread = 0.05;
        Stove stove = plain_stove();
        stove.loads.emplace_back().moisture_wet_basis = 0.5;
        for (const UncertainInput& input : uncertain_inputs(library, stove))
            input.set(6, library, stove);
        for (const auto& [name, material] : library.materials) CHECK(material.emissivity <= 1);
        CHECK(library.bed.wood_absorptivity.value == 1);
        CHECK(stove.loads[0].moisture_wet_basis == near(0.6, 1e-12));
        CHECK(stove.site.outdoor(0) == near(plain_stove().site.outdoor(0) + 30, 1e-9));
    }
}
