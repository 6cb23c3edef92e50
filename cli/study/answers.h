#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "models/summary.h"

namespace drawwell {

/// An answer of a burn as a study keeps it; monostate: it never happened.
using Answer = std::variant<std::monostate, bool, double, std::string>;

/// The answers of one burn by the names that JSON knows them by (`plate_centre_max_c`), those of
/// fittings behind their table (`pot.kettle/boils_after_s`). Timings are left out, so that equal
/// stoves have equal answers.
class Answers {
  public:
    Answers() = default;
    explicit Answers(const Summary& summary);
    explicit Answers(std::vector<std::pair<std::string, Answer>> all) : all_(std::move(all)) {}

    const std::vector<std::pair<std::string, Answer>>& all() const { return all_; }
    /// Null: there is no answer of that name.
    const Answer* find(std::string_view name) const;
    /// As a number: true is 1; nothing where it never happened, is a word, or does not exist.
    std::optional<double> number(std::string_view name) const;

  private:
    std::vector<std::pair<std::string, Answer>> all_;
};

}  // namespace drawwell
