#pragma once

#include <map>
#include <vector>

#include "cli/study/fit/match_log.h"

namespace drawwell {

/// The readings that a stove would give, in rows: those of the log, sensor after sensor, then those
/// that candidates would have each minute. Keeps every burn that it computed.
class BurnModel {
  public:
    /// `inputs`: what points are made of, the clock among them if it is fitted.
    BurnModel(const MatchRequest& request, std::vector<Sensor> candidates,
              std::vector<FitInput> inputs, Journal& journal, const RowsWatch& watch);

    /// Rows at each point [deviations of each input]; empty where there is no such stove.
    /// MatchStopped.
    std::vector<Numbers> predict(const std::vector<Numbers>& points);
    /// The rows as filed. InputError: the stove can't be, or lacks what a sensor reads.
    Numbers as_filed();

    const Numbers& measured() const { return measured_; }
    std::size_t logged_sensors() const { return request_.logged.size(); }
    /// Rows of a sensor, the candidates behind those logged: [first, last).
    std::pair<std::size_t, std::size_t> rows_of(std::size_t sensor) const;
    const Sensor& sensor(std::size_t k) const { return sensors_[k]; }
    /// Times [s] of the rows, by the log's clock.
    const Numbers& time() const { return time_; }
    /// [s] as said beforehand
    double clock_offset() const { return request_.clock.middle; }
    std::size_t burns() const { return burned_.size(); }

  private:
    void add_rows(const LoggedSensor& logged, const Stove& stove);
    void compute(const std::vector<Numbers>& points);
    Numbers burn_of(const Numbers& point) const;
    double offset_at(const Numbers& point) const;

    const MatchRequest& request_;
    std::vector<Sensor> sensors_;
    std::vector<FitInput> inputs_;
    Journal& journal_;
    const RowsWatch& watch_;
    double duration_ = 0;
    std::vector<std::size_t> first_row_;
    Numbers time_, measured_;
    std::map<Numbers, Tracks> burned_;
};

}  // namespace drawwell
