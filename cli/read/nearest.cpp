#include "cli/read/nearest.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "solver/errors.h"

namespace drawwell {

std::size_t edit_distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> two_back(b.size() + 1), back(b.size() + 1), row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) back[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = a[i - 1] == b[j - 1] ? 0 : 1;
            row[j] = std::min({back[j] + 1, row[j - 1] + 1, back[j - 1] + change});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = std::min(row[j], two_back[j - 2] + 1);
        }
        std::swap(two_back, back);
        std::swap(back, row);
    }
    return back[b.size()];
}

std::string nearest(std::string_view word, std::span<const std::string> known) {
    const std::string* best = nullptr;
    std::size_t best_distance = std::max<std::size_t>(2, word.size() / 3) + 1;
    for (const std::string& candidate : known) {
        const std::size_t distance = edit_distance(word, candidate);
        // A word of which nothing is left is no misspelling.
        if (distance < best_distance && distance < std::max(word.size(), candidate.size())) {
            best = &candidate;
            best_distance = distance;
        }
    }
    return best ? *best : std::string();
}

std::string did_you_mean(std::string_view word, std::span<const std::string> known) {
    const std::string best = nearest(word, known);
    return best.empty() ? best : "; did you mean \"" + best + "\"?";
}

void refuse_unknown(std::string_view word, std::span<const std::string> known,
                    std::string_view what) {
    const std::string meant = did_you_mean(word, known);
    if (!meant.empty()) throw InputError(fmt::format("unknown name \"{}\"{}", word, meant));
    throw InputError(
        fmt::format("unknown name \"{}\": here stands {} {}", word, what, fmt::join(known, ", ")));
}

}  // namespace drawwell
