#include "cli/read/value_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/clock_time.h"
#include "cli/read/layer_text.h"
#include "cli/read/nearest.h"
#include "cli/read/number_text.h"
#include "cli/read/visible_text.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

std::string example(double number, Quantity quantity) {
    const std::string units = accepted_units(quantity);
    return fmt::format("{} {}", number, units.substr(0, units.find(',')));
}

[[noreturn]] void refuse_form(Quantity quantity) {
    const std::string units = accepted_units(quantity);
    throw InputError(units.empty() ? "here stands a plain number"
                                   : fmt::format("here stands one {} as a text with its unit: {}",
                                                 quantity_name(quantity), units));
}

std::string one_of(const RawValue& raw, const std::vector<std::string>& known,
                   std::string_view what) {
    if (raw.form != RawValue::Form::text)
        throw InputError(fmt::format("here stands {} {}", what, fmt::join(known, ", ")));
    if (std::find(known.begin(), known.end(), raw.text) != known.end()) return raw.text;
    refuse_unknown(raw.text, known, what);
}

}  // namespace

Value ValueReader::read(const RawValue& raw) const {
    switch (key_.kind) {
        case Kind::quantity:
            return in_range(quantity(raw, key_.quantity), key_.quantity);
        case Kind::count:
            return count(raw);
        case Kind::text:
            return text(raw, "a text");
        case Kind::choice:
            return one_of(raw, choices(), "one of");
        case Kind::material:
            return one_of(raw, names_of(library_.materials), "a material:");
        case Kind::wood:
            return one_of(raw, names_of(library_.woods), "a kind of wood:");
        case Kind::clock:
            return parse_clock(text(raw, "a time of day such as 19:30"));
        case Kind::steps:
            return Steps(row_value(raw));
        default:
            return Table(row_value(raw));
    }
}

double ValueReader::row_time(const RawValue& raw) const {
    if (raw.form != RawValue::Form::text || !is_clock_text(raw.text))
        return quantity(raw, Quantity::time);
    const double clock = parse_clock(raw.text);
    if (!lit_at_)
        throw InputError(
            "a time by the clock needs burn.lit_at, the time of lighting; or write the time after "
            "it: \"8 min\"");
    return after_lighting(clock, *lit_at_);
}

double ValueReader::row_value(const RawValue& raw) const {
    if (!key_.words.empty() && raw.form == RawValue::Form::text) {
        for (const NumberWord& word : key_.words)
            if (word.name == raw.text) return word.value;
        std::string_view ahead = raw.text;
        skip_blanks(ahead);
        if (!ahead.empty() && std::isalpha(static_cast<unsigned char>(ahead.front())))
            refuse_word(raw);
    }
    return in_range(quantity(raw, key_.quantity), key_.quantity);
}

double ValueReader::item_time(const RawValue& raw) const {
    return in_range(row_time(raw), Quantity::time);
}

std::string ValueReader::item_name(const RawValue& raw) const {
    return text(raw, "a name");
}

BuildUp ValueReader::item_layers(const RawValue& raw) const {
    return parse_layers(text(raw, "a layer as \"25 mm aes_board\", or the name of a build-up,"),
                        library_);
}

std::string ValueReader::text(const RawValue& raw, std::string_view what) const {
    if (raw.form != RawValue::Form::text)
        throw InputError(fmt::format("here stands {} in quotes", what));
    if (const std::string unseen = unseen_in(raw.text); !unseen.empty())
        throw InputError(fmt::format("a text can't hold the control character {}", unseen));
    return raw.text;
}

double ValueReader::quantity(const RawValue& raw, Quantity quantity) const {
    if (raw.form == RawValue::Form::text) return parse_quantity(raw.text, quantity);
    if (raw.form != RawValue::Form::number) refuse_form(quantity);
    if (!std::isfinite(raw.number)) throw InputError("the number must be finite");
    if (quantity == Quantity::number || quantity == Quantity::share) return raw.number;
    throw InputError(fmt::format("the unit is missing: write a text such as \"{}\" ({})",
                                 example(raw.number, quantity), accepted_units(quantity)));
}

void ValueReader::refuse_word(const RawValue& raw) const {
    std::vector<std::string> words;
    for (const NumberWord& word : key_.words) words.emplace_back(word.name);
    throw InputError(fmt::format("unknown word \"{}\": here stands a {} such as \"{}\", or {}{}",
                                 raw.text, quantity_name(key_.quantity),
                                 show_quantity(0.5, key_.quantity), fmt::join(words, ", "),
                                 did_you_mean(raw.text, words)));
}

double ValueReader::in_range(double value, Quantity quantity) const {
    if (value >= key_.least && value <= key_.most) return value;
    throw InputError(fmt::format(
        "{}{} to {} is allowed", value < 0 && key_.least >= 0 ? "it can't be negative; " : "",
        show_quantity(key_.least, quantity), show_quantity(key_.most, quantity)));
}

double ValueReader::count(const RawValue& raw) const {
    const double value = in_range(quantity(raw, Quantity::number), Quantity::number);
    if (std::floor(value) != value) throw InputError("here stands a whole number");
    return value;
}

std::vector<std::string> ValueReader::choices() const {
    return {key_.choices.begin(), key_.choices.end()};
}

}  // namespace drawwell
