#include "cli/read/read_library.h"

#include <fmt/format.h>

#include <cmath>
#include <string_view>

#include "cli/read/data_table.h"
#include "cli/read/layer_text.h"
#include "models/laws/heating_value.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

Material read_material(const DataTable& row) {
    Material m;
    m.name = row.name();
    m.meaning = row.text("meaning");
    m.density = row.positive("density_kg_m3");
    m.conductivity = row.by_temperature("conductivity_by_c");
    m.heat_capacity = row.by_temperature("heat_capacity_by_c");
    m.emissivity = row.share("emissivity");
    if (row.has("expansion_by_c")) m.expansion = row.by_temperature("expansion_by_c");
    if (row.has("hot_face_limit_c")) m.hot_face_limit = row.temperature("hot_face_limit_c");
    m.conductivity_spread = row.share("conductivity_spread");
    m.emissivity_spread = row.share("emissivity_spread");
    if (row.has("hazard")) m.hazard = row.text("hazard");
    m.source = row.text("source");
    return m;
}

Wood read_wood(const DataTable& row) {
    const double nitrogen = row.share("nitrogen");
    Wood w;
    w.name = row.name();
    w.meaning = row.text("meaning");
    w.carbon = row.share("carbon");
    w.hydrogen = row.share("hydrogen");
    const double oxygen = row.share("oxygen");
    w.ash = row.share("ash");
    w.density = row.positive("density_kg_m3");
    w.source = row.text("source");
    if (std::abs(w.carbon + w.hydrogen + oxygen + nitrogen - 1) > 1e-6)
        row.fail("carbon", "carbon, hydrogen, oxygen and nitrogen must sum to 1");
    w.higher_heating_value = wood_heating_value(
        {.carbon = w.carbon, .hydrogen = w.hydrogen, .oxygen = oxygen, .nitrogen = nitrogen});
    w.oxygen = oxygen + nitrogen;
    return w;
}

BedConstants read_bed(const DataFile& file) {
    BedConstants bed;
    for (const auto& [name, member] : bed_members) {
        const DataTable row = file.row(name);
        row.text("source");
        row.text("unit");
        bed.*member = {
            .value = row.has("value_c") ? row.temperature("value_c") : row.positive("value"),
            .spread = row.share("spread")};
    }
    return bed;
}

DaySpread read_day(const DataFile& file) {
    const auto spread = [&](std::string_view name) {
        const DataTable row = file.row(name);
        row.text("source");
        return row.positive("spread");
    };
    return {.outdoor = spread("outdoor"),
            .pressure = spread("pressure"),
            .wood_moisture = spread("wood_moisture")};
}

/// Every build-up by its name; none may stand on another or share a material's name.
std::map<std::string, BuildUp> understood_build_ups(const Library& materials_only) {
    std::map<std::string, BuildUp> build_ups;
    for (const NamedBuildUp& row : read_build_ups()) {
        try {
            if (materials_only.materials.contains(row.name))
                throw InputError("a material has this name");
            for (const std::string& said : row.layers)
                build_ups[row.name].push_back(parse_layers(said, materials_only).front());
        } catch (const InputError& error) {
            throw InputError(fmt::format("data/build_ups.toml: {}: {}", row.name, error.what()));
        }
    }
    return build_ups;
}

}  // namespace

std::vector<NamedBuildUp> read_build_ups() {
    const DataFile file = embedded_file("build_ups.toml");
    std::vector<NamedBuildUp> list;
    for (const std::string& name : file.rows()) {
        const DataTable row = file.row(name);
        list.push_back({.name = name,
                        .meaning = row.text("meaning"),
                        .source = row.text("source"),
                        .layers = row.texts("layers")});
    }
    return list;
}

Library read_library() {
    Library library;
    const DataFile materials = embedded_file("materials.toml");
    for (const std::string& name : materials.rows())
        library.materials.emplace(name, read_material(materials.row(name)));
    const DataFile woods = embedded_file("woods.toml");
    for (const std::string& name : woods.rows())
        library.woods.emplace(name, read_wood(woods.row(name)));
    library.build_ups = understood_build_ups(library);
    library.bed = read_bed(embedded_file("fuel_bed.toml"));
    library.day = read_day(embedded_file("day.toml"));
    return library;
}

}  // namespace drawwell
