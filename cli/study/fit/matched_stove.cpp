#include "cli/study/fit/matched_stove.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/read/keys.h"
#include "cli/read/raw_value.h"
#include "cli/read/read_stove.h"
#include "cli/report/run_record.h"
#include "models/uncertain_inputs.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

std::vector<std::string> lines_of(std::string_view text) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        lines.emplace_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

/// Where a value ends that begins at `from`: before a remark and the blanks ahead of it; npos where
/// it goes on in the next line.
std::size_t end_of_value(const std::string& line, std::size_t from) {
    int depth = 0;
    char quote = 0;
    std::size_t last = from;
    for (std::size_t i = from; i < line.size(); ++i) {
        const char c = line[i];
        if (quote != 0) {
            if (c == quote) quote = 0;
        } else if (c == '"' || c == '\'') {
            quote = c;
        } else if (c == '[') {
            ++depth;
        } else if (c == ']') {
            --depth;
        } else if (c == '#') {
            break;
        }
        if (c != ' ' && c != '\t' && c != '\r') last = i + 1;
    }
    return depth == 0 && quote == 0 ? last : std::string::npos;
}

/// Puts `key = value` into a text: in the place of what it says, else at the end of its table, else
/// in a new table at the end.
std::string with_key(const std::string& text, const std::string& file_name, const std::string& key,
                     const std::string& value) {
    const RawFile raw = parse_raw(text, file_name);
    std::vector<std::string> lines = lines_of(text);
    const auto entry = std::find_if(raw.entries.begin(), raw.entries.end(),
                                    [&](const Entry& each) { return each.key == key; });
    const std::string table = table_of(key);
    if (entry != raw.entries.end()) {
        std::string& line = lines.at(entry->place.line - 1);
        const std::size_t equals = line.find('=', entry->place.column - 1);
        const std::size_t begin =
            equals == std::string::npos ? equals : line.find_first_not_of(" \t", equals + 1);
        const std::size_t end = begin == std::string::npos ? begin : end_of_value(line, begin);
        if (end == std::string::npos)
            throw InputError(fmt::format("{}:{}: {} goes over several lines: set it by hand to {}",
                                         file_name, entry->place.line, key, value));
        line.replace(begin, end - begin, value);
    } else {
        const auto head =
            std::find_if(raw.tables.begin(), raw.tables.end(), [&](const TableHead& t) {
                return t.name == table && t.place.line > 0 &&
                       lines.at(t.place.line - 1).find('[') < lines.at(t.place.line - 1).find('=');
            });
        const std::string line = fmt::format("{} = {}", last_word(key), value);
        if (head != raw.tables.end()) {
            lines.insert(lines.begin() + static_cast<long>(head->place.line), line);
        } else {
            lines.insert(lines.end(), {"", fmt::format("[{}]", table), line});
        }
    }
    return fmt::format("{}\n", fmt::join(lines, "\n"));
}

std::string without_key(const std::string& text, const std::string& file_name,
                        const std::string& key) {
    const RawFile raw = parse_raw(text, file_name);
    std::vector<std::string> lines = lines_of(text);
    for (const Entry& entry : raw.entries)
        if (entry.key == key) lines.at(entry.place.line - 1).insert(0, "# before the match: ");
    return fmt::format("{}\n", fmt::join(lines, "\n"));
}

/// A key's value, as a file has it.
std::string text_of(const std::string& key, const Value& value) {
    return value_text(*find_key(key).key, value);
}

/// One writing of one stove file.
class StoveWriter {
  public:
    StoveWriter(const StoveText& file, const Library& library) : file_(file), library_(library) {
        out_.text = file.text;
    }

    void set(const std::string& key, const std::string& value) {
        out_.text = with_key(out_.text, file_.name, key, value);
        out_.set.push_back(key);
    }

    void apply(const FitInput& input, double deviations) {
        if (input.sort == FitInput::Sort::clock) return;
        if (input.sort == FitInput::Sort::key) {
            set(input.name,
                drawwell::quoted(show_quantity(input.value(deviations), input.quantity, 4)));
        } else if (input.name.starts_with("day.")) {
            apply_day(input.name, deviations);
        } else {
            out_.unset.push_back(input.name + " " + input.shown(deviations));
        }
    }

    MatchedStove finish(const std::string& log) {
        std::string head = fmt::format("# Matched to {} by drawwell fit", told_name(log));
        if (!out_.set.empty()) head += fmt::format("; set: {}", fmt::join(out_.set, ", "));
        head += ".\n";
        for (const std::string& each : out_.unset)
            head += fmt::format("# Not in this file, which can't say it: {}\n", each);
        out_.text = head + out_.text;
        read_stove(out_.text, "the matched stove", {}, library_, file_.read_file);
        return out_;
    }

  private:
    /// Shifts the day as `uncertain_inputs` has it, and writes down what came of it.
    void apply_day(const std::string& name, double deviations) {
        Stove stove = read_stove(out_.text, file_.name, {}, library_, file_.read_file);
        Library library = library_;
        for (const UncertainInput& input : uncertain_inputs(library_, stove))
            if (input.name == name) input.set(deviations, library, stove);
        const RawFile raw = parse_raw(out_.text, file_.name);
        const auto said = [&](const std::string& key) {
            return std::any_of(raw.entries.begin(), raw.entries.end(),
                               [&](const Entry& each) { return each.key == key; });
        };
        if (name == "day.outdoor") {
            if (said("site.weather"))
                out_.unset.push_back("site.outdoor, which site.weather holds");
            else
                put(stove, "site.outdoor");
        } else if (name == "day.pressure") {
            if (said("site.altitude"))
                out_.text = without_key(out_.text, file_.name, "site.altitude");
            put(stove, "site.pressure");
        } else {
            put(stove, "wood.moisture");
            for (const Load& load : stove.loads)
                if (const std::string key = "load." + load.name + ".moisture"; said(key))
                    put(stove, key);
        }
    }

    void put(const Stove& stove, const std::string& key) {
        if (const std::optional<Value> value = get_value(stove, key))
            set(key, text_of(key, *value));
    }

    const StoveText& file_;
    const Library& library_;
    MatchedStove out_;
};

}  // namespace

MatchedStove matched_stove(const StoveText& file, const std::vector<Override>& overrides,
                           const Library& library, const Match& match, const std::string& log) {
    StoveWriter writer(file, library);
    for (const Override& each : overrides)
        writer.set(each.key,
                   each.value.starts_with('[') ? each.value : drawwell::quoted(each.value));
    for (const MatchedInput& each : match.inputs)
        if (each.told) writer.apply(each.input, each.estimate);
    return writer.finish(log);
}

}  // namespace drawwell
