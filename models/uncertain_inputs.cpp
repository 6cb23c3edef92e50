#include "models/uncertain_inputs.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <variant>

#include "models/fouling.h"

namespace drawwell {
namespace {

double factor(double spread, double deviations) {
    return std::exp(deviations * std::log1p(spread));
}

Table scaled(const Table& table, double by) {
    std::vector<double> y = table.y();
    for (double& each : y) each *= by;
    return {table.x(), y};
}

Table shifted(const Table& table, double by) {
    std::vector<double> y = table.y();
    for (double& each : y) each += by;
    return {table.x(), y};
}

std::set<std::string> materials_of(const Stove& stove) {
    std::set<std::string> names;
    const auto add = [&](const BuildUp& wall) {
        for (const Layer& layer : wall) names.insert(layer.material);
    };
    if (stove.feed) add(stove.feed->lining), add(stove.feed->foot_lining);
    if (stove.tunnel) add(stove.tunnel->lining), add(stove.tunnel->roof);
    add(stove.riser.lining);
    if (stove.barrel) add(stove.barrel->shell), add(stove.barrel->jacket);
    if (stove.plate) names.insert(stove.plate->material);
    for (const FlueSection& section : stove.flue.sections) add(section.wall);
    if (is_sooted(stove)) names.insert(soot_material);
    for (const Fitting& fitting : stove.fittings)
        std::visit(
            [&](const auto& part) {
                if constexpr (requires { add(part.wall); }) add(part.wall);
                if constexpr (requires { names.insert(part.material); })
                    names.insert(part.material);
            },
            fitting);
    return names;
}

/// Constants of the bed that are shares of something.
bool is_share(std::string_view name) {
    constexpr std::string_view shares[] = {"wood_absorptivity", "char_yield", "char_to_co",
                                           "radiant_fraction", "ember_view"};
    return std::find(std::begin(shares), std::end(shares), name) != std::end(shares);
}

void add_material(const std::string& name, const Material& material,
                  std::vector<UncertainInput>& inputs) {
    const double conductivity = material.conductivity_spread,
                 emissivity = material.emissivity_spread;
    inputs.push_back({name + ".conductivity", conductivity,
                      [name, conductivity](double z, Library& library, Stove&) {
                          Material& m = library.materials.at(name);
                          m.conductivity = scaled(m.conductivity, factor(conductivity, z));
                      }});
    inputs.push_back(
        {name + ".emissivity", emissivity, [name, emissivity](double z, Library& library, Stove&) {
             double& value = library.materials.at(name).emissivity;
             value = std::min(1.0, value * factor(emissivity, z));
         }});
}

void add_day(const DaySpread& day, std::vector<UncertainInput>& inputs) {
    inputs.push_back({"day.outdoor", day.outdoor, [day](double z, Library&, Stove& stove) {
                          stove.site.outdoor = shifted(stove.site.outdoor, z * day.outdoor);
                      }});
    inputs.push_back({"day.pressure", day.pressure, [day](double z, Library&, Stove& stove) {
                          stove.site.pressure *= factor(day.pressure, z);
                      }});
    inputs.push_back(
        {"day.wood_moisture", day.wood_moisture, [day](double z, Library&, Stove& stove) {
             const double times = factor(day.wood_moisture, z);
             const auto wetter = [times](double& share) { share = std::min(0.6, share * times); };
             for (Load& load : stove.loads) wetter(load.moisture_wet_basis);
             wetter(stove.wood_moisture_wet_basis);
         }});
}

}  // namespace

std::vector<UncertainInput> uncertain_inputs(const Library& library, const Stove& stove) {
    std::vector<UncertainInput> inputs;
    for (const auto& [name, member] : bed_members) {
        const double spread = (library.bed.*member).spread;
        inputs.push_back(
            {"fuel_bed." + std::string(name), spread,
             [member = member, spread, share = is_share(name)](double z, Library& all, Stove&) {
                 double& value = (all.bed.*member).value;
                 value *= factor(spread, z);
                 if (share) value = std::min(1.0, value);
             }});
    }
    add_day(library.day, inputs);
    // Last, since other stoves have other materials: what all have keeps its place.
    for (const std::string& name : materials_of(stove))
        if (const auto found = library.materials.find(name); found != library.materials.end())
            add_material(name, found->second, inputs);
    return inputs;
}

}  // namespace drawwell
