#pragma once

#include <vector>

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
