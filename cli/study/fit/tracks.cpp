#include "cli/study/fit/tracks.h"

#include <fmt/format.h>
#include <tbb/global_control.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <thread>

#include "cli/read/resolved_text.h"
#include "cli/read/several_problems.h"
#include "cli/report/cell_labels.h"
#include "models/build_network.h"
#include "models/burn.h"
#include "models/recorder.h"
#include "models/series.h"
#include "models/uncertain_inputs.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

// [-] of a step, so that the solver's error does not drown what differs between burns; our choice.
constexpr double most_tolerance = 1e-4;

void set_off(const Variant& variant, Library& library, Stove& stove) {
    const std::vector<UncertainInput> inputs = uncertain_inputs(library, stove);
    for (const auto& [name, deviations] : variant.off) {
        const auto found =
            std::find_if(inputs.begin(), inputs.end(),
                         [&](const UncertainInput& each) { return each.name == name; });
        if (found == inputs.end()) throw InputError("nothing uncertain is called " + name);
        found->set(deviations, library, stove);
    }
}

bool needs_reserve(std::span<const Sensor> sensors) {
    return std::any_of(sensors.begin(), sensors.end(), [](const Sensor& sensor) {
        return sensor.column.starts_with("reserve_") || sensor.column.starts_with("exchange_") ||
               sensor.column == "sustained_push" || sensor.column == "draw_limit";
    });
}

std::vector<double> fuel_masses(const Results& results) {
    const Series wood(results, "wood_left"), embers(results, "char_left"), ash(results, "ash_left");
    const Column* water = results.find("load_water");
    std::vector<double> mass;
    if (!wood) return mass;
    for (std::size_t i = 0; i < results.time.size(); ++i) {
        double sum = wood[i] + (embers ? embers[i] : 0) + (ash ? ash[i] : 0);
        for (std::size_t k = 0; water && k < water->width; ++k)
            sum += water->values[i * water->width + k];
        mass.push_back(sum);
    }
    return mass;
}

std::vector<double> track_of(const Results& results, const Stove& stove, const Sensor& sensor) {
    if (sensor.column == fuel_mass) return fuel_masses(results);
    const Column* column = results.find(sensor.column);
    if (!column || column->values.empty()) return {};
    const std::size_t cell = cell_of(results, *column, sensor.cell);
    if (cell >= column->width) return {};
    if (sensor.bead) return bead_readings(results, stove, sensor.column, cell, *sensor.bead);
    std::vector<double> track;
    for (std::size_t i = 0; i < results.time.size(); ++i)
        track.push_back(column->values[i * column->width + cell]);
    return track;
}

std::string plan_text(const TrackPlan& plan, const Variant& variant) {
    std::string text = fmt::format("\ntracks of {} s", plan.duration);
    for (const Sensor& sensor : plan.sensors) {
        const Bead bead = sensor.bead.value_or(Bead{});
        text += fmt::format("\n{} {} {} {}", sensor.what(), bead.diameter, bead.emissivity,
                            bead.shielded);
    }
    for (const auto& [input, deviations] : variant.off)
        text += fmt::format("\n{} off by {}", input, deviations);
    return text;
}

/// Numbers as the journal keeps them, exact.
std::string joined(const std::vector<double>& numbers) {
    return fmt::format("{}", fmt::join(numbers, " "));
}

std::vector<double> numbers_of(std::string_view text) {
    std::vector<double> numbers;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        double number = 0;
        std::from_chars(text.data(), text.data() + end, number);
        numbers.push_back(number);
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return numbers;
}

Row row_of(const Tracks& tracks, const std::string& identity) {
    Row row;
    row.identity = identity;
    row.error = tracks.error;
    row.done = true;
    std::vector<std::pair<std::string, Answer>> all{{"time", joined(tracks.time)}};
    for (std::size_t k = 0; k < tracks.value.size(); ++k)
        all.emplace_back(fmt::format("track {}", k), joined(tracks.value[k]));
    row.answers = Answers(std::move(all));
    return row;
}

Tracks tracks_from(const Row& row) {
    Tracks tracks;
    tracks.error = row.error;
    tracks.done = true;
    for (const auto& [name, answer] : row.answers.all()) {
        const std::string* text = std::get_if<std::string>(&answer);
        if (name == "time")
            tracks.time = numbers_of(text ? *text : "");
        else
            tracks.value.push_back(numbers_of(text ? *text : ""));
    }
    return tracks;
}

Tracks compute(const TrackPlan& plan, const Variant& variant, Journal& journal,
               const RowsWatch& watch) {
    Tracks tracks;
    std::string identity;
    try {
        Study one = plan.study;
        one.variants = {variant};
        Stove stove = stove_of(one, 0, plan.library);
        identity = identity_of(resolved_text(stove) + plan_text(plan, variant));
        if (const Row* finished = journal.find(identity)) return tracks_from(*finished);
        Library library = plan.library;
        set_off(variant, library, stove);
        stove.burn.duration = plan.duration;
        stove.burn.tolerance = std::min(stove.burn.tolerance, most_tolerance);
        if (!needs_reserve(plan.sensors)) stove.burn.reserve_every = 0;
        BurnWatch burn;
        burn.stop = watch.stop;
        const BurnOutcome outcome = run_burn(stove, library, burn);
        if (!outcome.complete) return tracks;
        tracks.time = outcome.results.time;
        for (const Sensor& sensor : plan.sensors)
            tracks.value.push_back(track_of(outcome.results, stove, sensor));
    } catch (const InputError& error) {
        tracks.error = error_text(error);
    } catch (const SolverError& error) {
        tracks.error = "the calculation failed: " + error_text(error);
    }
    tracks.done = true;
    if (!identity.empty()) journal.add(row_of(tracks, identity));
    return tracks;
}

const Axis* axis_of(const Results& results, const Column& column) {
    const auto axis = std::find_if(results.axes.begin(), results.axes.end(),
                                   [&](const Axis& each) { return each.name == column.axis; });
    return axis == results.axes.end() ? nullptr : &*axis;
}

/// Where a sensor says it is along an axis, `0.105m`.
double place_of(const Axis& axis, std::string_view text) {
    return parse_quantity(text, place_quantity(axis.name));
}

/// Whether a place lies beyond the ends of a divided part, of whose cells only the middles are
/// known: further out than another cell would lie.
bool is_beyond(const Results& results, const Column& column, const std::string& cell) {
    const Axis* axis = axis_of(results, column);
    if (!axis || cell.find_first_not_of("[]0123456789") == std::string::npos || cell == "[last]" ||
        cell == "[middle]")
        return false;
    std::vector<double> at = axis->positions;
    std::sort(at.begin(), at.end());
    const std::size_t n = at.size();
    const double before = n > 1 ? at[1] - at[0] : at[0],
                 behind = n > 1 ? at[n - 1] - at[n - 2] : at[0];
    const double place = place_of(*axis, std::string_view(cell).substr(1, cell.size() - 2));
    constexpr double rounding = 1e-3;  // [m] as places are told
    return place < at[0] - before - rounding || place > at[n - 1] + behind + rounding;
}

}  // namespace

double track_at(const Tracks& tracks, std::size_t sensor, double time) {
    const std::vector<double>& at = tracks.time;
    const std::vector<double>& value = tracks.value[sensor];
    if (time <= at.front()) return value.front();
    if (time >= at.back()) return value.back();
    const auto above =
        static_cast<std::size_t>(std::upper_bound(at.begin(), at.end(), time) - at.begin());
    const double share = (time - at[above - 1]) / (at[above] - at[above - 1]);
    return value[above - 1] + share * (value[above] - value[above - 1]);
}

std::vector<Tracks> burn_tracks(const TrackPlan& plan, std::span<const Variant> variants,
                                Journal& journal, const RowsWatch& watch) {
    const unsigned threads =
        watch.threads > 0 ? watch.threads : std::max(1U, std::thread::hardware_concurrency());
    const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
    std::vector<Tracks> all(variants.size());
    std::atomic<std::size_t> done = 0;
    tbb::parallel_for(
        tbb::blocked_range<std::size_t>(0, all.size(), 1),
        [&](const tbb::blocked_range<std::size_t>& range) {
            for (std::size_t i = range.begin(); i < range.end(); ++i) {
                if (watch.stop && watch.stop->load()) return;
                all[i] = compute(plan, variants[i], journal, watch);
                if (all[i].done && watch.progress) watch.progress(++done);
            }
        },
        tbb::simple_partitioner());
    return all;
}

void check_places(std::span<const LoggedSensor> logged, const Stove& stove,
                  const Library& library) {
    const BuiltStove built = build_network(stove, library);
    const Recorder recorder(stove, built);
    const Results& results = recorder.results();
    for (const auto& [sensor, time, value] : logged) {
        if (sensor.column == fuel_mass) continue;
        const Column* column = results.find(sensor.column);
        if (!column)
            throw InputError(fmt::format("{}: the stove has no {}, for it has no such part",
                                         sensor.header, sensor.column));
        if (cell_of(results, *column, sensor.cell) >= column->width ||
            is_beyond(results, *column, sensor.cell))
            throw InputError(fmt::format("{}: the stove has no {}{}", sensor.header, sensor.what(),
                                         did_you_mean_cell(results, *column, sensor.cell)));
    }
}

std::size_t cell_of(const Results& results, const Column& column, const std::string& cell) {
    if (cell.empty() || cell == "[0]") return 0;
    if (cell == "[last]") return column.width - 1;
    if (cell == "[middle]") return column.width / 2;
    const std::string inside = cell.substr(1, cell.size() - 2);
    if (inside.find_first_not_of("0123456789") == std::string::npos) {
        std::size_t number = column.width;  // also where it is too long for one
        std::from_chars(inside.data(), inside.data() + inside.size(), number);
        return std::min(number, column.width);
    }
    const Axis* axis = axis_of(results, column);
    if (!axis) return column.width;
    const double place = place_of(*axis, inside);
    const auto found = std::min_element(
        axis->positions.begin(), axis->positions.end(),
        [&](double a, double b) { return std::abs(a - place) < std::abs(b - place); });
    return static_cast<std::size_t>(found - axis->positions.begin());
}

}  // namespace drawwell
