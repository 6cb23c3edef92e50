#pragma once

#include <doctest/doctest.h>

#include <optional>
#include <string_view>
#include <vector>

#include "models/burn.h"
#include "models/components/parts.h"
#include "models/fittings/fittings.h"
#include "tests/models/plain_stove.h"

namespace drawwell::tests {

/// The plain stove with these fitted to it.
template <class Kind>
Stove fitted_stove(const std::vector<Kind>& parts) {
    Stove stove = plain_stove();
    for (const Kind& part : parts) stove.fittings.emplace_back(part);
    return stove;
}

/// What a burn of a stove with one fitting says under a key; fails the test if nothing does.
inline std::optional<double> answer(const BurnOutcome& outcome, std::string_view key) {
    for (const FittingAnswer& each : outcome.summary.fittings)
        if (each.key == key) return each.value;
    FAIL("no such answer");
    return {};
}

/// Its parts laid up to the barrel, then what is fitted.
struct FittedWorkshop : Workshop {
    explicit FittedWorkshop(Stove the_stove) : Workshop(std::move(the_stove)) {
        add_feed(builder);
        add_tunnel(builder);
        add_riser(builder);
        add_plate(builder);
        add_barrel(builder);
        add_fittings(builder);
    }
};

}  // namespace drawwell::tests
