#include "cli/study/fit/sensor.h"

#include <doctest/doctest.h>

#include "solver/errors.h"
#include "tests/near.h"

using namespace drawwell;

namespace {

const std::string table =
    "time_s,TC1,TC2 [°F],draft (mmH2O),balance_g,feed_suction_pa,remarks\n"
    "0,20,68,0.1,1000,0.5,lit\n"
    "60,nan,212,,900,0.6,\n"
    "120,30,,0.2,800,0.7,door shut\n";

std::vector<LoggedSensor> sensors(const SensorWishes& wishes) {
    return sensors_of(read_log(table, "burn.csv"), wishes);
}

}  // namespace

TEST_SUITE("cli/study/fit/sensor") {
    TEST_CASE("columns are mapped by their headers, with units from there or behind the map") {
        const auto all =
            sensors({.maps = {"TC1=plate_temperature[0.1m]", "TC2 [°F]=outlet_gas_temperature",
                              "balance_g=fuel_mass", "draft=flue_draft"}});
        REQUIRE(all.size() == 5);  // feed_suction by its own name
        CHECK(all[0].time == std::vector{0.0, 120.0});
        CHECK(all[0].value[1] == near(303.15, 1e-12));
        CHECK_FALSE(all[0].sensor.bead);
        CHECK(all[1].value.size() == 2);
        CHECK(all[1].value[1] == near(373.15, 1e-9));
        CHECK(all[1].sensor.bead);
        CHECK(all[2].value[1] == near(1.96133, 1e-9));
        CHECK(all[3].value[0] == near(1, 1e-12));
        CHECK(all[4].sensor.column == "feed_suction");
        const auto mapped = sensors({.maps = {"TC1=plate_temperature in K"}});
        CHECK(mapped[0].value[0] == near(20, 1e-12));
    }

    TEST_CASE("beads and noises are as said, and a difference of degrees has no zero") {
        const auto all = sensors({.maps = {"TC1=outlet_gas_temperature", "balance=fuel_mass"},
                                  .beads = {"TC1=1.5 mm shielded emissivity 0.6"},
                                  .noises = {"TC1=1.8 °F,5 °C", "balance=20g"}});
        CHECK(all[0].sensor.bead->diameter == near(0.0015, 1e-12));
        CHECK(all[0].sensor.bead->shielded);
        CHECK(all[0].sensor.bead->emissivity == near(0.6, 1e-12));
        CHECK(all[0].sensor.noise.reading == near(1, 1e-9));
        CHECK(all[0].sensor.noise.common_at(1000, Quantity::temperature) == near(5, 1e-9));
        CHECK(all[1].sensor.noise.reading == near(0.02, 1e-12));
    }

    TEST_CASE("a thermocouple's calibration is its class or its share of the reading") {
        const Sensor sensor = usual_sensor("outlet_gas_temperature", "");
        // 2.5 K below 333 degC, 0.75 % above, each over the root of three.
        CHECK(sensor.noise.common_at(373.15, sensor.quantity) == near(1.443, 1e-3));
        CHECK(sensor.noise.common_at(873.15, sensor.quantity) == near(4.5 / 1.7321, 1e-3));
    }

    TEST_CASE("what can't be mapped is refused with the option and what was meant") {
        const auto refuses = [](const SensorWishes& wishes, const char* part) {
            CHECK_THROWS_WITH_AS(sensors(wishes), doctest::Contains(part), InputError);
        };
        refuses({.maps = {"TC3=flue_draft"}}, "no column \"TC3\"; did you mean \"TC1\"");
        refuses({.maps = {"TC1=plate_temperatur"}}, "did you mean \"plate_temperature\"");
        refuses({.maps = {"TC1=flue_draft[0.1m]"}}, "one value an instant");
        refuses({.maps = {"TC1=plate_temperature[0.1"}}, "[0.105m]");
        refuses({.maps = {"TC1"}}, "--map TC1: write");
        refuses({.maps = {"remarks=flue_draft"}}, "burn.csv:2: column \"remarks\": \"lit\"");
        refuses({.maps = {"TC1=heat_release"}}, "--noise 'TC1=...'");
        refuses({.maps = {"TC1=plate_temperature in °G"}}, "--map TC1=plate_temperature in °G: un");
        refuses({.maps = {"TC1=flue_draft", "TC1=feed_suction"}}, "mapped already");
        refuses({.beads = {"TC1=1mm"}}, "map the column TC1 first");
        refuses({.maps = {"TC1=plate_temperature"}, .beads = {"TC1=1mm"}}, "no temperature of gas");
        refuses({.maps = {"TC1=outlet_gas_temperature"}, .beads = {"TC1=1m"}}, "up to 50 mm");
        CHECK_THROWS_WITH_AS(sensors_of(read_log("time_s,A\n0,1\n1,2\n", "b.csv"), {}),
                             doctest::Contains("no column is mapped"), InputError);
    }

    TEST_CASE("what is logged already is no candidate for logging next") {
        const auto logged = sensors({});
        REQUIRE(logged.size() == 1);
        for (const Sensor& candidate : candidate_sensors(logged))
            CHECK(candidate.column != "feed_suction");
        CHECK(candidate_sensors(logged).size() + 1 == candidate_sensors({}).size());
    }
}
