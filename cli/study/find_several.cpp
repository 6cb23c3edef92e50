#include "cli/study/find_several.h"

#include <nlopt.h>

#include <algorithm>
#include <cmath>
#include <exception>
#include <limits>
#include <map>
#include <memory>
#include <utility>

#include "cli/study/sobol.h"

namespace drawwell {
namespace {

constexpr std::size_t looks_per_key = 16;  // at first
constexpr double first_step = 0.12;        // of the spans, about half of what lies between looks
constexpr double far_off = 10;             // how far off a stove counts that can't be

/// What a point is worth; the less the better.
struct Worth {
    double sought = 0;        // what is to be least
    std::vector<double> off;  // of each condition, as a share of its value; positive: it fails

    double worst() const { return *std::max_element(off.begin(), off.end()); }
    bool better_than(const Worth& other) const {
        const double mine = std::max(worst(), 0.0), others = std::max(other.worst(), 0.0);
        return mine < others || (mine <= others && sought < other.sought);
    }
};

/// Points are shares of the spans, from 0 to 1.
class Searching {
  public:
    Searching(const SeveralSearch& search, const RowsAt& rows_at)
        : search_(search), rows_at_(rows_at), conditions_(search.where) {
        if (search.target) conditions_.push_back(*search.target);
    }

    SeveralFindings run() {
        const std::size_t keys = search_.low.size();
        std::vector<Point> points = sobol_points(looks_per_key * keys, keys, 1);
        if (!search_.from.empty()) points.push_back(share_of(search_.from));
        look_at(points);
        close_in(first_step);
        close_in(first_step / 4);
        SeveralFindings findings;
        findings.failures = std::move(failures_);
        if (best_row_.done && best_row_.error.empty())
            (best_->second.worst() <= 0 ? findings.found : findings.nearest) =
                FoundPoint{values_at(best_->first), std::move(best_row_)};
        return findings;
    }

  private:
    Point values_at(const Point& share) const {
        Point values(share.size());
        for (std::size_t k = 0; k < share.size(); ++k)
            values[k] = std::clamp(search_.low[k] + share[k] * (search_.high[k] - search_.low[k]),
                                   search_.low[k], search_.high[k]);
        return values;
    }
    Point share_of(const Point& values) const {
        Point share(values.size());
        for (std::size_t k = 0; k < share.size(); ++k)
            share[k] = std::clamp((values[k] - search_.low[k]) / (search_.high[k] - search_.low[k]),
                                  0.0, 1.0);
        return share;
    }

    double sought_at(const Point& share) const {
        if (search_.goal == SeveralSearch::Goal::smallest) return share[0];
        if (search_.goal == SeveralSearch::Goal::largest) return -share[0];
        const Point from = share_of(search_.from);
        double change = 0;
        for (std::size_t k = 0; k < share.size(); ++k)
            change += (share[k] - from[k]) * (share[k] - from[k]);
        return change;
    }

    double off(const Condition& condition, const Answers& answers) const {
        const double by = -relative_margin(condition, answers);
        const bool target = search_.target && condition.answer == search_.target->answer &&
                            condition.relation == Condition::Relation::equal;
        return std::min(target ? by - search_.close : by, far_off);
    }

    void look_at(const std::vector<Point>& shares) {
        std::vector<Point> points;
        points.reserve(shares.size());
        for (const Point& share : shares) points.push_back(values_at(share));
        std::vector<Row> rows = rows_at_(points);
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const bool sound = rows[i].done && rows[i].error.empty();
            if (!sound) failures_.push_back(rows[i].error);
            Worth worth{sought_at(shares[i]), {}};
            for (const Condition& condition : conditions_)
                worth.off.push_back(sound ? off(condition, rows[i].answers) : far_off);
            const auto [place, fresh] = looked_.emplace(shares[i], std::move(worth));
            if (best_ && !place->second.better_than(best_->second)) continue;
            best_ = &*place;
            best_row_ = std::move(rows[i]);
        }
    }

    const Worth& worth_at(const double* x) {
        const Point share(x, x + search_.low.size());
        if (!looked_.contains(share)) look_at({share});
        return looked_.at(share);
    }

    /// One of the figures that NLopt asks for. Nothing may be thrown through it.
    struct Asked {
        Searching* searching;
        std::optional<std::size_t> condition;  // none: what is sought
    };
    static double answer(unsigned, const double* x, double*, void* data) {
        const Asked& asked = *static_cast<const Asked*>(data);
        Searching& self = *asked.searching;
        if (self.failure_) return 0;
        try {
            const Worth& worth = self.worth_at(x);
            return asked.condition ? worth.off[*asked.condition] : worth.sought;
        } catch (...) {
            self.failure_ = std::current_exception();
            nlopt_force_stop(self.optimiser_.get());
            return 0;
        }
    }

    void close_in(double step) {
        const auto keys = static_cast<unsigned>(search_.low.size());
        optimiser_.reset(nlopt_create(NLOPT_LN_COBYLA, keys));
        nlopt_opt by = optimiser_.get();
        nlopt_set_lower_bounds1(by, 0);
        nlopt_set_upper_bounds1(by, 1);
        nlopt_set_initial_step1(by, step);
        nlopt_set_xtol_abs1(by, search_.fine);
        nlopt_set_maxeval(by, static_cast<int>(search_.most_steps / 2));
        Asked sought{this, {}};
        nlopt_set_min_objective(by, answer, &sought);
        std::vector<Asked> conditions;
        conditions.reserve(conditions_.size());
        for (std::size_t c = 0; c < conditions_.size(); ++c) conditions.push_back({this, c});
        for (Asked& condition : conditions)
            nlopt_add_inequality_constraint(by, answer, &condition, 0);
        Point share = best_->first;
        double least = 0;
        nlopt_optimize(by, share.data(), &least);  // what it found stands in best_, if any
        if (failure_) std::rethrow_exception(failure_);
    }

    struct Destroy {
        void operator()(nlopt_opt optimiser) const { nlopt_destroy(optimiser); }
    };

    const SeveralSearch& search_;
    const RowsAt& rows_at_;
    std::vector<Condition> conditions_;
    std::map<Point, Worth> looked_;
    const std::pair<const Point, Worth>* best_ = nullptr;
    Row best_row_;
    std::vector<std::string> failures_;
    std::exception_ptr failure_;
    std::unique_ptr<nlopt_opt_s, Destroy> optimiser_;
};

}  // namespace

SeveralFindings find_several(const SeveralSearch& search, const RowsAt& rows_at) {
    return Searching(search, rows_at).run();
}

}  // namespace drawwell
