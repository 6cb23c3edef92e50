#include "models/spare_draw.h"

#include <algorithm>

#include "models/exchange.h"
#include "models/stops.h"
#include "solver/instants.h"
#include "solver/settled_walls.h"

namespace drawwell {
namespace {

constexpr double deeper = 1;  // [Pa] by which a known dip makes another not worth refining

constexpr double first_sustained = 300;  // [s] earlier the walls have hardly begun to warm

bool is_due(double time, double every, std::optional<double>& last) {
    if (!(every > 0) || (last && time - *last < every - same_instant)) return false;
    last = time;
    return true;
}

/// What the limits come to; smoke that may trickle counts from where it surely does.
Limit first_to_give(const Spare& spare, bool sustained_known) {
    if (spare.exchange_late < spare.reserve &&
        (!sustained_known || spare.exchange_late < spare.sustained))
        return Limit::exchange;
    if (sustained_known && spare.sustained < spare.reserve) return Limit::lasting_push;
    return Limit::short_push;
}

}  // namespace

SpareDraw::SpareDraw(const Stove& stove, const BuiltStove& built)
    : stove_(stove), built_(built), stops_(stops_of(stove)) {
    const std::vector<JunctionId>& room = built.layout.room_air;
    const auto& passages = built.network.passages;
    const bool ducted = std::any_of(passages.begin(), passages.end(), [&](const Passage& passage) {
        return passage.inlet && built.network.junctions[index(passage.from)].boundary &&
               std::find(room.begin(), room.end(), passage.from) == room.end();
    });
    inlets_differ_ = ducted || !stove.leaks.empty();
}

const Spare& SpareDraw::at(double time, std::span<const double> state, HeatBalance& balance) {
    const bool reserve = is_due(time, stove_.burn.reserve_every, reserve_time_);
    const bool sustained = reserve && time >= first_sustained - same_instant &&
                           is_due(time, stove_.burn.sustained_every, sustained_time_);
    if (reserve) find_reserve(time, state, balance);
    if (sustained) {
        const double present = balance.flow().inlet_flow();
        const ReserveDraw lasting = sustained_push(balance, time, state, present, lasting_flow_);
        spare_.sustained = std::max(lasting.pressure, 0.0);
        lasting_flow_ = lasting.flow;
    }
    if (reserve) {
        spare_.limit = first_to_give(spare_, sustained_time_.has_value());
        std::vector<double> rate(state.size());
        balance.rates(time, state, rate);
    }
    return spare_;
}

void SpareDraw::find_reserve(double time, std::span<const double> state, HeatBalance& balance) {
    const Flow::Conditions conditions = balance.conditions(time, state);
    const double present = balance.flow().inlet_flow();
    const ExchangeOnset onset = exchange_onset(stove_, built_, balance.flow().march());
    const ReserveDraw reserve = balance.flow().reserve(conditions);
    spare_.reserve = spare_.suction = reserve.pressure;
    const auto until = [&](double flow) {
        if (flow <= std::max(reserve.flow, 0.0)) return reserve.pressure;
        if (flow >= present) return 0.0;
        return std::clamp(balance.flow().adverse_pressure(conditions, flow), 0.0, reserve.pressure);
    };
    spare_.exchange_early = until(onset.early);
    // A push that grows brings the flow past the early onset first, whatever lies beyond.
    spare_.exchange_late = std::max(until(onset.late), spare_.exchange_early);
    if (inlets_differ_) {
        const auto share = balance.flow().topology().suction_share(built_.layout.room_air);
        if (share[0] != 0) spare_.suction = balance.flow().reserve(conditions, share).pressure;
    }

    std::rotate(known_.begin(), known_.begin() + 1, known_.end());
    known_[2] = {time, reserve.pressure, {state.begin(), state.end()}};
    known_count_ = std::min(known_count_ + 1, 3);
    refine(balance);
}

void SpareDraw::refine(HeatBalance& balance) {
    const bool dip = known_count_ == 3 && known_[1].reserve < known_[0].reserve &&
                     known_[1].reserve <= known_[2].reserve;
    const bool deepest = std::none_of(refined_.begin(), refined_.end(), [&](const Refined& r) {
        return r.pressure < known_[1].reserve - deeper;
    });
    if (!dip || !deepest) return;
    std::vector<double> between(known_[1].state.size()), rate(between.size());
    for (const double place : {-0.67, -0.33, 0.33, 0.67}) {
        const Known& from = known_[place < 0 ? 0 : 1];
        const Known& to = known_[place < 0 ? 1 : 2];
        if (stop_between(from.time, to.time)) continue;  // the state jumps there
        const double part = place < 0 ? 1 + place : place;
        for (std::size_t i = 0; i < between.size(); ++i)
            between[i] = from.state[i] + part * (to.state[i] - from.state[i]);
        const double at = from.time + part * (to.time - from.time);
        balance.rates(at, between, rate);
        refined_.push_back({at, balance.flow().reserve(balance.conditions(at, between)).pressure});
    }
}

bool SpareDraw::stop_between(double from, double to) const {
    return std::any_of(stops_.begin(), stops_.end(),
                       [&](double stop) { return stop > from && stop <= to; });
}

}  // namespace drawwell
