#include "models/build_network.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "models/components/fire_view.h"
#include "models/components/parts.h"
#include "models/fire/table_fire.h"
#include "models/fittings/fittings.h"
#include "models/fouling.h"
#include "models/overturn.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

const Wood& wood(const Library& library, const std::string& name) {
    const auto found = library.woods.find(name);
    if (found == library.woods.end()) throw InputError("no wood is called " + name);
    return found->second;
}

double dry_basis(double wet_basis) {
    return wet_basis / (1 - wet_basis);
}

/// Dry, ash-free mass [kg] of wood as fired.
double dry_ash_free(double mass, double wet_basis, const Wood& kind) {
    return mass * (1 - wet_basis) * (1 - kind.ash);
}

/// One fuel for the whole burn: woods that differ are averaged by mass, so that the gas they give
/// off is one pseudo-species that closes its elements.
SolidFuel mean_fuel(const Stove& stove, const Library& library) {
    std::vector<std::pair<std::string, double>> kinds;
    for (const Load& load : stove.loads)
        kinds.emplace_back(load.kind, load.mass * static_cast<double>(load.times.size()));
    if (stove.kindling) kinds.emplace_back(stove.kindling->kind, stove.kindling->mass);
    if (kinds.empty()) kinds.emplace_back(stove.wood_kind, 1.0);
    Wood mean;
    mean.name = "wood";
    mean.carbon = mean.hydrogen = mean.oxygen = mean.ash = mean.higher_heating_value = 0;
    double total = 0;
    for (const auto& [name, mass] : kinds) {
        const Wood& kind = wood(library, name);
        mean.carbon += mass * kind.carbon;
        mean.hydrogen += mass * kind.hydrogen;
        mean.ash += mass * kind.ash;
        mean.higher_heating_value += mass * kind.higher_heating_value;
        total += mass;
    }
    for (double* figure : {&mean.carbon, &mean.hydrogen, &mean.ash, &mean.higher_heating_value})
        *figure /= total;
    mean.oxygen = 1 - mean.carbon - mean.hydrogen;
    return {
        .wood = mean, .char_yield = library.bed.char_yield.value, .temperature = stove.site.room};
}

/// Width [m] of a fire in the hearth, or at the riser's foot where there is no tunnel.
double fire_width(const Stove& stove) {
    return stove.tunnel           ? stove.tunnel->fire_size()
           : stove.riser.bore > 0 ? stove.riser.bore
                                  : std::sqrt(stove.riser.width * stove.riser.depth);
}

FuelSite hearth_site(const StoveBuilder& builder) {
    const double width = fire_width(builder.stove);
    return {.view = builder.stove.tunnel ? hearth_view(builder) : riser_view(builder),
            .beam_length = 0.9 * width,  // 3.6 V/A of a long square duct
            .width = width};
}

FuelSite foot_site(FireView view, double bore) {
    return {.view = std::move(view), .beam_length = 0.95 * bore, .width = bore};
}

FuelLot lot_of(const Load& load, const Stove& stove, const Wood& kind) {
    const double standing = stove.tunnel ? stove.tunnel->fire_height() : load.length;
    FuelLot lot;
    lot.name = load.name;
    lot.dry_mass = dry_ash_free(load.mass, load.moisture_wet_basis, kind);
    lot.moisture_dry_basis = dry_basis(load.moisture_wet_basis) / (1 - kind.ash);
    lot.ash = kind.ash / (1 - kind.ash);
    const auto perimeter = load.standing == Standing::apart ? perimeter_apart : perimeter_bundled;
    lot.lit_area = perimeter(load.pieces, load.side) * std::min(standing, load.length);
    lot.section = load.pieces * load.side * load.side;
    lot.foot_share = std::min(1.0, standing / load.length);
    return lot;
}

FuelLot lot_of(const Kindling& kindling, const Wood& kind, std::size_t site) {
    FuelLot lot;
    lot.name = "kindling";
    lot.site = site;
    lot.dry_mass = dry_ash_free(kindling.mass, kindling.moisture_wet_basis, kind);
    lot.moisture_dry_basis = dry_basis(kindling.moisture_wet_basis) / (1 - kind.ash);
    lot.ash = kind.ash / (1 - kind.ash);
    lot.lit_area = 4 * kindling.mass / (kind.density * kindling.side);  // every side of it
    lot.lit_by_hand = true;
    return lot;
}

/// Junction at which wood put there burns; the hearth where the stove has no such place.
JunctionId junction_of(KindlingPlace place, const StoveBuilder& builder) {
    const Layout& layout = builder.layout;
    if (place == KindlingPlace::flue && !layout.flue_starts.empty())
        return layout.flue_starts.front().junction;
    if (place == KindlingPlace::riser_foot && layout.tunnel) return layout.riser_foot;
    return layout.hearth;
}

/// The site of a fire at a place, made where nothing burns yet.
std::size_t site_at(KindlingPlace place, StoveBuilder& builder, std::vector<FuelSite>& sites) {
    const Stove& stove = builder.stove;
    const JunctionId junction = junction_of(place, builder);
    std::vector<JunctionId>& junctions = builder.network.fire_sites;
    const auto found = std::find(junctions.begin(), junctions.end(), junction);
    if (found != junctions.end()) return static_cast<std::size_t>(found - junctions.begin());
    junctions.push_back(junction);
    if (place == KindlingPlace::flue) {
        // The flue as if it ran straight on in its first bore; little of the view goes far.
        const double bore = stove.flue.sections.front().bore;
        sites.push_back(foot_site(
            bore_view(builder.layout.flue_wall, builder.layout.flue_way, bore / 2), bore));
    } else {
        const double bore = stove.riser.bore > 0 ? stove.riser.bore : stove.riser.width;
        sites.push_back(foot_site(riser_view(builder), bore));
    }
    return sites.size() - 1;
}

/// Adds what an earlier run left, where it lay; where this stove has no such place, at the hearth.
void add_left(const SavedState& from, StoveBuilder& builder, FuelBed::Shape& shape) {
    for (const LeftLot& left : from.left) {
        FuelLot lot = left.lot;
        if (!lot.name.starts_with("left.")) lot.name = "left." + lot.name;
        lot.site = 0;
        for (const KindlingPlace place : {KindlingPlace::riser_foot, KindlingPlace::flue})
            if (builder.network.junctions[index(junction_of(place, builder))].name == left.place)
                lot.site = site_at(place, builder, shape.sites);
        shape.lots.push_back(std::move(lot));
        builder.network.initial_fuel.insert(builder.network.initial_fuel.end(), left.state.begin(),
                                            left.state.end());
    }
}

void add_fuel_bed(StoveBuilder& builder, const Library& library, const SolidFuel& fuel,
                  const SavedState* from, BuiltStove& built) {
    const Stove& stove = builder.stove;
    const Layout& layout = builder.layout;
    FuelBed::Shape shape;
    shape.constants = library.bed;
    shape.fuel = fuel;
    shape.sites.push_back(hearth_site(builder));
    builder.network.fire_sites = {layout.hearth};
    if (stove.feed) {
        shape.feed_area = stove.feed->width * stove.feed->depth;
        if (!(stove.feed->free_share > 0)) shape.free_area = layout.feed_free_area;
    } else {
        shape.feed_area = 1e9;  // no feed to fill
    }
    if (stove.tunnel) {
        shape.ash_depth = layout.ash_depth;
        shape.first_ash_depth = stove.tunnel->ash;
        shape.ash_floor = stove.fire_floor();
    }
    if (stove.kindling) {
        const std::size_t site = site_at(stove.kindling->place, builder, shape.sites);
        built.load_times.push_back({0, shape.lots.size()});
        shape.lots.push_back(lot_of(*stove.kindling, wood(library, stove.kindling->kind), site));
    }
    for (const Load& load : stove.loads)
        for (const double time : load.times) {
            built.load_times.push_back({time, shape.lots.size()});
            shape.lots.push_back(lot_of(load, stove, wood(library, load.kind)));
        }
    builder.network.initial_fuel.resize(FuelBed::states_per_lot * shape.lots.size());
    if (from) add_left(*from, builder, shape);
    std::stable_sort(built.load_times.begin(), built.load_times.end(),
                     [](const auto& a, const auto& b) { return a.time < b.time; });
    auto bed = std::make_unique<FuelBed>(std::move(shape), builder.gas.model);
    built.fire = built.bed = bed.get();
    builder.network.fire = std::move(bed);
}

void add_fire(StoveBuilder& builder, const Library& library, const SolidFuel& fuel,
              const SavedState* from, BuiltStove& built) {
    const Stove& stove = builder.stove;
    if (!stove.heat_source && !stove.burn_rate) {
        const bool nothing_left = !from || from->left.empty();
        if (stove.loads.empty() && !stove.kindling && nothing_left) return;
        add_fuel_bed(builder, library, fuel, from, built);
        return;
    }
    builder.network.fire_sites = {builder.layout.hearth};
    std::unique_ptr<WoodFire> fire;
    if (stove.heat_source) {
        fire = std::make_unique<HeatSource>(*stove.heat_source);
    } else {
        std::vector<double> rate = stove.burn_rate->y();
        for (double& r : rate) r = dry_ash_free(r, stove.wood_moisture_wet_basis, fuel.wood);
        fire = std::make_unique<BurnRateFire>(
            BurnRateFire::Shape{.dry_rate = Table(stove.burn_rate->x(), rate),
                                .moisture_dry_basis =
                                    dry_basis(stove.wood_moisture_wet_basis) / (1 - fuel.wood.ash),
                                .fuel = fuel,
                                .constants = library.bed,
                                .width = fire_width(stove)},
            builder.gas.model);
        builder.network.initial_fuel = {0, from ? from->embers_left() : 0};
    }
    built.fire = fire.get();
    builder.network.fire = std::move(fire);
}

}  // namespace

BuiltStove build_network(const Stove& stove, const Library& library, const SavedState* from) {
    BuiltStove built;
    built.fuel = mean_fuel(stove, library);
    const Stove as_built = with_soot_layers(stove);
    StoveBuilder builder(as_built, library, built.fuel);
    add_feed(builder);
    add_side_air(builder);
    add_tunnel(builder);
    add_riser(builder);
    add_plate(builder);
    add_barrel(builder);
    builder.layout.flue_outlet = builder.layout.outlet;
    builder.layout.flue_height = stove.outlet_height();
    add_fittings_before_flue(builder);
    add_flue(builder);
    add_bypass(builder);
    add_leaks(builder);
    add_fittings(builder);
    add_plate_bow(builder);
    if (from) warm_walls(builder.network.solids, *from);
    add_fire(builder, library, built.fuel, from, built);
    if (builder.network.fire)
        builder.network.initial_fuel.resize(builder.network.fire->state_count());
    built.outdoor_air = builder.outdoor_air;
    built.room_pressure = builder.room_pressure;
    built.pressure = builder.gas.pressure;
    built.layout = std::move(builder.layout);
    built.gas = builder.gas.model;
    built.network = finish(std::move(builder.network));
    built.network.overturning = overturning(built);
    return built;
}

}  // namespace drawwell
