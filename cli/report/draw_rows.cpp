#include "cli/report/draw_rows.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string_view>
#include <utility>

#include "cli/report/draw_answers.h"
#include "cli/report/nice_steps.h"

namespace drawwell {
namespace {

constexpr int even_rows = 20;
constexpr double same_flow = 5e-6;  // [kg/s] what looks alike on the page

class Rows {
  public:
    void mark(double flow, std::string_view word) {
        if (!std::isfinite(flow)) return;
        DrawRow& row = at(flow);
        row.marks += (row.marks.empty() ? "" : ", ") + std::string(word);
    }
    /// Puts what is known exactly into the place of what lies between two points.
    void set(std::optional<double> DrawRow::*curve, double flow, double push) {
        if (std::isfinite(flow)) at(flow).*curve = push;
    }
    /// A row without marks, unless one is near.
    void fill(double flow, double step) {
        const bool near = std::any_of(rows_.begin(), rows_.end(), [&](const DrawRow& row) {
            return std::abs(row.flow - flow) < 0.4 * step;
        });
        if (!near) rows_.push_back({.flow = flow, .held = {}, .following = {}, .marks = {}});
    }
    std::vector<DrawRow> sorted() && {
        std::sort(rows_.begin(), rows_.end(),
                  [](const DrawRow& a, const DrawRow& b) { return a.flow < b.flow; });
        return std::move(rows_);
    }

  private:
    DrawRow& at(double flow) {
        const auto found = std::find_if(rows_.begin(), rows_.end(), [flow](const DrawRow& row) {
            return std::abs(row.flow - flow) <= same_flow;
        });
        if (found != rows_.end()) return *found;
        return rows_.emplace_back(DrawRow{.flow = flow, .held = {}, .following = {}, .marks = {}});
    }

    std::vector<DrawRow> rows_;
};

void mark_curve(Rows& rows, const DrawCurve& curve, std::optional<double> DrawRow::*place,
                const std::string& whose) {
    for (const DrawState& state : curve.states) {
        rows.mark(state.flow, (state.stable ? "stays" : "does not stay") + whose);
        rows.set(place, state.flow, 0);
    }
    if (curve.fold) {
        rows.mark(curve.fold->flow, "tips over" + whose);
        rows.set(place, curve.fold->flow, curve.fold->pressure);
    }
    if (curve.spill) rows.set(place, curve.spill->flow, curve.spill->pressure);
}

}  // namespace

std::vector<DrawRow> draw_rows(const DrawStudy& study) {
    double least = std::numeric_limits<double>::infinity();
    double most = -least;
    for (const DrawCurve* curve : {&study.held, &study.following})
        for (const DrawPoint& point : curve->points) {
            if (!std::isfinite(point.flow)) continue;
            least = std::min(least, point.flow);
            most = std::max(most, point.flow);
        }
    Rows rows;
    rows.mark(study.flow, "now");
    mark_curve(rows, study.held, &DrawRow::held, "");
    mark_curve(rows, study.following, &DrawRow::following, " (follow)");
    for (const DrawCurve* curve : {&study.held, &study.following})
        if (curve->spill) {
            rows.mark(curve->spill->flow, "feed takes in nothing");
            break;
        }
    if (study.exchange_early) rows.mark(*study.exchange_early, "smoke may trickle out");
    if (study.exchange_late) rows.mark(*study.exchange_late, "smoke trickles out");
    if (least < most) {
        const NiceSteps steps = nice_steps(least, most, even_rows);
        for (int i = 0; i < steps.count; ++i) rows.fill(steps.at(i), steps.step);
    }
    std::vector<DrawRow> sorted = std::move(rows).sorted();
    for (DrawRow& row : sorted) {
        if (!row.held) row.held = push_at(study.held, row.flow);
        if (!row.following) row.following = push_at(study.following, row.flow);
    }
    std::erase_if(sorted, [](const DrawRow& row) {
        return row.marks.empty() && !row.held && !row.following;
    });
    return sorted;
}

}  // namespace drawwell
