#include "cli/study/likely.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "cli/report/json_text.h"
#include "cli/report/page_text.h"
#include "cli/report/page_writer.h"
#include "cli/study/answer_names.h"

namespace drawwell {
namespace {

bool says_yes_or_no(std::span<const Row> days, const std::string& name) {
    return std::any_of(days.begin(), days.end(), [&](const Row& day) {
        const Answer* answer = day.answers.find(name);
        return answer && std::holds_alternative<bool>(*answer);
    });
}

Row median_row(std::span<const Row> days) {
    Row median;
    median.done = std::all_of(days.begin(), days.end(), [](const Row& row) { return row.done; });
    const auto sound =
        std::find_if(days.begin(), days.end(), [](const Row& row) { return row.error.empty(); });
    if (sound == days.end()) {
        median.error = days.front().error;
        return median;
    }
    std::vector<std::pair<std::string, Answer>> all;
    for (const std::string& name : answer_names({days.begin(), days.end()})) {
        const LikelyRange range = likely_range(days, name);
        if (says_yes_or_no(days, name)) {
            const std::size_t judged = days.size() - days_unjudged(days);
            all.emplace_back(name, 2 * days_with(days, name) > judged);
            continue;
        }
        all.emplace_back(name, range.days > 0 ? Answer(range.median) : Answer());
        if (range.days == 0) continue;
        all.emplace_back(name + "_low", range.low);
        all.emplace_back(name + "_high", range.high);
    }
    all.emplace_back("draws_on_days", static_cast<double>(days_with(days, "draws")));
    all.emplace_back("unjudged_days", static_cast<double>(days_unjudged(days)));
    all.emplace_back("days", static_cast<double>(days.size()));
    median.answers = Answers(std::move(all));
    return median;
}

}  // namespace

double quantile_of(const std::vector<double>& sorted, double share) {
    const double place = share * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (place - std::floor(place)) * (sorted[above] - sorted[below]);
}

LikelyRange likely_range(std::span<const Row> days, std::string_view answer) {
    std::vector<double> values;
    for (const Row& day : days)
        if (const auto value = day.answers.number(answer)) values.push_back(*value);
    if (values.empty()) return {};
    std::sort(values.begin(), values.end());
    return {quantile_of(values, 0.05), quantile_of(values, 0.5), quantile_of(values, 0.95),
            values.size()};
}

std::size_t days_with(std::span<const Row> days, std::string_view answer) {
    return static_cast<std::size_t>(std::count_if(days.begin(), days.end(), [&](const Row& day) {
        return day.answers.number(answer).value_or(0) > 0;
    }));
}

std::size_t days_unjudged(std::span<const Row> days) {
    return static_cast<std::size_t>(std::count_if(days.begin(), days.end(), [](const Row& day) {
        return day.done && day.error.empty() && !day.answers.number("draws");
    }));
}

std::vector<Row> median_rows(const Study& study, const std::vector<Row>& rows) {
    std::vector<Row> medians;
    for (std::size_t stove = 0; stove < study.stoves(); ++stove)
        medians.push_back(median_row(days_of(study, rows, stove)));
    return medians;
}

std::span<const Row> days_of(const Study& study, const std::vector<Row>& rows, std::size_t stove) {
    return std::span(rows).subspan(stove * study.repeats(), study.repeats());
}

std::string range_text(std::span<const Row> days, const Headline& headline) {
    if (headline.answer == "draws")
        return fmt::format("{}/{}", days_with(days, "draws"), days.size());
    const LikelyRange range = likely_range(days, headline.answer);
    if (range.days == 0) return "";
    const auto text = [&](double value) {
        return show_number(headline.scale * value + headline.offset, headline.decimals);
    };
    return text(range.low) + "-" + text(range.high);
}

std::string likely_page(std::span<const Row> days, bool colour, UnitSystem system) {
    Page page(colour);
    tell_likely(days, page, system);
    return page.text();
}

void tell_likely(std::span<const Row> days, Page& page, UnitSystem system) {
    page.heading("Likely range");
    const std::size_t unjudged = days_unjudged(days);
    page.row("draws",
             fmt::format("on {} of {} days and fires", days_with(days, "draws"), days.size()) +
                 (unjudged > 0 ? fmt::format("; {} burned too short to judge", unjudged) : ""));
    page.row("smoke back", fmt::format("on {} of them", days_with(days, "smoke_back_s")));
    for (const Headline& each : headlines()) {
        const Headline headline = in_system(each, system);
        if (headline.answer == "draws" || headline.answer == "smoke_back_s") continue;
        const LikelyRange range = likely_range(days, headline.answer);
        if (range.days == 0) continue;
        const auto text = [&](double value) {
            return show_number(headline.scale * value + headline.offset, headline.decimals);
        };
        page.row(headline.heading,
                 fmt::format("{} {}, from {} to {} on nine days of ten", text(range.median),
                             headline.unit, text(range.low), text(range.high)));
    }
    const auto failed =
        std::count_if(days.begin(), days.end(), [](const Row& day) { return !day.error.empty(); });
    if (failed > 0) page.row("failed", fmt::format("on {} of them", failed));
}

LikelyRanges likely_ranges(std::span<const Row> days) {
    LikelyRanges all{days.size(), days_with(days, "draws"), days_with(days, "smoke_back_s")};
    for (const std::string& name : answer_names({days.begin(), days.end()}))
        if (const LikelyRange range = likely_range(days, name); range.days > 0)
            all.figures.push_back({name, range.low, range.median, range.high});
    all.unjudged = days_unjudged(days);
    return all;
}

std::string with_likely(const std::string& json, std::span<const Row> days) {
    auto whole = nlohmann::ordered_json::parse(json);
    auto& likely = whole["likely"];
    likely["days"] = days.size();
    likely["draws_on"] = days_with(days, "draws");
    likely["unjudged"] = days_unjudged(days);
    for (const std::string& name : answer_names({days.begin(), days.end()})) {
        const LikelyRange range = likely_range(days, name);
        if (range.days > 0)
            likely[name] = {{"low", range.low}, {"median", range.median}, {"high", range.high}};
    }
    return json_text(whole);
}

}  // namespace drawwell
