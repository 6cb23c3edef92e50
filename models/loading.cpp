#include "models/loading.h"

#include "solver/instants.h"

namespace drawwell {
namespace {

constexpr double try_again = 60;  // [s]
constexpr double at_once = 1;     // [s] later than due that nobody would remark on

std::string minutes(double seconds) {
    return std::to_string(static_cast<int>(seconds / 60 + 0.5)) + " min";
}

}  // namespace

double Loading::at_stop(double time, std::span<double> fuel) {
    const auto& all = built_.load_times;
    while (next_ < all.size() && all[next_].time <= time + same_instant)
        waiting_.push_back(all[next_++]);
    std::erase_if(waiting_, [&](const auto& load) { return goes_in(load, time, fuel); });
    return waiting_.empty() ? 0 : time + try_again;
}

bool Loading::goes_in(const BuiltStove::LoadTime& load, double time, std::span<double> fuel) {
    const double value = built_.bed->heating_value(fuel), wood = built_.bed->dry_wood(fuel);
    if (!built_.bed->put_in(load.lot, fuel)) return false;
    put_value_ += built_.bed->heating_value(fuel) - value;
    put_wood_ += built_.bed->dry_wood(fuel) - wood;
    if (time > load.time + at_once)
        remarks_.push_back("load " + built_.bed->lots()[load.lot].name + " due at " +
                           minutes(load.time) + " did not fit and went in at " + minutes(time));
    return true;
}

std::vector<std::string> Loading::remarks() const {
    std::vector<std::string> all = remarks_;
    for (const auto& load : waiting_)
        all.push_back("load " + built_.bed->lots()[load.lot].name + " due at " +
                      minutes(load.time) + " never fitted into the feed");
    return all;
}

}  // namespace drawwell
