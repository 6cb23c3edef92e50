#define DOCTEST_CONFIG_IMPLEMENT_WITH_MAIN
#include <doctest/doctest.h>

#include <cfenv>

namespace {

// The first NaN, division by zero or overflow stops the test that made it.
const int traps = feenableexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW);

}  // namespace

// HDF5 1.10 does not free all it took when it gives up on a damaged file; that is not ours to mend.
extern "C" const char* __lsan_default_suppressions();   // NOLINT: the sanitizer's own name
extern "C" const char* __lsan_default_suppressions() {  // NOLINT
    return "leak:libhdf5";
}
