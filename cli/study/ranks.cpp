#include "cli/study/ranks.h"

#include <sched.h>

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <string_view>
#include <thread>

namespace drawwell {

unsigned OneRank::threads() const {
    cpu_set_t allowed;
    if (sched_getaffinity(0, sizeof allowed, &allowed) == 0)
        return static_cast<unsigned>(std::max(1, CPU_COUNT(&allowed)));
    return std::max(1U, std::thread::hardware_concurrency());
}

void OneRank::skip_rest() {
    counter_ = SIZE_MAX / 2;  // beyond any row; room for those who count on
}

bool speaks_for_all() {
    for (const char* name : {"OMPI_COMM_WORLD_RANK", "PMIX_RANK", "PMI_RANK"})
        if (const char* rank = std::getenv(name)) return std::string_view(rank) == "0";
    return true;
}

}  // namespace drawwell
