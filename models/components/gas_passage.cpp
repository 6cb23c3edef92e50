#include "models/components/gas_passage.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "models/components/films.h"
#include "models/laws/friction.h"
#include "models/laws/gas_radiation.h"
#include "models/laws/losses.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

using constants::gravity;
using constants::standard_pressure;
using constants::stefan_boltzmann;

constexpr double level_reached = 0.1;   // [K] off the walls' level, nearer than which gas is there
constexpr double least_over_ash = 0.1;  // [-] of a duct that ash leaves free: our choice
constexpr double froude_of_filling = 0.05;  // [-] slower gas does not fill a duct: our choice
constexpr double luminous_from = 0.01;  // [-] of volatiles in the gas, for a full flame: our choice

/// What radiates in a cell at the gas's mean temperature. A flame is hotter than that mean: what it
/// radiates above this is its radiant fraction of the heat.
double cell_emissivity(const Composition& mass_fraction, const Mixture& mixture, double temperature,
                       double pressure, double beam_length, double flame_absorption) {
    // Gas constants of water vapour and carbon dioxide [J/(kg K)] turn mass into volume shares.
    constexpr double water = constants::molar_gas / 18.015e-3,
                     dioxide = constants::molar_gas / 44.01e-3;
    const double share =
        (mass_fraction[h2o] * water + mass_fraction[co2] * dioxide) / mixture.gas_constant();
    const double gas =
        gas_emissivity(temperature, share * pressure / standard_pressure * beam_length);
    const double luminous = std::min(1.0, mass_fraction[volatiles] / luminous_from);
    if (luminous < 1e-6) return gas;
    return combined_emissivity(gas, 1 - std::exp(-flame_absorption * luminous * beam_length));
}

/// Gas radiation to a wall as a film coefficient [W/(m2 K)]; a gray wall counts (1 + eps)/2.
double radiation_film(double gas_emissivity, double wall_emissivity, double gas, double wall) {
    return stefan_boltzmann * gas_emissivity * (1 + wall_emissivity) / 2 *
           (gas * gas + wall * wall) * (gas + wall);
}

/// Share [-] of a duct that the gas entering it takes up. Slow gas runs along the top or bottom of
/// the duct and mixes with the air that stood there; so a column's density does not jump where its
/// flow turns, and air and smoke of one temperature stand at its two ends.
double share_filled(double flow, double density, double area, double diameter) {
    const double at_unit_froude = density * area * std::sqrt(gravity * diameter);  // [kg/s]
    const double filling = flow / (froude_of_filling * at_unit_froude);
    return -std::expm1(-filling * filling);
}

/// Shares what a flame radiates [W] among the walls round it, by what they take in; a wall radiates
/// back, so that none is heated past the flame. Gives what all of them take [W].
double radiate(const GasCellShape& shape, double heat, double flame_temperature,
               std::span<const double> solid_temperature, std::span<double> given) {
    double sum = 0, taken = 0;
    for (const WallFace& face : shape.faces) sum += face.area * face.emissivity;
    for (std::size_t k = 0; k < given.size(); ++k) {
        const WallFace& face = shape.faces[k];
        const double ratio = solid_temperature[face.solid] / flame_temperature;
        const double square = ratio * ratio;
        given[k] = heat * face.area * face.emissivity / sum * std::max(1 - square * square, 0.0);
        taken += given[k];
    }
    return taken;
}

double pressure_loss(const LocalLoss& loss, std::span<const double> settings, double free_area,
                     double flow, double density, double viscosity) {
    const double open = loss.open ? settings[*loss.open] : 1;
    const double area = open * (loss.follows_free_area ? loss.area * free_area : loss.area);
    const double velocity = flow / (density * area);
    const double diameter = std::sqrt(4 * area / constants::pi);
    double coefficient = flow >= 0 ? loss.forward : loss.reverse;
    if (loss.open) {
        const double before = open * loss.share_before, after = open * loss.share_after;
        coefficient = flow >= 0 ? port_loss(before, after) : port_loss(after, before);
    }
    if (loss.bend > 0)
        coefficient +=
            loss.bend * slow_bend_factor(density * std::abs(velocity) * diameter / viscosity);
    if (loss.opens_into > area)
        coefficient += flow >= 0 ? sudden_expansion_loss(area / loss.opens_into)
                                 : sudden_contraction_loss(area / loss.opens_into);
    return 0.5 * velocity *
           (coefficient * density * std::abs(velocity) + loss.low_reynolds * viscosity / diameter);
}

}  // namespace

GasPassage::GasPassage(GasPassageShape shape, GasSurroundings surroundings)
    : shape_(std::move(shape)),
      surroundings_(std::move(surroundings)),
      air_(surroundings_.model->mixture(dry_air())) {
    for (std::size_t i = 0; i < shape_.cells.size(); ++i) {
        first_touch_.push_back(touches_.size());
        rough_.push_back(shape_.friction ? haaland_roughness(shape_.roughness /
                                                             shape_.cells[i].hydraulic_diameter)
                                         : 0);
        for (const WallFace& face : shape_.cells[i].faces) touches_.push_back({i, face.solid});
    }
}

Crossing GasPassage::cross(const PassageInput& input, PassageRecord record) const {
    switch (shape_.film) {
        case Film::annulus:
            return march(input, record, AnnulusFilm(shape_));
        case Film::jet:
            return march(input, record, JetFilm(shape_));
        case Film::chamber:
            return march(input, record, ChamberFilm(shape_));
        case Film::duct:
            break;
    }
    return march(input, record, DuctFilm(shape_));
}

template <class FilmLaw>
Crossing GasPassage::march(const PassageInput& input, PassageRecord record, FilmLaw film) const {
    const GasModel& model = *surroundings_.model;
    const double pressure = surroundings_.pressure;
    const bool forward = input.mass_flow >= 0;
    const double direction = forward ? 1 : -1;
    const double flow = std::max(std::abs(input.mass_flow), creeping_flow);
    const std::size_t count = shape_.cells.size();
    const double outdoor_density = surroundings_.outdoor_density_setting
                                       ? input.settings[*surroundings_.outdoor_density_setting]
                                       : surroundings_.outdoor_density;

    Crossing crossing;
    GasState gas = input.gas;
    Mixture mixture = model.mixture(gas.mass_fraction);
    double temperature = mixture.temperature(gas.enthalpy, gas.temperature);
    for (std::size_t step = 0; step < count; ++step) {
        const std::size_t i = forward ? step : count - 1 - step;
        const GasCellShape& shape = shape_.cells[i];
        double free_area = shape_.free_area ? input.settings[*shape_.free_area] : shape.area;
        if (shape_.ash)
            free_area = std::max(free_area - shape.floor * input.settings[*shape_.ash],
                                 least_over_ash * free_area);
        const double inlet_density = mixture.density(temperature, pressure);
        const double inlet = temperature;

        const double burnt = burn_on(gas, shape.length, temperature, model, surroundings_.flame);
        double start = temperature;
        if (burnt > 0) {
            if (!shape.faces.empty())
                gas.enthalpy -= radiate(shape, surroundings_.radiant_fraction * burnt * flow,
                                        surroundings_.flame_temperature, input.solid_temperature,
                                        record.given.subspan(first_touch_[i], shape.faces.size())) /
                                flow;
            mixture = model.mixture(gas.mass_fraction);
            start = (temperature + mixture.temperature(gas.enthalpy, temperature)) / 2;
        }
        const double heat_capacity = mixture.heat_capacity(start);
        const Transport film_gas = transport(gas.mass_fraction, start, heat_capacity);
        double capacity_flow = flow * heat_capacity;

        // Exchange with the walls: exact for a gas of constant films and of the mean heat capacity
        // on its way to the walls' level; the radiation film is worked out again with the mean
        // temperature that follows.
        double mean = start, strides = 0, about_to_leave = start;
        double left = 1, mean_share = 1;  // [-] of what the gas is over its walls' level
        if (!shape.faces.empty()) {
            const FilmGas seen{
                .temperature = start,
                .density = mixture.density(start, pressure),
                .viscosity = film_gas.viscosity,
                .conductivity = film_gas.conductivity,
                .prandtl = film_gas.viscosity * heat_capacity / film_gas.conductivity,
                .mass_flow = flow,
                .downward = shape.rise * direction < 0};
            const double coefficient = film.start(shape, seen);
            const double emissivity =
                cell_emissivity(gas.mass_fraction, mixture, start, pressure, shape.beam_length,
                                surroundings_.flame_absorption);
            if (!(burnt > 0))
                std::fill_n(record.given.begin() + static_cast<std::ptrdiff_t>(first_touch_[i]),
                            shape.faces.size(), 0.0);
            double total = 0;
            const std::span films = record.conductance.subspan(first_touch_[i], shape.faces.size());
            const auto at = [&](std::size_t k) {
                return input.solid_temperature[shape.faces[k].solid];
            };
            for (std::size_t k = 0; k < films.size(); ++k)
                films[k] = film.at_wall(coefficient, shape, seen, at(k));
            const double enthalpy_at_start = mixture.enthalpy(start);
            double level = start;  // what the gas would end at
            double radiating = start;
            const auto with_radiation = [&](std::size_t k) {
                const WallFace& face = shape.faces[k];
                return (films[k] + radiation_film(emissivity, face.emissivity, radiating, at(k))) *
                       face.area;
            };
            for (int pass = 0; pass < 2; ++pass) {
                radiating = mean;
                double pull = 0;
                total = 0;
                for (std::size_t k = 0; k < films.size(); ++k) {
                    const double touch = with_radiation(k);
                    total += touch;
                    pull += touch * at(k);
                }
                level = pull / total;
                if (std::abs(start - level) > level_reached)
                    capacity_flow =
                        flow * (enthalpy_at_start - mixture.enthalpy(level)) / (start - level);
                strides = total / capacity_flow;
                mean_share = shape.stirred ? 1 / (1 + strides) : -std::expm1(-strides) / strides;
                left = 1 - strides * mean_share;  // exp(-strides) in plug flow
                mean = level + (start - level) * mean_share;
            }
            for (std::size_t k = 0; k < films.size(); ++k) films[k] = with_radiation(k);
            // By enthalpy, so that gas that lingers ends exactly at its walls' level; the mean is
            // then the one that gives the walls what the gas lost.
            const double given_up =
                (enthalpy_at_start - mixture.enthalpy(level)) * strides * mean_share;  // [J/kg]
            gas.enthalpy -= given_up;
            mean = level + flow * given_up / total;
            about_to_leave = level + (start - level) * left;
        }
        temperature = mixture.temperature(gas.enthalpy, about_to_leave);

        const double density = mixture.density(mean, pressure);
        const double outlet_density = mixture.density(temperature, pressure);
        const double velocity = direction * flow / (density * free_area);
        if (shape.rise != 0) {
            const double filled = share_filled(flow, density, free_area, shape.hydraulic_diameter);
            const double column = filled * density + (1 - filled) * air_.density(mean, pressure);
            crossing.buoyancy += gravity * shape.rise * (outdoor_density - column);
        }
        const double mass_flux = flow / free_area;
        crossing.loss +=
            direction * 0.5 * mass_flux * mass_flux * (1 / outlet_density - 1 / inlet_density);
        if (shape_.friction) {
            const double diameter = shape.hydraulic_diameter;
            const double reynolds = mass_flux * diameter / film_gas.viscosity;
            crossing.loss +=
                friction_times_reynolds({.reynolds = reynolds,
                                         .rough = rough_[i],
                                         .laminar_constant = shape_.laminar_constant}) *
                film_gas.viscosity * velocity / (2 * diameter * diameter) * shape.length;
        }
        for (const LocalLoss& loss : shape_.losses)
            if (i == loss.after_cell.value_or(loss.at_end ? count - 1 : 0)) {
                const bool where_gas_enters = (loss.at_end || loss.after_cell) != forward;
                crossing.loss += pressure_loss(loss, input.settings, free_area, direction * flow,
                                               where_gas_enters ? inlet_density : outlet_density,
                                               film_gas.viscosity);
            }

        GasCell& cell = record.cells[i];
        cell.inlet_temperature = inlet;
        cell.mean_temperature = mean;
        cell.outlet_temperature = temperature;
        cell.length = shape.length;
        cell.velocity = velocity;
        cell.pass_through = left;
        cell.mean_share = mean_share;
        cell.capacity_flow = capacity_flow;
        cell.oxygen = gas.mass_fraction[o2];
        cell.burnt = burnt * flow;
    }
    gas.temperature = temperature;
    crossing.outlet = gas;
    return crossing;
}

}  // namespace drawwell
