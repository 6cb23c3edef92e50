#include "models/recorder.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "models/fire/burnout.h"
#include "models/fire/flame.h"
#include "models/fittings/fittings.h"
#include "models/laws/water.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

// [J/kg] of oxygen that embers take: carbon to dioxide, 393.51 kJ/mol (JANAF, from memory).
constexpr double ember_heat_per_oxygen = 393.51e3 / 31.998e-3;
constexpr double no_fuel_ratio = 99;  // [-] shown where hardly any oxygen is needed

std::vector<std::size_t> listed(const std::optional<std::size_t>& passage) {
    return passage ? std::vector<std::size_t>{*passage} : std::vector<std::size_t>{};
}

Axis axis(const char* name, const char* meaning, const std::vector<double>& positions,
          const char* unit = "m") {
    return {name, unit, meaning, positions};
}

/// The lots in order of time, what an earlier burn left as due at once; none where wood is not put
/// in as loads.
std::vector<BuiltStove::LoadTime> lots_by_time(const BuiltStove& built) {
    std::vector<BuiltStove::LoadTime> lots;
    if (!built.bed) return lots;
    for (std::size_t i = built.load_times.size(); i < built.bed->lots().size(); ++i)
        lots.push_back({0, i});
    lots.insert(lots.end(), built.load_times.begin(), built.load_times.end());
    return lots;
}

std::vector<double> times_of(const std::vector<BuiltStove::LoadTime>& lots) {
    std::vector<double> due;
    for (const auto& lot : lots) due.push_back(lot.time);
    return due;
}

}  // namespace

Recorder::Recorder(const Stove& stove, const BuiltStove& built)
    : stove_(stove),
      built_(built),
      lots_(lots_by_time(built)),
      spare_(stove, built),
      room_(stove.site) {
    const Layout& layout = built.layout;
    results_.axes = {
        axis("tunnel_cell", "way from the feed's centre", layout.tunnel_wall.position),
        axis("riser_cell", "height over the tunnel floor", layout.riser_inside.position),
        axis("plate_radius", "distance from the plate's centre", layout.plate.position),
        axis("plate_rim", "the plate's radius, at which its bow is measured",
             layout.bow_told ? std::vector{layout.plate_edge.back()} : std::vector<double>{}),
        axis("annulus_cell", "height over the tunnel floor", layout.annulus_gas_height),
        axis("barrel_cell", "height over the tunnel floor", layout.barrel.position),
        axis("flue_cell", "way from the flue outlet", layout.flue_gas_way),
        axis("load", "when the load is due, kindling first", times_of(lots_), "s")};
    const std::vector<Axis> more = fitting_axes(stove);
    results_.axes.insert(results_.axes.end(), more.begin(), more.end());
    std::erase_if(results_.axes, [](const Axis& a) { return a.positions.empty(); });
    for (const ColumnInfo& info : all_columns()) {
        std::size_t width = 1;
        if (!info.axis.empty()) {
            const auto found = std::find_if(results_.axes.begin(), results_.axes.end(),
                                            [&](const Axis& a) { return a.name == info.axis; });
            if (found == results_.axes.end()) continue;  // the stove has no such part
            width = found->positions.size();
        }
        place_.emplace(info.name, results_.columns.size());
        results_.columns.push_back({std::string(info.name),
                                    std::string(info.unit),
                                    std::string(info.meaning),
                                    std::string(info.axis),
                                    width,
                                    {}});
    }
}

void Recorder::put(std::string_view name, double value) {
    const auto found = place_.find(name);
    if (found != place_.end()) results_.columns[found->second].values.push_back(value);
}

void Recorder::put_solids(std::string_view name, const SolidRow& row, const HeatBalance& balance) {
    for (const SolidId id : row.solids) put(name, balance.temperature()[index(id)]);
}

void Recorder::put_gas(std::string_view name, std::span<const std::size_t> passages,
                       const HeatBalance& balance) {
    for (const std::size_t p : passages) {
        const Passage& passage = built_.network.passages[p];
        for (std::size_t i = 0; i < passage.law->cell_count(); ++i)
            put(name, balance.flow().march().cells()[passage.first_cell + i].mean_temperature);
    }
}

double Recorder::share(const HeatBalance& balance, const std::vector<std::size_t>& passages,
                       bool losses) const {
    double sum = 0;
    for (const std::size_t p : passages) {
        const Crossing& crossing = balance.flow().march().crossing(p);
        sum += losses ? crossing.loss : crossing.buoyancy;
    }
    return sum;
}

void Recorder::put_draw(double time, const HeatBalance& balance) {
    const Layout& layout = built_.layout;
    const March& march = balance.flow().march();
    const auto feed = listed(layout.feed), tunnel = listed(layout.tunnel),
               riser = listed(layout.riser), turn = listed(layout.turn),
               annulus = listed(layout.annulus);
    double drive = 0;
    for (const auto& [name, passages] :
         {std::pair{"feed", &feed}, std::pair{"riser", &riser}, std::pair{"annulus", &annulus},
          std::pair{"flue", &layout.flue}}) {
        const double buoyancy = share(balance, *passages, false);
        put(std::string("buoyancy_") + name, buoyancy);
        drive += buoyancy;
    }
    put("drive", drive);
    for (const auto& [name, passages] :
         {std::pair{"feed", &feed}, std::pair{"tunnel", &tunnel}, std::pair{"riser", &riser},
          std::pair{"turn", &turn}, std::pair{"annulus", &annulus},
          std::pair{"flue", &layout.flue}})
        put(std::string("loss_") + name, share(balance, *passages, true));

    // Pressures along the path, over the outdoor column, from the room at the feed's mouth.
    const Mixture air = built_.gas->mixture(dry_air());
    const double mouth = stove_.feed ? stove_.feed->mouth : stove_.axis_height();
    const Crossing& crossing = march.crossing(*layout.feed);
    const double foot_total = built_.room_pressure(time, mouth) + crossing.buoyancy - crossing.loss;
    const Passage& passage = built_.network.passages[*layout.feed];
    const GasCell& last = march.cells()[passage.first_cell + passage.law->cell_count() - 1];
    const double density = air.density(last.mean_temperature, built_.pressure);
    const double dynamic = density * last.velocity * last.velocity / 2;
    put("feed_suction", built_.room_pressure(time, stove_.axis_height()) - (foot_total - dynamic));
    put("feed_air_speed", last.velocity);

    double outlet = foot_total;
    for (const auto* passages : {&tunnel, &riser, &turn, &annulus})
        outlet += share(balance, *passages, false) - share(balance, *passages, true);
    const GasCell& first = march.cells()[built_.network.passages[layout.flue.front()].first_cell];
    const double in_flue = air.density(first.mean_temperature, built_.pressure);
    put("flue_draft", built_.room_pressure(time, stove_.outlet_height()) -
                          (outlet - in_flue * first.velocity * first.velocity / 2));
}

double Recorder::burnout(const HeatBalance& balance) const {
    const March& march = balance.flow().march();
    const Composition& gas = march.junction_gas(built_.layout.riser_end).mass_fraction;
    const double gas_constant = built_.gas->mixture(gas).gas_constant();
    const double water =
        gas[h2o] * constants::molar_gas / 18.015e-3 / gas_constant;  // volume share
    double index = 0;
    for (const auto& part : {built_.layout.tunnel, built_.layout.riser}) {
        if (!part) continue;
        const Passage& passage = built_.network.passages[*part];
        for (std::size_t i = 0; i < passage.law->cell_count(); ++i) {
            const GasCell& cell = march.cells()[passage.first_cell + i];
            if (!(cell.velocity > 1e-6)) continue;
            index += cell.length / cell.velocity /
                     carbon_monoxide_time(
                         {.temperature = cell.mean_temperature,
                          .pressure = built_.pressure,
                          .oxygen = cell.oxygen * constants::molar_gas / 31.998e-3 / gas_constant,
                          .water = water});
        }
    }
    return index;
}

void Recorder::put_fire(double time, std::span<const double> fuel, const HeatBalance& balance) {
    const March& march = balance.flow().march();
    const Layout& layout = built_.layout;
    double side = 0;
    for (const std::size_t p : layout.side_air) side += march.mass_flow(p);
    const double feed = march.mass_flow(*layout.feed);
    put("feed_air_flow", feed);
    put("side_air_flow", side);
    put("flue_gas_flow", march.mass_flow(layout.flue.back()));

    // Burning in the gas, and the embers by the oxygen that a site's gas lost.
    double release = built_.fire ? built_.fire->plain_heat(time) : 0, needed = 0;
    for (const GasCell& cell : march.cells()) release += cell.burnt;
    for (std::size_t s = 0; s < march.arrived().size(); ++s) {
        const Arriving& before = march.arrived()[s];
        const GasState& after = march.junction_gas(built_.network.fire_sites[s]);
        const double mass = before.mass_flow + march.emitted(s);
        Composition gained{};
        for (std::size_t i = 0; i < species_count; ++i)
            gained[i] = mass * after.mass_fraction[i] - before.species[i];
        // All the embers' carbon to dioxide, less what their carbon monoxide still holds.
        Composition monoxide{};
        monoxide[co] = gained[co];
        release += (oxygen_demand(monoxide, *built_.gas) - gained[o2]) * ember_heat_per_oxygen -
                   built_.gas->higher_heating_value(monoxide);
        // What fuel and embers take of oxygen, all told.
        needed += oxygen_demand(gained, *built_.gas) - gained[o2];
    }
    const double down_flue = std::max(-march.mass_flow(layout.flue.back()), 0.0);
    const double oxygen = (std::max(feed, 0.0) + std::max(side, 0.0) + down_flue) * dry_air()[o2];
    oxygen_needed_.push_back(needed);
    oxygen_in_.push_back(oxygen);
    put("heat_release", release);
    put("air_ratio", needed > oxygen / no_fuel_ratio ? oxygen / needed : no_fuel_ratio);
    put("pyrolysis_rate", built_.fire ? built_.fire->pyrolysis(time, fuel) : 0);
    put("wood_left", built_.fire ? built_.fire->dry_wood(fuel) : 0);
    put("char_left", built_.fire ? built_.fire->char_left(fuel) : 0);
    put("burnout_index", burnout(balance));
    put_loads(fuel);
}

void Recorder::put_loads(std::span<const double> fuel) {
    for (const auto& [due, lot] : lots_) {
        const double wood = built_.bed->wood_of(lot, fuel);
        put("load_water", built_.bed->lots()[lot].moisture_dry_basis * wood);
        put("load_wood", wood);
        put("load_char", built_.bed->char_of(lot, fuel));
    }
    double ash = built_.bed ? built_.bed->ash(fuel) : 0;
    if (built_.fire && !built_.bed) {
        const double wood = built_.fire->dry_wood(fuel);
        if (results_.time.size() == 1) first_wood_ = wood;
        ash = built_.fuel.wood.ash / (1 - built_.fuel.wood.ash) * (first_wood_ - wood);
    }
    put("ash_left", ash);
    put("ash_depth", built_.bed      ? built_.bed->ash_depth(fuel)
                     : stove_.tunnel ? stove_.tunnel->ash
                                     : 0);
}

void Recorder::put_spare(double time, std::span<const double> state, HeatBalance& balance) {
    const Spare& spare = spare_.at(time, state, balance);
    put("reserve_draw", spare.reserve);
    put("reserve_draw_suction", spare.suction);
    put("sustained_push", spare.sustained);
    put("exchange_draw_early", spare.exchange_early);
    put("exchange_draw_late", spare.exchange_late);
    put("draw_limit", static_cast<double>(spare.limit));
    const double gust = stove_.site.gust(time), wind = stove_.site.wind(time);
    put("gust_push", std::max(0.0, 0.5 * built_.outdoor_air(time) *
                                       (stove_.site.gust_factor * gust * gust -
                                        stove_.site.wind_factor * wind * wind)));
}

void Recorder::sample(double time, std::span<const double> state, HeatBalance& balance) {
    const Layout& layout = built_.layout;
    const auto fuel = state.subspan(built_.network.solids.size());
    results_.time.push_back(time);
    put_fire(time, fuel, balance);
    put_draw(time, balance);

    const March& march = balance.flow().march();
    const std::size_t last = layout.flue.back();
    const bool up = march.mass_flow(last) > 0;
    const GasState& leaving =
        up ? march.crossing(last).outlet : march.junction_gas(layout.terminal);
    const Mixture mixture = built_.gas->mixture(leaving.mass_fraction);
    put("flue_top_temperature", mixture.temperature(leaving.enthalpy, 500));
    put("outlet_gas_temperature",
        built_.network.gas_temperature(march.junction_gas(layout.flue_outlet)));
    const Composition& gas = leaving.mass_fraction;
    const double dry = 1 - gas[h2o] * constants::molar_gas / 18.015e-3 / mixture.gas_constant();
    put("oxygen_at_flue",
        gas[o2] * constants::molar_gas / 31.998e-3 / mixture.gas_constant() / dry);

    put("flue_dew_point", dew_point((1 - dry) * built_.pressure));

    double room = 0, outdoors = 0;
    for (std::size_t f = 0; f < built_.network.outside.size(); ++f)
        (built_.network.outside[f].outdoors ? outdoors : room) += balance.fluxes().outside[f];
    put("heat_to_room", room);
    put("heat_outdoors", outdoors);
    put("room_temperature", room_.at(time, room));
    double up_flue = 0;
    if (up)
        up_flue = march.mass_flow(last) *
                  built_.gas->enthalpy_over_ground(gas, mixture.temperature(leaving.enthalpy, 500),
                                                   stove_.site.outdoor(0));
    put("heat_up_flue", up_flue);

    put_gas("tunnel_gas_temperature", listed(layout.tunnel), balance);
    put_solids("tunnel_wall_temperature", layout.tunnel_wall, balance);
    put_gas("riser_gas_temperature", listed(layout.riser), balance);
    put_solids("riser_wall_temperature", layout.riser_inside, balance);
    put_solids("riser_skin_temperature", layout.riser_skin, balance);
    put_solids("plate_temperature", layout.plate, balance);
    put_gas("annulus_gas_temperature", listed(layout.annulus), balance);
    put_solids("barrel_temperature", layout.barrel, balance);
    if (!layout.flue_gas_way.empty()) put_gas("flue_gas_temperature", layout.flue, balance);
    put_solids("flue_wall_temperature", layout.flue_wall, balance);
    for (const Reading& reading : layout.readings) put(reading.column, reading.value(balance));
    put_spare(time, state, balance);
}

}  // namespace drawwell
