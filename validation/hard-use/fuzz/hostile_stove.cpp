#include <fmt/format.h>

#include <array>
#include <stdexcept>

#include "cli/read/keys.h"
#include "cli/read/read_stove.h"
#include "cli/read/resolved_text.h"
#include "cli/read/unit_table.h"
#include "cli/report/sheet/page_svg.h"
#include "cli/report/sheet/stove_sheet.h"
#include "models/build_network.h"
#include "validation/hard-use/fuzz/hostile_input.h"
#include "validation/hard-use/fuzz/samples.h"
#include "validation/hard-use/fuzz/text_mutator.h"

namespace drawwell {
namespace {

constexpr std::string_view set_mark = "#--set ";  // heads a line that stands for an option

std::vector<std::string> stove_texts() {
    std::vector<std::string> texts = texts_in("data/stoves", ".toml");
    for (std::string& text : texts_in("validation/hard-use/fuzz/corpus/stove", ".toml"))
        texts.push_back(std::move(text));
    return texts;
}

/// What the registry of keys, the units and data/ know.
std::vector<std::string> stove_words() {
    std::vector<std::string> words{"up", "round", "8 min", "open", "\"half\"", "[burn]", "[heat]"};
    for (const Key& key : all_keys()) {
        words.push_back(full_key_name(key, "main"));
        words.emplace_back(last_word(key.name));
        words.push_back("[" + table_of(full_key_name(key, "other")) + "]");
        for (const std::string_view choice : key.choices) words.emplace_back(choice);
        for (const NumberWord& word : key.words) words.emplace_back(word.name);
    }
    for (const Unit& unit : all_units()) words.emplace_back(unit.name);
    for (const auto& [name, material] : sample_library().materials) words.push_back(name);
    for (const auto& [name, wood] : sample_library().woods) words.push_back(name);
    for (const auto& [name, wall] : sample_library().build_ups) words.push_back(name);
    return words;
}

template <class List>
const auto& any_of(const List& list, Dice& dice) {
    return list[static_cast<std::size_t>(dice.share() * static_cast<double>(std::size(list)))];
}

/// A number with a unit, mostly one that its key takes, and mostly in its range.
std::string quantity(const Key& key, Dice& dice) {
    std::string number = odd_number(dice);
    if (dice.chance(0.6)) {
        const double least = std::max(key.least, -1e3), most = std::min(key.most, 20.0);
        const double value = dice.chance(0.2)   ? key.least
                             : dice.chance(0.2) ? key.most
                                                : dice.between(least, std::max(most, least));
        if (dice.chance(0.9)) return format_quantity(value, key.quantity);
        number = fmt::format("{}", value);
    }
    std::vector<const Unit*> fitting;
    for (const Unit& unit : all_units())
        if (unit.quantity == key.quantity) fitting.push_back(&unit);
    if (fitting.empty() || dice.chance(0.1)) return number;
    return fmt::format("{} {}", number, any_of(fitting, dice)->name);
}

/// A value for a key as the command line takes it, more or less.
std::string value_for(const Key& key, Dice& dice, const std::vector<std::string>& words) {
    const auto time = [&] { return fmt::format("{:.6g} min", dice.ratio(0.1, 300)); };
    const auto rows = [&](auto&& value) {
        std::string text = "[";
        for (int i = dice.whole(1, 4); i > 0; --i)
            text += fmt::format("[\"{}\", \"{}\"]{}", time(), value(), i > 1 ? ", " : "");
        return text + "]";
    };
    switch (key.kind) {
        case Kind::choice:
            if (!key.choices.empty()) return std::string(any_of(key.choices, dice));
            break;
        case Kind::count:
            return std::to_string(dice.whole(-1, 20));
        case Kind::times:
            return fmt::format("[\"{}\", \"{}\"]", time(), time());
        case Kind::table:
        case Kind::steps:
            if (!key.words.empty() && dice.chance(0.3))
                return std::string(any_of(key.words, dice).name);
            if (dice.chance(0.6)) return rows([&] { return quantity(key, dice); });
            break;
        case Kind::loads:
            return rows([&] { return any_of(words, dice); });
        case Kind::build_up:
            return fmt::format("{:.4g} mm {}", dice.ratio(0.05, 500), any_of(words, dice));
        case Kind::material:
        case Kind::wood:
        case Kind::names:
        case Kind::text:
            return any_of(words, dice);
        case Kind::clock:
            return fmt::format("{}:{}", dice.whole(0, 25), dice.whole(0, 61));
        case Kind::quantity:
            break;
    }
    return quantity(key, dice);
}

class HostileStove : public HostileInput {
  public:
    std::string make(Dice& dice) override {
        std::string text;
        if (dice.chance(0.5))
            text = change_(dice);
        else
            text = any_of(texts_, dice);
        for (int sets = dice.chance(0.6) ? dice.whole(1, 5) : 0; sets > 0; --sets) {
            const Key& key = any_of(all_keys(), dice);
            static constexpr std::array names{"stack", "level", "main", "first", "kettle",
                                              "other", "side",  "slot", "b.a"};
            std::string line = fmt::format("{}={}", full_key_name(key, any_of(names, dice)),
                                           value_for(key, dice, words_));
            if (dice.chance(0.1)) change_.change(line, dice);
            std::erase(line, '\n');
            text += fmt::format("\n{}{}", set_mark, line);
        }
        return text;
    }

    void read(const std::string& bytes) override {
        std::vector<Override> sets;
        for (std::size_t at = bytes.find(set_mark); at != std::string::npos;
             at = bytes.find(set_mark, at + 1)) {
            const std::size_t from = at + set_mark.size();
            sets.push_back(parse_override(
                std::string_view(bytes).substr(from, bytes.find('\n', from) - from)));
        }
        const FileReader weather = [this](const std::string&) { return weather_; };
        const Library& library = sample_library();
        const Stove stove = read_stove(bytes, "stove.toml", sets, library, weather);
        const std::string resolved = resolved_text(stove);
        const Stove again = read_stove(resolved, "resolved", {}, library);
        if (resolved_text(again) != resolved)
            throw std::logic_error("the resolved text reads as another stove");
        const BuiltStove built = build_network(stove, library);
        if (turn_of(bytes, 8) != 0) return;
        const SheetNote head = read_sheet_note(bytes, "stove.toml", sets, library, weather);
        const auto pages =
            stove_sheet(stove, library,
                        {.paper = paper_a4, .file = "stove.toml", .templates = true, .head = head});
        if (pages_html(pages, stove.title).empty()) throw std::logic_error("an empty sheet");
    }

  private:
    std::string weather_ = texts_in("validation/hard-use/fuzz/corpus/weather", ".csv").front();
    std::vector<std::string> texts_ = stove_texts(), words_ = stove_words();
    TextMutator change_{texts_, words_};
};

}  // namespace

std::unique_ptr<HostileInput> hostile_stove() {
    return std::make_unique<HostileStove>();
}

}  // namespace drawwell
