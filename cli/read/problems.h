#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/read/raw_value.h"

namespace drawwell {

/// What is wrong with a stove file, collected so that a person mends it all in one go.
class Problems {
  public:
    /// `file:line:column: key = value: reason`, or the override as typed, `--set key=value:
    /// reason`.
    void add(const Entry& entry, const std::string& reason);
    /// The same at a place inside the entry's value, if that has one.
    void add(const Entry& entry, const Place& place, const std::string& reason);
    /// A line about something that the file does not set.
    void add(const Place& place, const std::string& text);

    bool empty() const { return problems_.empty(); }
    /// Throws an InputError with one line per problem, command line first, then down the file.
    [[noreturn]] void raise(std::string_view file_name);

  private:
    struct Problem {
        Place place;
        std::string text;
    };
    std::vector<Problem> problems_;
};

}  // namespace drawwell
