#include "models/fire/table_fire.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "models/fire/embers.h"

namespace drawwell {

BurnRateFire::BurnRateFire(Shape shape, std::shared_ptr<const GasModel> model)
    : shape_(std::move(shape)), model_(std::move(model)) {}

double BurnRateFire::char_rate(const View& view, const Arriving& air) const {
    return limited_by_oxygen(std::max(view.fuel[1], 0.0) / shape_.constants.char_wait.value,
                             air.species[o2], oxygen_per_char(shape_.constants));
}

Emission BurnRateFire::emission(std::size_t, const View& view, const Arriving& air) const {
    const double rate = shape_.dry_rate(view.time);
    const Vapours given = vapours(shape_.fuel, shape_.moisture_dry_basis, *model_);
    const double burning = char_rate(view, air);
    const Composition gained = model_->char_burning(shape_.constants.char_to_co.value);
    Emission out;
    for (std::size_t s = 0; s < species_count; ++s)
        out.species[s] = rate * given.species[s] + burning * gained[s];
    out.enthalpy_flow = rate * given.enthalpy;
    out.flame = flame_of(air, out.species, shape_.width, shape_.constants.flame_length_factor.value,
                         burning * carbon_heating_value(), *model_);
    return out;
}

void BurnRateFire::rates(const View& view, std::span<const Arriving> arrived,
                         std::span<const GasCell>, std::span<double> rate,
                         std::span<double>) const {
    rate[0] = shape_.dry_rate(view.time);
    rate[1] = shape_.fuel.char_yield * rate[0] - char_rate(view, arrived[0]);
}

double BurnRateFire::enthalpy(std::span<const double> fuel) const {
    return -fuel[0] * vapours(shape_.fuel, shape_.moisture_dry_basis, *model_).enthalpy;
}

std::array<double, 4> BurnRateFire::elements(std::span<const double> fuel) const {
    auto sum = elements_of_wood(shape_.fuel, shape_.moisture_dry_basis);
    for (double& element : sum) element *= -fuel[0];
    sum[0] += fuel[1];
    return sum;
}

void BurnRateFire::rate_slopes(const View& view, std::span<const Arriving> arrived,
                               std::span<double> slope) const {
    slope[0] = 0;
    slope[1] = -oxygen_limit_slope(std::max(view.fuel[1], 0.0) / shape_.constants.char_wait.value,
                                   arrived[0].species[o2], oxygen_per_char(shape_.constants)) /
               shape_.constants.char_wait.value;
}

double BurnRateFire::heating_value(std::span<const double> fuel) const {
    return -fuel[0] * shape_.fuel.wood.higher_heating_value + fuel[1] * carbon_heating_value();
}

HeatSource::HeatSource(Table power) : power_(std::move(power)) {}

Emission HeatSource::emission(std::size_t, const View& view, const Arriving& air) const {
    Emission out;
    out.enthalpy_flow = power_(view.time);
    out.flame = air.gas.flame;
    return out;
}

void HeatSource::rates(const View& view, std::span<const Arriving>, std::span<const GasCell>,
                       std::span<double> rate, std::span<double>) const {
    rate[0] = power_(view.time);
}

}  // namespace drawwell
