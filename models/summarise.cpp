#include "models/summarise.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "models/cooking_time.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

constexpr double settled = 300;         // [s] after lighting, from which "draws" is judged
constexpr double burning_share = 0.02;  // [-] of the peak release, down to which it is
constexpr double strong_share = 0.1;    // [-] of it, above which means are taken
constexpr double fry_from = 175 + constants::ice_point;  // [K]

/// A column as one value an instant; the chosen cell where it has several.
class Series {
  public:
    Series(const Results& results, std::string_view name, std::size_t cell = 0)
        : column_(results.find(name)), cell_(cell) {}
    explicit operator bool() const { return column_ != nullptr && !column_->values.empty(); }
    double operator[](std::size_t i) const { return column_->values[i * column_->width + cell_]; }
    std::size_t width() const { return column_->width; }

  private:
    const Column* column_;
    std::size_t cell_;
};

/// Integral over the samples of f(i), trapezoidal, where `counts` holds at both ends.
double integrate(
    const Results& results, const std::function<double(std::size_t)>& f,
    const std::function<bool(std::size_t)>& counts = [](std::size_t) { return true; }) {
    double sum = 0;
    for (std::size_t i = 1; i < results.time.size(); ++i)
        if (counts(i) && counts(i - 1))
            sum += (f(i) + f(i - 1)) / 2 * (results.time[i] - results.time[i - 1]);
    return sum;
}

// [kg] Below this an element's share means nothing: gas that stands still is taken to creep, which
// makes up to ten milligrams of air in three hours.
constexpr double least_element = 1e-2;

struct Peak {
    double value = 0;
    std::size_t at = 0;
};

Peak peak(const Results& results, const Series& series) {
    Peak most{series[0], 0};
    for (std::size_t i = 1; i < results.time.size(); ++i)
        if (series[i] > most.value) most = {series[i], i};
    return most;
}

/// Time for which the feed's flow is below zero, the crossings by straight lines.
void find_smoke_back(const Results& results, Summary& summary) {
    const Series flow(results, "feed_air_flow");
    if (results.time.empty()) return;
    // Less than a thousandth of a gram a second is a still feed.
    const auto still = [](double x) { return std::abs(x) < 1e-6 ? 0.0 : x; };
    if (still(flow[0]) < 0) summary.smoke_back_first = results.time[0];
    for (std::size_t i = 1; i < results.time.size(); ++i) {
        const double a = still(flow[i - 1]), b = still(flow[i]),
                     span = results.time[i] - results.time[i - 1];
        if (a >= 0 && b >= 0) continue;
        const double share =
            a < 0 && b < 0 ? 1 : std::min(a, b) / (std::min(a, b) - std::max(a, b));
        summary.smoke_back += share * span;
        if (!summary.smoke_back_first) summary.smoke_back_first = results.time[i] - share * span;
    }
}

void judge_draw(const Stove& stove, const Results& results, const Recorder& recorder,
                Summary& summary) {
    const Series flow(results, "feed_air_flow"), release(results, "heat_release"),
        reserve(results, "reserve_draw"), suction(results, "feed_suction");
    const double most = peak(results, release).value;
    std::size_t last = 0;
    for (std::size_t i = 0; i < results.time.size(); ++i)
        if (release[i] >= burning_share * most) last = i;
    const bool reserve_known = stove.burn.reserve_every > 0;
    bool any = false;
    summary.draws = true;
    for (std::size_t i = 0; i <= last; ++i) {
        if (results.time[i] < settled) continue;
        any = true;
        if (flow[i] <= 0) summary.draws = false;
        if (!summary.feed_suction_min || suction[i] < *summary.feed_suction_min)
            summary.feed_suction_min = suction[i];
        if (reserve_known &&
            (!summary.reserve_draw_min || reserve[i] < *summary.reserve_draw_min)) {
            summary.reserve_draw_min = reserve[i];
            summary.reserve_draw_min_time = results.time[i];
        }
    }
    summary.draws = summary.draws && any && most > 0;
    for (const Recorder::Refined& refined : recorder.refined())
        if (summary.reserve_draw_min && refined.time >= settled &&
            refined.time <= results.time[last] && refined.pressure < *summary.reserve_draw_min) {
            summary.reserve_draw_min = refined.pressure;
            summary.reserve_draw_min_time = refined.time;
        }

    const auto strong = [&](std::size_t i) { return release[i] > strong_share * most; };
    const Series side(results, "side_air_flow"), exit(results, "outlet_gas_temperature");
    const double in = integrate(
        results, [&](std::size_t i) { return recorder.oxygen_in()[i]; }, strong);
    const double needed = integrate(
        results, [&](std::size_t i) { return recorder.oxygen_needed()[i]; }, strong);
    if (needed > 0) summary.air_ratio_mean = in / needed;
    const double length = integrate(
        results, [](std::size_t) { return 1.0; }, strong);
    if (length > 0) {
        summary.air_flow_mean =
            integrate(
                results, [&](std::size_t i) { return flow[i] + side[i]; }, strong) /
            length;
        summary.exit_gas_mean = integrate(
                                    results, [&](std::size_t i) { return exit[i]; }, strong) /
                                length;
    }
}

void judge_plate(const Results& results, const Layout& layout, Summary& summary) {
    const Column* plate = results.find("plate_temperature");
    if (plate == nullptr) return;
    const Series centre(results, "plate_temperature", 0),
        rim(results, "plate_temperature", plate->width - 1);
    const Peak hottest = peak(results, centre);
    summary.plate_centre_max = hottest.value;
    summary.plate_centre_max_time = results.time[hottest.at];
    summary.plate_rim_max = peak(results, rim).value;
    for (std::size_t i = 0; i < results.time.size() && !summary.plate_time_to_fry; ++i)
        for (std::size_t r = 0; r < plate->width; ++r)
            if (plate->values[i * plate->width + r] >= fry_from) {
                summary.plate_time_to_fry = results.time[i];
                break;
            }

    // The best ring is the one that fries longest; where none fries, the hottest one.
    std::size_t best = 0;
    std::vector<double> history(results.time.size());
    CookingTime best_time;
    double best_peak = 0;
    for (std::size_t r = 0; r < plate->width; ++r) {
        for (std::size_t i = 0; i < history.size(); ++i)
            history[i] = plate->values[i * plate->width + r];
        const CookingTime time = cooking_time(results.time, history);
        const double hottest_here = *std::max_element(history.begin(), history.end());
        const bool none_fries = !(time.fry > 0) && !(best_time.fry > 0);
        if (r == 0 || time.fry > best_time.fry || (none_fries && hottest_here > best_peak)) {
            best_time = time;
            best_peak = hottest_here;
            best = r;
        }
    }
    summary.plate_best_ring = best_time;
    summary.plate_best_ring_radius = layout.plate.position[best];
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
    summary.room_demand = stove.site.room_loss * (stove.site.room - stove.site.outdoor(0)) *
                          (results.time.back() - results.time.front());
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

    // Walls that are held at their temperature may bring or take more than the fire.
    const double scale = std::max({summary.heat_released, std::abs(totals.held), 1e3});
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
    find_smoke_back(results, summary);
    judge_draw(stove, results, recorder, summary);
    judge_plate(results, built.layout, summary);
    judge_heat(stove, results, summary);
    balance_books(stove, built, audit, fuel, summary);
    return summary;
}

}  // namespace drawwell
