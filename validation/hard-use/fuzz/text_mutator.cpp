#include "validation/hard-use/fuzz/text_mutator.h"

#include <algorithm>
#include <string_view>
#include <utility>

namespace drawwell {
namespace {

constexpr std::size_t longest = 200'000;  // bytes of a changed text

/// A place in a text, its end included.
std::size_t place(std::size_t size, Dice& dice) {
    return static_cast<std::size_t>(dice.share() * static_cast<double>(size + 1));
}

struct Stretch {
    std::size_t from = 0, length = 0;
};

/// The line at a place, with its end.
Stretch line_at(const std::string& text, std::size_t at) {
    const std::size_t before = at == 0 ? std::string::npos : text.rfind('\n', at - 1);
    const std::size_t from = before == std::string::npos ? 0 : before + 1;
    const std::size_t end = std::min(text.find('\n', at), text.size());
    return {from, std::min(end + 1, text.size()) - from};
}

/// The next run of such characters from a place on, or none.
Stretch run_of(const std::string& text, std::size_t at, std::string_view characters) {
    const std::size_t from = text.find_first_of(characters, at);
    if (from == std::string::npos) return {};
    const std::size_t end = std::min(text.find_first_not_of(characters, from), text.size());
    return {from, end - from};
}

constexpr std::string_view digits = "0123456789.+-";
constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_.°%";

const char* const odd_bytes[] = {"\n",
                                 "\r\n",
                                 "\r",
                                 "\t",
                                 "\"",
                                 "'",
                                 "\\",
                                 "\\u0000",
                                 "[",
                                 "]",
                                 "{",
                                 "}",
                                 "=",
                                 ",",
                                 ";",
                                 "#",
                                 ".",
                                 ":",
                                 "\x1b",
                                 "\x01",
                                 " ",
                                 "\xc2\xb0",
                                 "\xe2\x88\x92",
                                 "\xff",
                                 "\"\"\"",
                                 "[[",
                                 "]]",
                                 "''''",
                                 "%s",
                                 "\xef\xbb\xbf",
                                 "\xed\xa0\x80",
                                 "inf",
                                 "nan",
                                 "true",
                                 "1979-05-27T07:32:00Z",
                                 "0x",
                                 "1_000"};

}  // namespace

std::string odd_number(Dice& dice) {
    static const char* const numbers[] = {"0",
                                          "-0",
                                          "1",
                                          "-1",
                                          "0.5",
                                          "1e-9",
                                          "1e-300",
                                          "1e-320",
                                          "1e300",
                                          "1e308",
                                          "1e309",
                                          "-1e308",
                                          "9999999999",
                                          "1e6",
                                          "100",
                                          "1000",
                                          "1e5",
                                          "nan",
                                          "inf",
                                          "-inf",
                                          "0x10",
                                          "1/0",
                                          "7 1/8",
                                          "0 0/1",
                                          "1e",
                                          "+",
                                          "1,5",
                                          "1.",
                                          ".5",
                                          "--1",
                                          "2147483648",
                                          "-2147483649",
                                          "4294967296",
                                          "18446744073709551616",
                                          "9223372036854775808"};
    if (dice.chance(0.5)) return dice.one_of(numbers);
    return std::to_string(dice.ratio(1e-6, 1e7) * (dice.chance(0.1) ? -1 : 1));
}

TextMutator::TextMutator(std::vector<std::string> corpus, std::vector<std::string> words)
    : corpus_(std::move(corpus)), words_(std::move(words)) {}

const std::string& TextMutator::any_of(const std::vector<std::string>& texts, Dice& dice) const {
    return texts[static_cast<std::size_t>(dice.share() * static_cast<double>(texts.size()))];
}

std::string TextMutator::operator()(Dice& dice) const {
    std::string text = any_of(corpus_, dice);
    do change(text, dice);
    while (dice.chance(0.5));
    return text;
}

void TextMutator::change(std::string& text, Dice& dice) const {
    const std::size_t at = place(text.size(), dice);
    switch (dice.whole(0, 12)) {
        case 0:  // a byte
            if (at < text.size()) text[at] = static_cast<char>(dice.whole(0, 255));
            break;
        case 1:
            text.insert(at, dice.one_of(odd_bytes));
            break;
        case 2:
        case 3: {
            const Stretch number = run_of(text, at, digits);
            if (number.length > 0) text.replace(number.from, number.length, odd_number(dice));
            break;
        }
        case 4:
        case 5: {
            const Stretch word = run_of(text, at, letters);
            if (word.length > 0) text.replace(word.from, word.length, any_of(words_, dice));
            break;
        }
        case 6:
            text.insert(at, any_of(words_, dice));
            break;
        case 7:  // a stretch left out
            text.erase(at, static_cast<std::size_t>(dice.whole(1, dice.chance(0.3) ? 300 : 8)));
            break;
        case 8: {  // a line again, somewhere
            const Stretch line = line_at(text, at);
            const std::string copy = text.substr(line.from, line.length);
            text.insert(line_at(text, place(text.size(), dice)).from, copy);
            break;
        }
        case 9: {  // a line left out
            const Stretch line = line_at(text, at);
            text.erase(line.from, line.length);
            break;
        }
        case 10: {  // the end of another text
            const std::string& other = any_of(corpus_, dice);
            text = text.substr(0, line_at(text, at).from) +
                   other.substr(line_at(other, place(other.size(), dice)).from);
            break;
        }
        case 11:
            text.resize(at);
            break;
        default: {  // the same over and over
            const std::string part =
                dice.chance(0.5) ? std::string(dice.one_of(odd_bytes))
                                 : text.substr(at, static_cast<std::size_t>(dice.whole(1, 40)));
            const int times = dice.whole(2, dice.chance(0.1) ? 3000 : 40);
            std::string repeated;
            for (int i = 0; i < times && repeated.size() < longest; ++i) repeated += part;
            text.insert(at, repeated);
        }
    }
    if (text.size() > longest) text.resize(longest);
}

}  // namespace drawwell
