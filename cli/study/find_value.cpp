#include "cli/study/find_value.h"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <limits>

namespace drawwell {
namespace {

constexpr std::size_t looks = 17;  // over the span at first

/// One stove that was looked at.
struct Look {
    double value = 0;
    Row row;
    bool holds = false;
};

class Searching {
  public:
    Searching(const Search& search, const RowsOf& rows_of) : search_(search), rows_of_(rows_of) {}

    Findings run() {
        std::vector<double> values;
        for (std::size_t i = 0; i < looks; ++i)
            values.push_back(search_.low + (search_.high - search_.low) * static_cast<double>(i) /
                                               static_cast<double>(looks - 1));
        looked_ = look_at(values);
        if (search_.goal == Search::Goal::target)
            find_crossings();
        else
            find_edges();
        if (findings_.found.empty()) find_nearest();
        return std::move(findings_);
    }

  private:
    bool sound(const Look& look) const { return look.row.done && look.row.error.empty(); }

    std::vector<Look> look_at(const std::vector<double>& values) {
        std::vector<Row> rows = rows_of_(values);
        std::vector<Look> looks_at(values.size());
        for (std::size_t i = 0; i < values.size(); ++i) {
            looks_at[i] = {values[i], std::move(rows[i]), false};
            Look& look = looks_at[i];
            if (!look.row.error.empty()) findings_.failures.push_back(look.row.error);
            look.holds = sound(look) && all_hold(search_.where, look.row.answers);
        }
        return looks_at;
    }

    /// The value next to the edge between one that holds and one that does not, on its holding
    /// side; three looks at a time cut the gap to a quarter.
    Look edge_between(Look holds, double fails) {
        const double fine = search_.fine * (search_.high - search_.low);
        while (std::abs(holds.value - fails) > fine) {
            std::vector<double> values;
            for (const double part : {0.25, 0.5, 0.75})
                values.push_back(holds.value + part * (fails - holds.value));
            std::vector<Look> between = look_at(values);
            // From the holding side on: the last before the first that fails.
            std::size_t first = 0;
            while (first < between.size() && between[first].holds) ++first;
            if (first < between.size()) fails = between[first].value;
            if (first > 0) holds = std::move(between[first - 1]);
        }
        return holds;
    }

    void find_edges() {
        for (std::size_t i = 0; i < looks; ++i) {
            if (!looked_[i].holds) continue;
            std::size_t last = i;
            while (last + 1 < looks && looked_[last + 1].holds) ++last;
            const Look lower = i > 0 ? edge_between(looked_[i], looked_[i - 1].value) : looked_[i];
            const Look upper = last + 1 < looks
                                   ? edge_between(looked_[last], looked_[last + 1].value)
                                   : looked_[last];
            findings_.holds_within.emplace_back(lower.value, upper.value);
            const bool smallest = search_.goal == Search::Goal::smallest;
            const Look& edge = smallest ? lower : upper;
            findings_.found.push_back(
                {edge.value, edge.row, smallest ? i == 0 : last + 1 == looks});
            i = last;
        }
        if (search_.goal == Search::Goal::largest)
            std::reverse(findings_.found.begin(), findings_.found.end());
    }

    double off_target(const Row& row) const {
        const auto value = row.answers.number(search_.target->answer);
        return value ? *value - search_.target->value : std::numeric_limits<double>::quiet_NaN();
    }

    void find_crossings() {
        for (std::size_t i = 0; i + 1 < looks; ++i) {
            const Look &a = looked_[i], &b = looked_[i + 1];
            if (!sound(a) || !sound(b)) continue;
            const double at_a = off_target(a.row), at_b = off_target(b.row);
            if (!(at_a * at_b <= 0)) continue;         // also where it never happened
            if (at_b == 0 && i + 2 < looks) continue;  // found from its other side
            Found found{a.value, a.row, false};
            if (at_a != 0) {
                std::uintmax_t most = 20;
                const double fine = search_.fine * (search_.high - search_.low);
                const auto bracket = boost::math::tools::toms748_solve(
                    [&](double value) {
                        Look look = std::move(look_at({value}).front());
                        const double off = sound(look) ? off_target(look.row) : at_a;
                        if (sound(look)) found = {value, std::move(look.row), false};
                        return std::isfinite(off) ? off : at_a;
                    },
                    a.value, b.value, at_a, at_b,
                    [&](double low, double high) { return high - low <= fine; }, most);
                const double middle = (bracket.first + bracket.second) / 2;
                Look look = std::move(look_at({middle}).front());
                if (sound(look)) found = {middle, std::move(look.row), false};
            }
            if (all_hold(search_.where, found.row.answers))
                findings_.found.push_back(std::move(found));
        }
    }

    void find_nearest() {
        double best = -std::numeric_limits<double>::infinity();
        for (const Look& look : looked_) {
            if (!sound(look)) continue;
            double worst = 0;
            if (search_.target) {
                const double off = off_target(look.row);
                worst = std::isfinite(off) ? -std::abs(off) : -std::numeric_limits<double>::max();
            } else {
                for (const Condition& condition : search_.where)
                    worst = std::min(worst, margin(condition, look.row.answers));
            }
            if (worst <= best) continue;
            best = worst;
            findings_.nearest = Found{look.value, look.row, false};
        }
    }

    const Search& search_;
    const RowsOf& rows_of_;
    std::vector<Look> looked_;
    Findings findings_;
};

}  // namespace

Findings find_value(const Search& search, const RowsOf& rows_of) {
    return Searching(search, rows_of).run();
}

}  // namespace drawwell
