#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/read/keys.h"
#include "cli/read/raw_value.h"
#include "models/library.h"

namespace drawwell {

/// Reads values of one key, each refusal an InputError with its reason. Lives no longer than key
/// and library.
class ValueReader {
  public:
    /// `lit_at` [s after midnight]: when the stove is lit by the clock; without it no time after
    /// lighting may be said by the clock.
    ValueReader(const Key& key, const Library& library, std::optional<double> lit_at)
        : key_(key), library_(library), lit_at_(lit_at) {}

    /// A value that stands alone; of a table or steps, the constant.
    Value read(const RawValue& raw) const;

    double row_time(const RawValue& raw) const;   // [s] after lighting, of a row
    double row_value(const RawValue& raw) const;  // SI, of a row
    double item_time(const RawValue& raw) const;  // [s] after lighting, in the key's range
    std::string item_name(const RawValue& raw) const;
    BuildUp item_layers(const RawValue& raw) const;  // one, or those of a named build-up

  private:
    std::string text(const RawValue& raw, std::string_view what) const;
    double quantity(const RawValue& raw, Quantity quantity) const;
    [[noreturn]] void refuse_word(const RawValue& raw) const;
    double in_range(double value, Quantity quantity) const;
    double count(const RawValue& raw) const;
    std::vector<std::string> choices() const;

    const Key& key_;
    const Library& library_;
    std::optional<double> lit_at_;
};

}  // namespace drawwell
