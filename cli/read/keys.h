#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "cli/read/stove_draft.h"
#include "cli/read/units.h"

namespace drawwell {

/// What a key's value looks like.
enum class Kind {
    quantity,  // "180 mm"
    count,     // 3
    text,      // "kitchen stove"
    choice,    // one of the key's choices
    material,  // a name of data/materials.toml
    wood,      // a name of data/woods.toml
    times,     // "8 min" or ["8 min", "16 min"]
    names,     // ["level", "stack"]
    build_up,  // ["25 mm aes_board", "1 mm stainless_304"] or "board", from the gas outwards
    table,     // "3 kW" or [["0 min", "3 kW"], ["1 h", "2 kW"]], linear between the rows
    steps,     // "50 %" or [["0 min", "open"], ["50 min", "50 %"]], each held until the next
    loads,     // [["8 min", "first"], ["16 min", "main"]]
    clock,     // "19:30"
};

/// A value of a key, understood: SI, times and thicknesses too.
using Value = std::variant<double, std::string, std::vector<double>, std::vector<std::string>,
                           BuildUp, Table, Steps, std::vector<LoadTime>>;

/// Where in a draft a key's value lives; nothing if the part is absent.
using Field = std::variant<std::monostate, double*, std::optional<double>*, int*, bool*,
                           KindlingPlace*, LeakPlace*, Standing*, std::string*,
                           std::vector<double>*, std::vector<std::string>*, BuildUp*, Table*,
                           std::optional<Table>*, Steps*, std::vector<LoadTime>*>;

/// A word that stands for a number: `half`.
struct NumberWord {
    std::string_view name;
    double value = 0;  // SI
};

/// One thing that a stove file can say. `--set`, `list keys`, the resolved text and whatever
/// varies, follows or fits a stove go through the same list.
struct Key {
    std::string_view name;  // `riser.top`; `flue.NAME.length` stands for any name
    Kind kind = Kind::quantity;
    Quantity quantity = Quantity::number;  // of the value, of a table's values
    bool required = false;                 // once its part is there
    /// What stands if the file is silent: a value as text, or in words if `derive` gives it; a text
    /// that begins with "none" leaves the value absent.
    std::string_view fallback = {};
    std::optional<Value> (*derive)(const StoveDraft& draft, std::string_view name) = nullptr;
    bool practice = false;         // the default is common practice, no source
    double least = 0, most = 1e9;  // SI, both allowed
    std::vector<std::string_view> choices = {};
    std::vector<NumberWord> words = {};  // of steps, in place of a number
    std::string_view help = {};          // in the trade's words, with the engineering term
    /// The value's home in a draft; `create` makes the part if it is absent.
    Field (*field)(StoveDraft& draft, std::string_view name, bool create) = nullptr;
};

/// Every key, part by part in the order the gas meets them.
std::span<const Key> all_keys();

/// A key and, if it belongs to a named part, that part's name.
struct FoundKey {
    const Key* key = nullptr;
    std::string name;
};

/// The key behind `flue.stack.length`; key is null if there is none.
FoundKey find_key(std::string_view full_name);

/// `flue.NAME.length` with a name in it.
std::string full_key_name(const Key& key, std::string_view name);

/// `flue.stack` of `flue.stack.length`, `length` of it.
std::string table_of(std::string_view full_name);
std::string_view last_word(std::string_view full_name);

/// Whether some key stands below this table: `flue`, `flue.stack`.
bool is_table_of_keys(std::string_view table);

/// The keys of a draft's parts as they stand: each key with each name its part occurs under.
std::vector<FoundKey> keys_in(StoveDraft& draft);

/// Puts a value where the key says, making the part if need be.
void set_value(StoveDraft& draft, const FoundKey& key, const Value& value);

/// The value a draft has there; nothing if the part, or an optional value, is absent.
std::optional<Value> get_value(StoveDraft& draft, const FoundKey& key);

/// The same from a stove, by full name; nothing also for an unknown key or what a stove does not
/// keep.
std::optional<Value> get_value(const Stove& stove, std::string_view full_name);

/// A value as it stands in a file: `"180 mm"`, `3`, `["25 mm aes_board"]`.
std::string value_text(const Key& key, const Value& value);

}  // namespace drawwell
