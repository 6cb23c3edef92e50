#include "models/laws/heating_value.h"

namespace drawwell {

double wood_heating_value(const WoodAnalysis& dry) {
    return 34.91e6 * dry.carbon + 117.83e6 * dry.hydrogen - 10.34e6 * dry.oxygen -
           1.51e6 * dry.nitrogen - 2.11e6 * dry.ash;
}

}  // namespace drawwell
