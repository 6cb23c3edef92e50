#include "cli/study/fit/burn_model.h"

#include <algorithm>
#include <utility>

#include "cli/read/several_problems.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

// [s] before and after a load is due, in which a scale shows a hand and not a stove; our choice.
constexpr double before_load = 60, after_load = 90;
constexpr double candidate_every = 60;  // [s] our choice

/// `slack`: [s] by which the clock may stand otherwise.
bool near_load(const Stove& stove, double time, double slack) {
    return std::any_of(stove.loads.begin(), stove.loads.end(), [&](const Load& load) {
        return std::any_of(load.times.begin(), load.times.end(), [&](double due) {
            return time > due - before_load - slack && time < due + after_load + slack;
        });
    });
}

bool weighs(const Sensor& sensor) {
    return sensor.quantity == Quantity::mass;
}

}  // namespace

BurnModel::BurnModel(const MatchRequest& request, std::vector<Sensor> candidates,
                     std::vector<FitInput> inputs, Journal& journal, const RowsWatch& watch)
    : request_(request), inputs_(std::move(inputs)), journal_(journal), watch_(watch) {
    Study filed = request.study;
    filed.variants = {Variant{}};
    const Stove stove = stove_of(filed, 0, request.library);
    double first = request.logged.front().time.front(), last = first;
    for (const LoggedSensor& each : request.logged) {
        first = std::min(first, each.time.front());
        last = std::max(last, each.time.back());
    }
    const double lit = request.clock.middle, slack = 3 * request.clock.spread;
    if (last - lit < candidate_every)
        throw InputError(
            "the log ends before the stove is lit, or hardly after: --clock-offset says what its "
            "clock showed at lighting");
    duration_ = last - lit + slack + stove.burn.output_every;
    for (const LoggedSensor& each : request.logged) add_rows(each, stove);
    for (Sensor& candidate : candidates) {
        sensors_.push_back(std::move(candidate));
        first_row_.push_back(time_.size());
        for (double t = std::max(first, lit) + candidate_every; t <= last; t += candidate_every)
            if (!weighs(sensors_.back()) || !near_load(stove, t - lit, slack)) time_.push_back(t);
    }
    first_row_.push_back(time_.size());
}

void BurnModel::add_rows(const LoggedSensor& logged, const Stove& stove) {
    sensors_.push_back(logged.sensor);
    first_row_.push_back(time_.size());
    for (std::size_t i = 0; i < logged.time.size(); ++i) {
        const double after = logged.time[i] - request_.clock.middle;
        // Cold walls before lighting tell nothing, and a scale then tells who carries the wood.
        if (after < 0 ||
            (weighs(logged.sensor) && near_load(stove, after, 3 * request_.clock.spread)))
            continue;
        time_.push_back(logged.time[i]);
        measured_.push_back(logged.value[i]);
    }
    if (time_.size() == first_row_.back())
        throw InputError("column \"" + logged.sensor.header +
                         "\" has no reading after lighting (and away from loads, for a scale)");
}

std::pair<std::size_t, std::size_t> BurnModel::rows_of(std::size_t sensor) const {
    return {first_row_[sensor], first_row_[sensor + 1]};
}

Numbers BurnModel::burn_of(const Numbers& point) const {
    Numbers burn = point;
    for (std::size_t k = 0; k < inputs_.size(); ++k)
        if (inputs_[k].sort == FitInput::Sort::clock) burn[k] = 0;
    return burn;
}

double BurnModel::offset_at(const Numbers& point) const {
    for (std::size_t k = 0; k < inputs_.size(); ++k)
        if (inputs_[k].sort == FitInput::Sort::clock) return inputs_[k].value(point[k]);
    return request_.clock.middle;
}

void BurnModel::compute(const std::vector<Numbers>& points) {
    std::vector<Numbers> fresh;
    for (const Numbers& point : points) {
        const Numbers burn = burn_of(point);
        if (!burned_.contains(burn) && std::find(fresh.begin(), fresh.end(), burn) == fresh.end())
            fresh.push_back(burn);
    }
    std::vector<Variant> variants;
    variants.reserve(fresh.size());
    for (const Numbers& burn : fresh) variants.push_back(variant_of(inputs_, burn));
    const TrackPlan plan{request_.study, request_.library, sensors_, duration_};
    std::vector<Tracks> tracks = burn_tracks(plan, variants, journal_, watch_);
    for (std::size_t i = 0; i < fresh.size(); ++i)
        if (!tracks[i].done) throw MatchStopped("stopped");
    for (std::size_t i = 0; i < fresh.size(); ++i)
        burned_.emplace(std::move(fresh[i]), std::move(tracks[i]));
}

std::vector<Numbers> BurnModel::predict(const std::vector<Numbers>& points) {
    compute(points);
    std::vector<Numbers> all;
    for (const Numbers& point : points) {
        Numbers& rows = all.emplace_back();
        const Tracks& tracks = burned_.at(burn_of(point));
        if (!tracks.error.empty()) continue;
        const double offset = offset_at(point);
        for (std::size_t k = 0; k < sensors_.size(); ++k)
            for (std::size_t i = first_row_[k]; i < first_row_[k + 1]; ++i)
                rows.push_back(tracks.value[k].empty() ? 0
                                                       : track_at(tracks, k, time_[i] - offset));
    }
    return all;
}

Numbers BurnModel::as_filed() {
    const Numbers origin(inputs_.size());
    const Numbers rows = predict({origin}).front();
    const Tracks& tracks = burned_.at(burn_of(origin));
    if (rows.empty()) throw SeveralProblems(tracks.error);
    for (std::size_t k = 0; k < request_.logged.size(); ++k)
        if (tracks.value[k].empty())
            throw InputError("column \"" + sensors_[k].header + "\": the stove has no " +
                             sensors_[k].what() + "; `drawwell list columns` explains them");
    return rows;
}

}  // namespace drawwell
