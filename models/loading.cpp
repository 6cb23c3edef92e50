#include "models/loading.h"

namespace drawwell {
namespace {

constexpr double try_again = 60;  // [s]

std::string minutes(double seconds) {
    return std::to_string(static_cast<int>(seconds / 60 + 0.5)) + " min";
}

}  // namespace

double Loading::at_stop(double time, std::span<double> state) {
    if (!built_.bed) return 0;
    const auto fuel = state.subspan(built_.network.solids.size());
    while (next_ < built_.load_times.size() && built_.load_times[next_].time <= time + 1e-6)
        waiting_.push_back(built_.load_times[next_++]);
    while (!waiting_.empty()) {
        const auto load = waiting_.front();
        const double before_value = built_.bed->heating_value(fuel);
        const double before_wood = built_.bed->dry_wood(fuel);
        if (!built_.bed->put_in(load.lot, fuel)) break;
        put_value_ += built_.bed->heating_value(fuel) - before_value;
        put_wood_ += built_.bed->dry_wood(fuel) - before_wood;
        if (time > load.time + 1)
            remarks_.push_back("load " + built_.bed->lots()[load.lot].name + " due at " +
                               minutes(load.time) + " did not fit and went in at " + minutes(time));
        waiting_.erase(waiting_.begin());
    }
    return waiting_.empty() ? 0 : time + try_again;
}

std::vector<std::string> Loading::remarks() const {
    std::vector<std::string> all = remarks_;
    for (const auto& load : waiting_)
        all.push_back("load " + built_.bed->lots()[load.lot].name + " due at " +
                      minutes(load.time) + " never fitted into the feed");
    return all;
}

}  // namespace drawwell
