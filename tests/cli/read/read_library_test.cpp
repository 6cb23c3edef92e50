#include "cli/read/read_library.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "tests/near.h"

using namespace drawwell;

namespace {

const Library& library() {
    static const Library read = read_library();
    return read;
}

const Material& material(const std::string& name) {
    return library().materials.at(name);
}

double celsius(const Table& table, double t) {
    return table(t + 273.15);
}

/// Integral of a table between two temperatures [degC], exact for straight pieces.
double integral(const Table& table, double from, double to) {
    double sum = 0, t = from + 273.15;
    const double end = to + 273.15;
    while (t < end) {
        const auto next = std::upper_bound(table.x().begin(), table.x().end(), t);
        const double stop = next == table.x().end() ? end : std::min(*next, end);
        sum += 0.5 * (stop - t) * (table(t) + table(stop));
        t = stop;
    }
    return sum;
}

}  // namespace

TEST_CASE("steel's expansion adds up to the elongation of the standard, and only metals have one") {
    // 1.2e-5 t + 0.4e-8 t^2 - 2.416e-4 (EN 1993-1-2): 6.76e-3 at 500 degC.
    CHECK(integral(*material("mild_steel").expansion, 20, 500) == near(6.7584e-3, 1e-3));
    CHECK(integral(*material("mild_steel_painted").expansion, 20, 750) == near(1.10084e-2, 1e-3));
    // (16 + 4.79e-3 t - 1.243e-6 t^2)(t - 20) 1e-6, straight between four points.
    CHECK(integral(*material("stainless_304").expansion, 20, 600) == near(1.07e-2, 0.01));
    for (const auto& [name, m] : library().materials)
        CHECK(m.expansion.has_value() == (celsius(m.conductivity, 20) > 10));
}

TEST_CASE("every material has a source and sane figures") {
    CHECK(library().materials.size() >= 25);
    for (const auto& [name, m] : library().materials) {
        INFO(name);
        CHECK(m.name == name);
        CHECK(m.source.size() > 20);
        CHECK_FALSE(m.meaning.empty());
        CHECK(m.density > 50);
        CHECK(m.density < 9000);
        for (double k : m.conductivity.y()) {
            CHECK(k > 0.026);  // still air at room temperature
            CHECK(k < 70);
        }
        for (double c : m.heat_capacity.y()) {
            CHECK(c > 400);
            CHECK(c <= 5000);
        }
        CHECK(m.emissivity > 0.05);
        CHECK(m.emissivity < 0.97);
        if (m.hot_face_limit > 0) {
            CHECK(m.hot_face_limit > 273.15 + 150);
            CHECK(m.hot_face_limit < 273.15 + 1500);
        }
        CHECK(m.conductivity_spread > 0.02);
        CHECK(m.conductivity_spread < 0.5);
        CHECK(m.emissivity_spread > 0.02);
        CHECK(m.emissivity_spread <= 0.5);
        CHECK(m.conductivity.first() < 273.15 + 25);
    }
}

TEST_CASE("insulation conducts more as it gets hotter, and metals keep their order") {
    for (const auto& [name, m] : library().materials) {
        if (m.density > 1000) continue;
        INFO(name);
        CHECK(std::is_sorted(m.conductivity.y().begin(), m.conductivity.y().end()));
    }
    CHECK(material("stainless_304").conductivity(373) < material("mild_steel").conductivity(373));
}

TEST_CASE("mild steel follows EN 1993-1-2") {
    const Material& steel = material("mild_steel");
    // Checks 1 and 2, computed from the formulas read; the table is linear between its points.
    const double heat_capacity[][2] = {{20, 440}, {400, 606}, {600, 760}, {735, 5000}, {800, 803}};
    for (const auto& [t, c] : heat_capacity)
        CHECK(celsius(steel.heat_capacity, t) == near(c, 2e-3));
    CHECK(celsius(steel.heat_capacity, 700) == near(1008, 0.01));
    CHECK(celsius(steel.conductivity, 20) == near(53.3, 2e-3));
    CHECK(celsius(steel.conductivity, 400) == near(40.7, 2e-3));
    CHECK(celsius(steel.conductivity, 900) == near(27.3, 2e-3));
    // 561.6 kJ/kg from 20 to 800 degC, the peak at 735 degC included; computed, 0.2 %.
    CHECK(integral(steel.heat_capacity, 20, 800) == near(561.6e3, 2e-3));
    // Means 529.9 (20-400), 578.9 (20-600), 1129 (600-800) J/(kg K); 0.5 %.
    CHECK(integral(steel.heat_capacity, 20, 400) / 380 == near(529.9, 5e-3));
    CHECK(integral(steel.heat_capacity, 20, 600) / 580 == near(578.9, 5e-3));
    CHECK(integral(steel.heat_capacity, 600, 800) / 200 == near(1129, 5e-3));
}

TEST_CASE("stainless steel follows EN 1993-1-2 annex C") {
    // Check 5: 22.2 W/(m K) and 542 J/(kg K) at 600 degC; 0.5 %.
    CHECK(celsius(material("stainless_304").conductivity, 600) == near(22.2, 5e-3));
    CHECK(celsius(material("stainless_304").heat_capacity, 600) == near(542, 5e-3));
}

TEST_CASE("rows that are like another differ only where they say so") {
    const Material &painted = material("mild_steel_painted"), &used = material("mild_steel");
    CHECK(painted.density == used.density);
    CHECK(painted.heat_capacity.y() == used.heat_capacity.y());
    CHECK(painted.emissivity > used.emissivity);
}

TEST_CASE("what can hurt people says so") {
    for (const char* name : {"ceramic_blanket_96", "ceramic_blanket_128", "fibre_board"})
        CHECK(material(name).hazard.find("cancer") != std::string::npos);
    CHECK(material("galvanised_steel").hazard.find("zinc") != std::string::npos);
    CHECK(material("galvanised_steel").hot_face_limit == near(473.15, 1e-9));
}

TEST_CASE("every build-up says its source and is made of materials, under a name of its own") {
    for (const char* name :
         {"board", "blanket", "bricks", "vermiculite", "masonry", "bare_steel", "twin_wall"})
        CHECK(library().build_ups.contains(name));
    const auto rows = read_build_ups();
    CHECK(rows.size() == library().build_ups.size());
    for (const NamedBuildUp& row : rows) {
        INFO(row.name);
        CHECK_FALSE(row.meaning.empty());
        CHECK((row.source.find("common practice, no source") != std::string::npos ||
               row.source.find("our choice") != std::string::npos));
        CHECK_FALSE(library().materials.contains(row.name));
        CHECK(row.name.find(' ') == std::string::npos);  // a blank makes it a layer
        const BuildUp& layers = library().build_ups.at(row.name);
        CHECK(layers.size() == row.layers.size());
        for (const Layer& layer : layers) {
            CHECK(library().materials.contains(layer.material));
            CHECK(layer.thickness >= 0.0005);
            CHECK(layer.thickness < 0.3);
        }
        // Fibre that lies bare sheds dust: a skin is outermost.
        const std::string& outside = layers.back().material;
        for (const char* fibre : {"blanket", "fibre", "aes_board", "wool"})
            CHECK(outside.find(fibre) == std::string::npos);
    }
}

TEST_CASE("every wood has a source and sane figures") {
    CHECK(library().woods.size() >= 10);
    for (const auto& [name, w] : library().woods) {
        INFO(name);
        CHECK(w.name == name);
        CHECK(w.source.size() > 20);
        CHECK_FALSE(w.meaning.empty());
        CHECK(w.carbon + w.hydrogen + w.oxygen == near(1, 1e-9));
        CHECK(w.carbon > 0.47);
        CHECK(w.carbon < 0.53);
        CHECK(w.ash < 0.02);
        CHECK(w.density > 350);
        CHECK(w.density < 900);
    }
    // Check 7, free of ash: 19.69 and 20.67 MJ/kg with 0.5 % ash, computed.
    CHECK(0.995 * library().woods.at("beech").higher_heating_value == near(19.70e6, 1e-3));
    CHECK(0.995 * library().woods.at("spruce").higher_heating_value == near(20.68e6, 1e-3));
}

TEST_CASE("the fuel bed's constants are within what is known of them") {
    const BedConstants& bed = library().bed;
    CHECK(bed.surface_rate.value > 4e-3);  // [kg/(m2 s)] 4 to 9 g, several routes
    CHECK(bed.surface_rate.value < 9e-3);
    // 20 kW/m2 from outside gives the surface rate itself; 50 over 25 kW/m2 the measured 1.43.
    const double own = bed.flame_feedback.value, scale = bed.flux_scale.value;
    CHECK((20e3 + own) / scale == near(1, 1e-9));
    CHECK((50e3 + own) / (25e3 + own) == near(1.43, 0.005));
    CHECK(bed.largest_rate.value > bed.surface_rate.value);
    CHECK(bed.ignition_flux.value == near(12e3, 1e-9));
    CHECK(bed.freezing_temperature.value == near(873.15, 1e-9));
    CHECK(bed.char_yield.value > 0.15);  // 15 to 25 % of dry wood
    CHECK(bed.char_yield.value < 0.25);
    // Embers burn 1 to 3 g/(m2 s): air's oxygen at 900 K 0.09 kg/m3, 2.5 kg of it per kg of carbon.
    const double speed = 1 / (1 / bed.char_kinetic_rate.value + 1 / bed.char_transfer_rate.value);
    const double ember = 0.09 * speed / 2.5;
    CHECK(ember > 1e-3);
    CHECK(ember < 3e-3);
    // ... and die within 15 to 25 minutes.
    const double minutes = 1 / (ember * bed.char_area.value) / 60;
    CHECK(minutes > 15);
    CHECK(minutes < 25);
    for (const Uncertain& u :
         {bed.surface_rate, bed.flame_feedback, bed.flux_scale, bed.largest_rate, bed.ignition_flux,
          bed.response_time, bed.char_yield, bed.char_kinetic_rate, bed.char_transfer_rate,
          bed.char_area, bed.char_to_co, bed.flame_length_factor, bed.flame_temperature,
          bed.flame_absorption, bed.radiant_fraction, bed.ember_temperature, bed.ember_view,
          bed.freezing_temperature}) {
        CHECK(u.spread > 0);
        CHECK(u.spread <= 0.5);
    }
}
