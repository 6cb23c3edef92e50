#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "cli/read/overrides.h"

namespace drawwell {

/// A key that takes several values in a study, as `--set` would say each of them.
struct Vary {
    std::string key;
    std::vector<std::string> values;
    std::optional<std::pair<double, double>> span;  // SI; of a range without steps, to be sampled
};

/// Reads `riser.top=500mm:900mm:50mm` (from, to, step), `riser.top=500mm:900mm` (a span to sample),
/// or a list: `riser.lining=board,bricks`, with semicolons where values hold commas themselves.
/// InputError: no such key, no range of it, no end.
Vary parse_vary(std::string_view text);

/// Reads what stands behind the "=" of those, for a key; `typed`: the option, for messages.
Vary parse_values(const std::string& key, std::string_view values, std::string_view typed);

/// Reads several. InputError: also where a key comes twice.
std::vector<Vary> parse_varies(const std::vector<std::string>& texts);

/// One stove of a study: what is set in it besides what its file says, and how many standard
/// deviations off what is uncertain is taken (`uncertain_inputs`, by name).
struct Variant {
    std::vector<Override> settings;
    std::vector<std::pair<std::string, double>> off = {};
};

/// Every combination of the values, the last key moving fastest; one variant without settings if
/// nothing varies. InputError: a span without steps, or more than a million.
std::vector<Variant> grid_of(const std::vector<Vary>& varies);

/// A Sobol sample over the spans, `count` variants: the i-th depends on seed and i alone, by a
/// digital shift of the sequence. Keys with values take them in turn. InputError: nothing varies.
std::vector<Variant> sample_of(const std::vector<Vary>& varies, std::size_t count,
                               std::uint64_t seed);

}  // namespace drawwell
