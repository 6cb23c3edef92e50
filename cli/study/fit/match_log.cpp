#include "cli/study/fit/match_log.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "cli/study/fit/burn_model.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double told = 0.7;  // [deviations] left of what counts as told; our choice
constexpr double strong = 3;  // [noises] that an input moves the whole log; our choice
constexpr double least_step = 0.02, most_step = 0.25;  // [deviations] of differences; our choice
constexpr double clock_step = 1;      // [s] of the same of the clock, which costs no burn
constexpr double differs = 1.5;       // [noises] rms from which a sensor and the stove differ
constexpr double most_linked = 0.98;  // correlation from reading to reading
constexpr int most_rounds = 4;

/// [deviations] to either side in which an input is tried at first.
double first_step(const FitInput& input) {
    return input.sort == FitInput::Sort::clock ? std::min(1.0, clock_step / input.spread) : 1;
}

/// [deviations] to either side for differences: what moves a reading by about its noise. More would
/// be crooked, less would drown in the solver's error.
double step_of(const FitInput& input, double effect, std::size_t readings) {
    const double one_noise = std::sqrt(static_cast<double>(readings)) / std::max(effect, 1e-9);
    return std::min(first_step(input), std::clamp(one_noise, least_step, most_step));
}

/// Slopes [input][row] by burns one deviation to either side; zero where neither can be.
std::vector<Numbers> scan(const decltype(Inference::predict)& predict,
                          const std::vector<FitInput>& inputs, const Numbers& filed) {
    std::vector<Numbers> points;
    for (std::size_t k = 0; k < inputs.size(); ++k)
        for (const double side : {-1.0, 1.0}) {
            points.emplace_back(inputs.size());
            points.back()[k] = side * first_step(inputs[k]);
        }
    const std::vector<Numbers> rows = predict(points);
    std::vector<Numbers> slopes;
    for (std::size_t k = 0; k < inputs.size(); ++k) {
        const Numbers& less = rows[2 * k].empty() ? filed : rows[2 * k];
        const Numbers& more = rows[2 * k + 1].empty() ? filed : rows[2 * k + 1];
        const double sides = (rows[2 * k].empty() ? 0 : 1) + (rows[2 * k + 1].empty() ? 0 : 1);
        Numbers& slope = slopes.emplace_back(filed.size());
        for (std::size_t i = 0; sides > 0 && i < slope.size(); ++i)
            slope[i] = (more[i] - less[i]) / (sides * first_step(inputs[k]));
    }
    return slopes;
}

/// What the readings of each logged sensor are off alike, a column each.
std::vector<Numbers> common_errors(const BurnModel& model) {
    std::vector<Numbers> columns;
    for (std::size_t k = 0; k < model.logged_sensors(); ++k) {
        const Sensor& sensor = model.sensor(k);
        Numbers& column = columns.emplace_back(model.time().size());
        const auto [first, last] = model.rows_of(k);
        for (std::size_t i = first; i < last; ++i)
            column[i] = sensor.noise.common_at(model.measured()[i], sensor.quantity);
    }
    return columns;
}

Numbers noises(const BurnModel& model, const Numbers& of_sensor) {
    Numbers noise(model.measured().size());
    for (std::size_t k = 0; k < model.logged_sensors(); ++k) {
        const auto [first, last] = model.rows_of(k);
        std::fill(noise.begin() + static_cast<long>(first), noise.begin() + static_cast<long>(last),
                  of_sensor[k]);
    }
    return noise;
}

/// How far an input moves the whole log [noises].
double effect(const Numbers& slope, const Numbers& noise) {
    double squares = 0;
    for (std::size_t i = 0; i < noise.size(); ++i) squares += std::pow(slope[i] / noise[i], 2);
    return std::sqrt(squares);
}

struct Misfit {
    double rms = 0;      // SI
    double counted = 0;  // noise of each reading if what is left counts as noise, SI
};

Misfit misfit_of(const BurnModel& model, std::size_t sensor, const Numbers& predicted) {
    const auto [first, last] = model.rows_of(sensor);
    double squares = 0, linked = 0, before = 0;
    for (std::size_t i = first; i < last; ++i) {
        const double off = model.measured()[i] - predicted[i];
        squares += off * off;
        if (i > first) linked += off * before;
        before = off;
    }
    const double stated = model.sensor(sensor).noise.reading;
    Misfit misfit{std::sqrt(squares / static_cast<double>(last - first)), stated};
    if (misfit.rms <= differs * stated) return misfit;
    const double link = std::clamp(squares > 0 ? linked / squares : 0, 0.0, most_linked);
    misfit.counted = misfit.rms * std::sqrt((1 + link) / (1 - link));
    return misfit;
}

std::vector<NextMeasurement> next_measurements(const BurnModel& model, const Posterior& posterior,
                                               std::size_t inputs, std::size_t sensors) {
    std::vector<NextMeasurement> all;
    const auto left = [&](const std::vector<Numbers>& covariance) {
        double sum = 0;
        for (std::size_t k = 0; k < inputs; ++k) sum += covariance[k][k];
        return sum;
    };
    for (std::size_t s = model.logged_sensors(); s < sensors; ++s) {
        const Sensor& sensor = model.sensor(s);
        const auto [first, last] = model.rows_of(s);
        MoreReadings more;
        for (std::size_t i = first; i < last; ++i) {
            more.noise.push_back(sensor.noise.reading);
            more.common.push_back(sensor.noise.common_at(posterior.predicted[i], sensor.quantity));
        }
        for (const Numbers& slope : posterior.slope)
            more.slope.emplace_back(slope.begin() + static_cast<long>(first),
                                    slope.begin() + static_cast<long>(last));
        const std::vector<Numbers> after = narrowed(posterior.covariance, more);
        NextMeasurement next{sensor, 1 - left(after) / left(posterior.covariance)};
        const auto ratio = [&](std::size_t k) { return after[k][k] / posterior.covariance[k][k]; };
        for (std::size_t k = 1; k < inputs; ++k)
            if (ratio(k) < ratio(next.most)) next.most = k;
        next.from = std::sqrt(posterior.covariance[next.most][next.most]);
        next.to = std::sqrt(after[next.most][next.most]);
        all.push_back(std::move(next));
    }
    std::stable_sort(
        all.begin(), all.end(),
        [](const NextMeasurement& a, const NextMeasurement& b) { return a.gain > b.gain; });
    return all;
}

std::vector<Numbers> correlations(const std::vector<Numbers>& covariance, std::size_t inputs) {
    std::vector<Numbers> all(inputs, Numbers(inputs));
    for (std::size_t i = 0; i < inputs; ++i)
        for (std::size_t k = 0; k < inputs; ++k)
            all[i][k] = covariance[i][k] / std::sqrt(covariance[i][i] * covariance[k][k]);
    return all;
}

void add_sensors(const BurnModel& model, const Numbers& filed, const Posterior& posterior,
                 const Numbers& counted, Match& match) {
    double offset = model.clock_offset();
    for (const MatchedInput& each : match.inputs)
        if (each.input.sort == FitInput::Sort::clock) offset = each.input.value(each.estimate);
    const std::size_t first_common = posterior.estimate.size() - model.logged_sensors();
    for (std::size_t s = 0; s < model.logged_sensors(); ++s) {
        const auto [first, last] = model.rows_of(s);
        MatchedSensor sensor;
        sensor.sensor = model.sensor(s);
        for (std::size_t i = first; i < last; ++i) {
            sensor.time.push_back(model.time()[i] - offset);
            sensor.measured.push_back(model.measured()[i]);
            sensor.filed.push_back(filed[i]);
            sensor.matched.push_back(posterior.predicted[i]);
        }
        sensor.rms = misfit_of(model, s, posterior.predicted).rms;
        sensor.counted = counted[s];
        sensor.common_estimate = posterior.estimate[first_common + s];
        match.sensors.push_back(std::move(sensor));
    }
}

bool named(const std::vector<FitInput>& inputs, const std::string& name) {
    return std::any_of(inputs.begin(), inputs.end(),
                       [&](const FitInput& each) { return each.name == name; });
}

}  // namespace

Match match_log(const MatchRequest& request, Journal& journal, const RowsWatch& watch) {
    std::vector<FitInput> all = request.inputs;
    if (request.clock.spread > 0) all.push_back(request.clock);
    const std::size_t asked = all.size();
    Study alone = request.study;
    alone.variants = {Variant{}};
    const Stove stove = stove_of(alone, 0, request.library);
    if (request.inputs.empty() || !request.rest_as_filed)
        for (const FitInput& input : uncertain_fit_inputs(stove, request.library))
            if (!named(request.inputs, input.name)) all.push_back(input);

    const std::vector<Sensor> candidates = candidate_sensors(request.logged);
    const std::size_t sensors = request.logged.size() + candidates.size();
    std::size_t before = 0;  // burns finished before those at work
    RowsWatch counting = watch;
    if (watch.progress)
        counting.progress = [&](std::size_t done) { watch.progress(before + done); };
    BurnModel model(request, candidates, all, journal, counting);
    const auto predict = [&](const std::vector<Numbers>& points) {
        before = model.burns();
        return model.predict(points);
    };
    const Numbers filed = model.as_filed();
    const std::vector<Numbers> slopes = scan(predict, all, filed);

    Numbers of_sensor;
    for (const LoggedSensor& each : request.logged) of_sensor.push_back(each.sensor.noise.reading);
    Inference inference;
    inference.measured = model.measured();
    inference.noise = noises(model, of_sensor);
    std::vector<std::size_t> fitted;
    Match match;
    for (std::size_t k = 0; k < all.size(); ++k) {
        const double moves = effect(slopes[k], inference.noise);
        if (k < asked || moves > strong) {
            fitted.push_back(k);
            inference.step.push_back(step_of(all[k], moves, inference.measured.size()));
            inference.start_slope.push_back(slopes[k]);
        } else {
            inference.straight.push_back(slopes[k]);
            match.rest.push_back(all[k].name);
        }
    }
    for (Numbers& common : common_errors(model)) inference.straight.push_back(std::move(common));
    inference.parameters = fitted.size();
    inference.predict = [&](const std::vector<Numbers>& points) {
        std::vector<Numbers> whole;
        for (const Numbers& point : points) {
            Numbers& each = whole.emplace_back(all.size());
            for (std::size_t k = 0; k < fitted.size(); ++k) each[fitted[k]] = point[k];
        }
        return predict(whole);
    };
    Posterior posterior;
    for (int round = 0; round < most_rounds; ++round) {
        inference.noise = noises(model, of_sensor);
        posterior = infer(inference);
        inference.start.assign(posterior.estimate.begin(),
                               posterior.estimate.begin() + static_cast<long>(fitted.size()));
        inference.start_slope.assign(posterior.slope.begin(),
                                     posterior.slope.begin() + static_cast<long>(fitted.size()));
        bool steady = true;
        for (std::size_t s = 0; s < of_sensor.size(); ++s) {
            const double counted = misfit_of(model, s, posterior.predicted).counted;
            steady = steady && std::abs(counted / of_sensor[s] - 1) < 0.1;
            // At first the search may have ended early: it begins again before noise is counted.
            if (round > 0) of_sensor[s] = counted;
        }
        if (steady) break;
    }

    match.burns = model.burns();
    match.settled = posterior.settled;
    bool any = false;
    for (std::size_t k = 0; k < fitted.size(); ++k) {
        const double left = std::sqrt(posterior.covariance[k][k]);
        const bool shown = fitted[k] < asked || (request.inputs.empty() && left < told);
        match.inputs.push_back({all[fitted[k]], posterior.estimate[k], left, shown});
        any = any || shown;
    }
    if (!any)
        throw InputError(
            "the log tells nothing that is uncertain: it is the same within its noise, whatever "
            "the stove is");
    match.correlation = correlations(posterior.covariance, fitted.size());
    match.blurred = blurred_directions(posterior.covariance, fitted.size());
    match.next = next_measurements(model, posterior, request.inputs.empty() ? fitted.size() : asked,
                                   sensors);
    add_sensors(model, filed, posterior, of_sensor, match);
    return match;
}

}  // namespace drawwell
