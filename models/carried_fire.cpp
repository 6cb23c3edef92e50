#include "models/carried_fire.h"

#include <iomanip>
#include <sstream>

namespace drawwell {
namespace {

constexpr double worth_telling = 1e-3;  // [kg]

std::string kilograms(double mass) {
    std::ostringstream text;
    text << std::fixed << std::setprecision(mass < 0.1 ? 3 : 2) << mass << " kg";
    return text.str();
}

}  // namespace

bool spare_kindling(Stove& stove, const SavedState& from) {
    if (!stove.kindling || !stove.kindling->by_default || !from.still_burns()) return false;
    stove.kindling.reset();
    return true;
}

std::vector<std::string> carried_fire_remarks(const Stove& stove, const SavedState& from) {
    const double wood = from.wood_left(), embers = from.embers_left();
    std::vector<std::string> remarks;
    const auto say = [&](double mass, const char* what, const char* becomes) {
        if (mass > worth_telling) remarks.push_back(kilograms(mass) + what + becomes);
    };
    const char* of_wood = " of dry wood was left over";
    const char* of_embers = " of embers was left over";
    if (stove.heat_source) {
        say(wood, of_wood, " and is taken out: this burn is of plain heat");
        say(embers, of_embers, " and is taken out: this burn is of plain heat");
    } else if (stove.burn_rate) {
        say(wood, of_wood, " and is taken out: the burn-rate table says what burns");
        say(embers, of_embers, " and burns on");
    } else {
        say(wood, of_wood, " and burns on where it lay, as wood of this burn's mean kind");
        say(embers, of_embers, " and burns on where it lay");
    }
    return remarks;
}

}  // namespace drawwell
