#include "models/summarise.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "models/cooking_time.h"
#include "models/fittings/fittings.h"
#include "models/judge_draw.h"
#include "models/series.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

// [kg] Below this an element's share means nothing: gas that stands still is taken to creep, which
// makes up to ten milligrams of air in three hours.
constexpr double least_element = 1e-2;

void judge_bow(const Results& results, Summary& summary) {
    const Series low(results, "plate_bow_low"), high(results, "plate_bow_high");
    if (!high) return;
    std::size_t deepest = 0;
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (std::abs(high[i]) > std::abs(high[deepest])) deepest = i;
    summary.plate_bow_low = low[deepest];
    summary.plate_bow_high = high[deepest];
    summary.plate_bow_time = results.time[deepest];
}

void judge_plate(const Results& results, const Layout& layout, Summary& summary) {
    const Column* plate = results.find("plate_temperature");
    if (plate == nullptr) return;
    // Where a pot fills the hole the plate begins at its edge.
    const std::size_t first = layout.hole_pot.empty() ? 0 : layout.hole_rings;
    if (first > 0) summary.plate_hole = layout.plate_edge[first];
    const Series centre(results, "plate_temperature", first),
        rim(results, "plate_temperature", plate->width - 1);
    const Peak hottest = peak(results, centre);
    summary.plate_centre_max = hottest.value;
    summary.plate_centre_max_time = results.time[hottest.at];
    summary.plate_rim_max = peak(results, rim).value;
    for (std::size_t i = 0; i < results.time.size() && !summary.plate_time_to_fry; ++i)
        for (std::size_t r = first; r < plate->width; ++r)
            if (plate->values[i * plate->width + r] >= fry_from) {
                summary.plate_time_to_fry = results.time[i];
                break;
            }

    // The best ring is the one that fries longest; where none fries, the hottest one.
    std::size_t best = first;
    std::vector<double> history(results.time.size());
    CookingTime best_time;
    double best_peak = 0;
    for (std::size_t r = first; r < plate->width; ++r) {
        for (std::size_t i = 0; i < history.size(); ++i)
            history[i] = plate->values[i * plate->width + r];
        const CookingTime time = cooking_time(results.time, history);
        const double hottest_here = *std::max_element(history.begin(), history.end());
        const bool none_fries = !(time.fry > 0) && !(best_time.fry > 0);
        if (r == first || time.fry > best_time.fry || (none_fries && hottest_here > best_peak)) {
            best_time = time;
            best_peak = hottest_here;
            best = r;
        }
    }
    summary.plate_best_ring = best_time;
    summary.plate_best_ring_radius = layout.plate.position[best];
    if (first > 0) return;  // a pot is there already
    for (std::size_t i = 0; i < history.size(); ++i)
        history[i] = mean_under_pot(
            layout.plate_edge, std::span(plate->values).subspan(i * plate->width, plate->width));
    summary.plate_pot = cooking_time(results.time, history);
}

void judge_heat(const Stove& stove, const Results& results, Summary& summary) {
    if (const Column* barrel = results.find("barrel_temperature")) {
        summary.barrel_top_max = peak(results, {results, "barrel_temperature", 0}).value;
        summary.barrel_foot_max =
            peak(results, {results, "barrel_temperature", barrel->width - 1}).value;
    }
    const Column* riser = results.find("riser_gas_temperature");
    summary.riser_gas_max = *std::max_element(riser->values.begin(), riser->values.end());
    summary.exit_gas_max = peak(results, {results, "outlet_gas_temperature"}).value;
    summary.flue_top_max = peak(results, {results, "flue_top_temperature"}).value;
    if (stove.site.room_volume > 0) {
        const Peak warmest = peak(results, {results, "room_temperature"});
        summary.room_warmest = warmest.value;
        summary.room_warmest_time = results.time[warmest.at];
    }
    summary.room_demand = stove.site.room_loss * (stove.site.room - stove.site.outdoor(0)) *
                          (results.time.back() - results.time.front());
}

void judge_flue(const Results& results, Summary& summary) {
    const Column* wall = results.find("flue_wall_temperature");
    if (wall == nullptr || wall->values.empty()) return;
    const Series dew(results, "flue_dew_point"), flow(results, "flue_gas_flow"),
        release(results, "heat_release");
    const auto wet = [&](std::size_t i) {
        const auto cells = std::span(wall->values).subspan(i * wall->width, wall->width);
        return flow[i] > 0 && release[i] > 0 &&
               *std::min_element(cells.begin(), cells.end()) < dew[i];
    };
    summary.flue_wet = integrate(
        results, [](std::size_t) { return 1.0; }, wet);
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (wet(i)) summary.flue_wet_last = results.time[i];
}

void balance_books(const Stove& stove, const BuiltStove& built, const Audit& audit,
                   const FuelStock& fuel, Summary& summary) {
    const Audit::Totals& totals = audit.totals();
    summary.heat_released = fuel.heating_value_lost;
    summary.wood_burned = fuel.dry_wood_lost;
    for (std::size_t f = 0; f < totals.outside.size(); ++f)
        (built.network.outside[f].outdoors ? summary.heat_lost_outdoors : summary.heat_to_room) +=
            totals.outside[f];
    summary.heat_to_room += totals.held;
    summary.heat_stored = totals.stored;

    // Gas that crossed the bounds, over products at outdoor temperature: by mass of each species
    // and enthalpy, so that the parts add up to the books.
    const double ground = stove.site.outdoor(0);
    const auto over_ground = [&](std::size_t junction) {
        return totals.boundary_heat[junction] -
               built.gas->ground_enthalpy(totals.boundary_gas[junction], ground);
    };
    const std::size_t top = index(built.layout.terminal);
    summary.heat_up_flue = over_ground(top);
    const ExcessHeat parts = built.gas->excess_heat(totals.boundary_gas[top], ground, ground);
    summary.heat_up_flue_latent = parts.latent;
    summary.heat_up_flue_unburnt = parts.unburnt;
    for (const JunctionId room : built.layout.room_air) {
        const double out = over_ground(index(room));
        (out > 0 ? summary.heat_with_smoke : summary.heat_from_room_air) += std::abs(out);
    }

    // A stove that only cools down is measured by what its walls gave; walls that are held at their
    // temperature may bring or take more than the fire.
    const double scale =
        std::max({summary.heat_released, -summary.heat_stored, std::abs(totals.held), 1e3});
    summary.energy_residual = audit.energy_residual(scale);
    double mass_lost = 0;
    for (const double element : totals.fuel_elements) mass_lost += element;
    summary.mass_residual = audit.mass_residual(mass_lost);
    // Each element out less in and less what the fuel lost, as a share of what went through.
    std::array<double, 4> net{}, through{};
    for (const Composition& gas : totals.boundary_gas) {
        const auto elements = built.gas->elements(gas);
        for (std::size_t e = 0; e < net.size(); ++e) {
            net[e] += elements[e];
            through[e] += std::abs(elements[e]) / 2;
        }
    }
    for (std::size_t e = 0; e < net.size(); ++e)
        summary.element_residual =
            std::max(summary.element_residual,
                     std::abs(net[e] - totals.fuel_elements[e]) /
                         (through[e] + std::abs(totals.fuel_elements[e]) + least_element));
}

}  // namespace

Summary summarise(const Stove& stove, const BuiltStove& built, const Recorder& recorder,
                  const Audit& audit, const FuelStock& fuel) {
    Summary summary;
    const Results& results = recorder.results();
    judge_draw(stove, recorder, summary);
    judge_plate(results, built.layout, summary);
    judge_bow(results, summary);
    judge_heat(stove, results, summary);
    judge_flue(results, summary);
    balance_books(stove, built, audit, fuel, summary);
    summary.ash_left = results.find("ash_left")->values.back();
    summary.fittings = fitting_answers(stove, results);
    return summary;
}

}  // namespace drawwell
