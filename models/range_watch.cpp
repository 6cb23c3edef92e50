#include "models/range_watch.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "models/components/films.h"
#include "models/components/gas_passage.h"
#include "models/fire/burnout.h"
#include "models/fire/flame.h"
#include "models/laws/gas_radiation.h"
#include "models/laws/losses.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

/// What a builder calls the part that a solid belongs to.
std::string part_of(const std::string& solid) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 8> parts = {
        {{"feed.foot", "wall behind the fire"},
         {"feed", "feed lining"},
         {"tunnel.roof", "tunnel roof"},
         {"tunnel", "tunnel lining"},
         {"riser", "riser lining"},
         {"plate", "plate"},
         {"barrel", "barrel"},
         {"flue", "flue"}}};
    for (const auto& [prefix, part] : parts)
        if (solid.starts_with(prefix)) return std::string(part);
    return solid;
}

double fourth(double t) {
    return t * t * t * t;
}

}  // namespace

struct RangeWatch::Seen {
    const GasPassageShape& shape;
    const std::vector<Touch>& touches;
    std::span<const GasCell> cells;
    std::span<const double> conductance, given, walls;  // walls: of every solid
    std::vector<FilmGas> gas;                           // of each cell
    double pressure_share;                              // [-] of water vapour and carbon dioxide
    double loss;                                        // [Pa] of the whole passage, its size
    bool forward;
};

RangeWatch::RangeWatch(const Stove& stove, const Library& library, const BuiltStove& built)
    : stove_(stove), built_(built), gas_heat_(built.network.solids.size()) {
    struct Limits {
        const Range *service = nullptr, *table = nullptr;
    };
    std::map<std::string, Limits> known;
    for (std::size_t i = 0; i < built.network.solids.size(); ++i) {
        const auto found = library.materials.find(built.layout.material[i]);
        if (found == library.materials.end()) continue;
        const Material& material = found->second;
        const auto [limits, fresh] = known.try_emplace(found->first);
        if (fresh && material.hot_face_limit > 0)
            limits->second.service = &material_ranges_.emplace_back(
                Range{found->first, "service temperature", "K", 0, material.hot_face_limit, 1});
        if (fresh && material.conductivity.x().size() > 1)
            limits->second.table = &material_ranges_.emplace_back(
                Range{found->first, "tabled temperature", "K", 0, material.conductivity.x().back(),
                      material.conductivity_spread});
        const std::string where = part_of(built.network.solids[i].name);
        limit(limits->second.service, Answer::wear, where, i);
        limit(limits->second.table, Answer::exit_gas, where, i);
    }

    for (std::size_t f = 0; f < built.network.outside.size(); ++f) {
        const std::string& name = built.network.outside[f].name;
        if (name == "plate")
            outer_.push_back({f, &natural_up_range, stove.plate->diameter / 4, Answer::plate});
        else if (name == "barrel" || name == "barrel jacket")
            outer_.push_back({f, &natural_vertical_range, stove.barrel->height});
        for (const FlueSection& section : stove.flue.sections)
            if (name == "flue." + section.name && std::abs(section.rise) > section.length / 2)
                outer_.push_back({f, &natural_vertical_range, section.length});
    }
}

void RangeWatch::limit(const Range* range, Answer on, const std::string& where, std::size_t solid) {
    if (range == nullptr) return;
    const auto found = std::find_if(limited_.begin(), limited_.end(), [&](const Limited& l) {
        return l.range == range && l.where == where;
    });
    if (found != limited_.end())
        found->solids.push_back(solid);
    else
        limited_.push_back({range, on, where, {solid}});
}

void RangeWatch::sample(double time, const HeatBalance& balance) {
    std::fill(gas_heat_.begin(), gas_heat_.end(), 0.0);
    for (std::size_t p = 0; p < built_.network.passages.size(); ++p) see_passage(p, balance);
    see_fire(balance);
    see_outer_faces(time, balance);
    see_materials(balance);
    tally_.advance(time);
}

void RangeWatch::see_passage(std::size_t p, const HeatBalance& balance) {
    const Passage& passage = built_.network.passages[p];
    const March& march = balance.flow().march();
    const auto* law = dynamic_cast<const GasPassage*>(passage.law.get());
    const double flow = std::abs(march.mass_flow(p));
    tally_.carry(Answer::draw, std::abs(march.crossing(p).loss));
    if (law == nullptr || flow <= creeping_flow) return;

    const GasPassageShape& shape = law->shape();
    const bool forward = march.mass_flow(p) > 0;
    const Composition& species = march.crossing(p).outlet.mass_fraction;
    const Mixture mixture = built_.gas->mixture(species);
    constexpr double water = constants::molar_gas / 18.015e-3,
                     dioxide = constants::molar_gas / 44.01e-3;
    Seen seen{
        .shape = shape,
        .touches = law->touches(),
        .cells = march.cells().subspan(passage.first_cell, law->cell_count()),
        .conductance = march.conductance().subspan(passage.first_touch, law->touches().size()),
        .given = march.given().subspan(passage.first_touch, law->touches().size()),
        .walls = balance.temperature(),
        .gas = {},
        .pressure_share = (species[h2o] * water + species[co2] * dioxide) / mixture.gas_constant() *
                          stove_.site.pressure / constants::standard_pressure,
        .loss = std::abs(march.crossing(p).loss),
        .forward = forward};
    for (std::size_t i = 0; i < seen.cells.size(); ++i) {
        const double temperature = seen.cells[i].mean_temperature;
        const double heat_capacity = mixture.heat_capacity(temperature);
        const Transport film = transport(species, temperature, heat_capacity);
        seen.gas.push_back({.temperature = temperature,
                            .density = mixture.density(temperature, stove_.site.pressure),
                            .viscosity = film.viscosity,
                            .conductivity = film.conductivity,
                            .prandtl = film.viscosity * heat_capacity / film.conductivity,
                            .mass_flow = flow,
                            .downward = (shape.cells[i].rise < 0) == forward});
    }
    see_losses(seen, shape.free_area ? march.surroundings().settings[*shape.free_area] : 0);
    switch (shape.film) {
        case Film::annulus:
            see_walls(seen, AnnulusFilm(shape), Answer::exit_gas);
            break;
        case Film::chamber:
            see_walls(seen, ChamberFilm(shape), Answer::exit_gas);
            break;
        case Film::jet:
            see_walls(seen, JetFilm(shape), Answer::plate);
            break;
        case Film::duct:
            see_walls(seen, DuctFilm(shape), Answer::exit_gas);
            break;
    }
}

template <class FilmLaw>
void RangeWatch::see_walls(const Seen& seen, FilmLaw film, Answer on) {
    const GasPassageShape& shape = seen.shape;
    std::size_t touch = seen.forward ? 0 : seen.touches.size();
    for (std::size_t step = 0; step < seen.cells.size(); ++step) {
        const std::size_t i = seen.forward ? step : seen.cells.size() - 1 - step;
        const GasCellShape& cell = shape.cells[i];
        if (cell.faces.empty()) continue;
        if (!seen.forward) touch -= cell.faces.size();
        const FilmGas& gas = seen.gas[i];
        const double coefficient = film.start(cell, gas);
        const double path = seen.pressure_share * cell.beam_length;
        const double emissivity = gas_emissivity(gas.temperature, path);
        double by_film = 0, by_radiation = 0, all = 0;  // [W] sizes
        for (std::size_t k = 0; k < cell.faces.size(); ++k) {
            const WallFace& face = cell.faces[k];
            const double wall = seen.walls[face.solid];
            const double difference = std::abs(gas.temperature - wall);
            by_film += film.at_wall(coefficient, cell, gas, wall) * face.area * difference;
            by_radiation += constants::stefan_boltzmann * emissivity * (1 + face.emissivity) / 2 *
                            std::abs(fourth(gas.temperature) - fourth(wall)) * face.area;
            const double heat =
                seen.conductance[touch + k] * difference + std::abs(seen.given[touch + k]);
            gas_heat_[face.solid] += heat;
            all += heat;
        }
        if (seen.forward) touch += cell.faces.size();

        if (shape.film == Film::jet) {
            const double reynolds =
                gas.mass_flow * shape.film_length / (shape.jet_area * gas.viscosity);
            tally_.use(stagnation_range, reynolds, on, by_film);
            tally_.use(stagnation_gap_range, shape.jet_gap / shape.film_length, on, by_film);
        } else {
            const double reynolds =
                gas.mass_flow * cell.hydraulic_diameter / (cell.area * gas.viscosity);
            tally_.use(duct_film_range, reynolds, on, by_film);
            tally_.use(duct_film_prandtl_range, gas.prandtl, on, by_film);
        }
        tally_.use(transport_range, gas.temperature, on, by_film);
        tally_.use(gas_radiation_range, gas.temperature, on, by_radiation);
        tally_.use(gas_radiation_path_range, path, on, by_radiation);
        tally_.use(mixture_range, gas.temperature, on, all);
    }
}

void RangeWatch::see_losses(const Seen& seen, double free_area) {
    if (seen.shape.film == Film::jet)
        tally_.use(turn_under_plate_range, seen.shape.jet_gap / seen.shape.film_length,
                   Answer::draw, seen.loss);
    for (const LocalLoss& loss : seen.shape.losses) {
        const FilmGas& gas = loss.at_end ? seen.gas.back() : seen.gas.front();
        const double area = loss.follows_free_area ? loss.area * free_area : loss.area;
        const double mass_flux = gas.mass_flow / area;
        const double reynolds = mass_flux * std::sqrt(4 * area / constants::pi) / gas.viscosity;
        const double head = 0.5 * mass_flux * mass_flux / gas.density;
        tally_.use(mitre_bend_range, reynolds, Answer::draw,
                   loss.bend * slow_bend_factor(reynolds) * head);
        tally_.use(low_reynolds_range, reynolds, Answer::draw, loss.low_reynolds / reynolds * head);
    }
}

void RangeWatch::see_fire(const HeatBalance& balance) {
    const March& march = balance.flow().march();
    double burnt = 0, hottest = 0;
    for (const GasCell& cell : march.cells()) burnt += cell.burnt;
    for (const auto& part : {built_.layout.tunnel, built_.layout.riser}) {
        if (!part) continue;
        const Passage& passage = built_.network.passages[*part];
        for (std::size_t i = 0; i < passage.law->cell_count(); ++i)
            hottest = std::max(hottest, march.cells()[passage.first_cell + i].mean_temperature);
    }
    tally_.use(carbon_monoxide_range, hottest, Answer::exit_gas, burnt);

    for (std::size_t s = 0; s < march.arrived().size(); ++s) {
        if (!(march.emitted(s) > 0)) continue;
        const double mass = march.arrived()[s].mass_flow + march.emitted(s);
        const Composition& species = march.junction_gas(built_.network.fire_sites[s]).mass_fraction;
        Composition fuel{};
        for (const Species each : {volatiles, co}) fuel[each] = std::max(species[each], 0.0) * mass;
        const double heat = built_.gas->higher_heating_value(fuel);
        tally_.use(flame_length_range, std::pow(heat / 1000, 0.4) / fire_width(s), Answer::exit_gas,
                   std::min(heat, burnt));
    }
}

double RangeWatch::fire_width(std::size_t site) const {
    const Riser& riser = stove_.riser;
    if (site == 0 && stove_.tunnel) return stove_.tunnel->fire_size();
    const bool in_riser = site == 0 || built_.network.fire_sites[site] == built_.layout.riser_foot;
    if (!in_riser) return stove_.flue.sections.front().bore;
    return riser.bore > 0 ? riser.bore : std::sqrt(riser.width * riser.depth);
}

void RangeWatch::see_outer_faces(double time, const HeatBalance& balance) {
    for (const OuterLaw& law : outer_) {
        const OutsideFace& face = built_.network.outside[law.face];
        double surface = 0;
        for (const SolidId solid : face.solids) surface += balance.temperature()[index(solid)];
        surface /= static_cast<double>(face.solids.size());
        const double air = face.outdoors ? stove_.site.outdoor(time) : stove_.site.room;
        const double mean = (surface + air) / 2;
        const double heat = std::abs(balance.fluxes().outside[law.face]);
        if (law.on == Answer::plate) tally_.carry(Answer::plate, heat);
        tally_.use(*law.range,
                   film_rayleigh(air_properties(mean), std::abs(surface - air), law.length), law.on,
                   heat);
        tally_.use(air_range, mean, law.on, heat);
    }
}

void RangeWatch::see_materials(const HeatBalance& balance) {
    tally_.carry(Answer::wear, 1);
    for (const Limited& at : limited_) {
        double hottest = 0, heat = 0;
        for (const std::size_t solid : at.solids) {
            const double temperature = balance.temperature()[solid];
            hottest = std::max(hottest, temperature);
            if (!at.range->holds(temperature)) heat += gas_heat_[solid];
        }
        tally_.use(*at.range, hottest, at.on, at.on == Answer::wear ? 1 : heat, at.where);
    }
}

std::vector<Stretched> RangeWatch::stretched(double heat_released) const {
    ByAnswer total{};
    total[index(Answer::exit_gas)] = heat_released;
    return tally_.stretched(total);
}

}  // namespace drawwell
