#pragma once

#include <string>
#include <vector>

#include "validation/random_stoves/dice.h"

namespace drawwell {

/// A number as nobody means it: the ends of a double, halves and negatives of what is usual, not a
/// number at all.
std::string odd_number(Dice& dice);

/// Changes a text as typing errors, damaged disks and malice do.
class TextMutator {
  public:
    /// Texts to begin from and to splice in; words that mean something in them.
    TextMutator(std::vector<std::string> corpus, std::vector<std::string> words);

    /// A text of the corpus with one or more changes.
    std::string operator()(Dice& dice) const;
    /// One change: bytes, numbers, words, lines, the end cut off, something repeated many times.
    void change(std::string& text, Dice& dice) const;

  private:
    const std::string& any_of(const std::vector<std::string>& texts, Dice& dice) const;

    std::vector<std::string> corpus_, words_;
};

}  // namespace drawwell
