#define DOCTEST_CONFIG_IMPLEMENT_WITH_MAIN
#include <doctest/doctest.h>

#include <cfenv>

namespace {

// The first NaN, division by zero or overflow stops the test that made it.
const int traps = feenableexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW);

}  // namespace
