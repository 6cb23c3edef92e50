#include "cli/commands/find_together.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iostream>

#include "cli/commands/find_page.h"
#include "cli/commands/watched_run.h"
#include "cli/read/suggest_key.h"
#include "cli/report/page_text.h"
#include "cli/study/headline.h"
#include "cli/study/shifts.h"
#include "cli/study/single_figure.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

/// Keys that are sought together, the quest's first.
struct Together {
    SeveralSearch search;
    std::vector<std::string> keys;
    std::vector<const Key*> found;
    UnitSystem units = UnitSystem::metric;

    std::string text(std::size_t k, double value) const {
        return show_quantity(value, found[k]->quantity, 12);
    }
    std::string shown(std::size_t k, double value) const {
        return show_setting(value, found[k]->quantity, units);
    }
    void add(const std::string& key, double low, double high, const Stove& stove) {
        if (std::find(keys.begin(), keys.end(), key) != keys.end())
            throw InputError(key + " is named twice among what may change");
        keys.push_back(key);
        found.push_back(&known_key(key, key));
        search.low.push_back(low);
        search.high.push_back(high);
        const std::optional<double> here = figure_of(stove, key);
        search.from.push_back(std::clamp(here ? *here : (low + high) / 2, low, high));
    }
    std::vector<Override> settings(const Point& point) const {
        std::vector<Override> all;
        for (std::size_t k = 0; k < keys.size(); ++k)
            all.push_back({keys[k], text(k, point[k]), ""});
        return all;
    }
    bool at_end(std::size_t k, double value) const {
        const double near = 2 * search.fine * (search.high[k] - search.low[k]);
        return value - search.low[k] < near || search.high[k] - value < near;
    }
};

Together together_of(const Quest& quest, const FindOptions& options, const Stove& stove) {
    Together together;
    SeveralSearch& search = together.search;
    search.where = quest.search.where;
    search.target = quest.search.target;
    search.goal = several_goal(quest.search.goal);
    together.units = options.units;
    together.add(quest.key, quest.search.low, quest.search.high, stove);
    for (const Vary& vary : parse_varies(options.study.varies)) {
        if (!vary.span || !takes_figure(known_key(vary.key, vary.key)))
            throw InputError("--vary " + vary.key + ": find looks within a span, KEY=FROM:TO");
        together.add(vary.key, vary.span->first, vary.span->second, stove);
    }
    return together;
}

void tell_point(const Together& together, const FoundPoint& place, Page& page) {
    for (std::size_t k = 1; k < together.keys.size(); ++k)
        page.row(together.keys[k],
                 together.shown(k, place.point[k]) +
                     (together.at_end(k, place.point[k]) ? ", the end of what was looked at" : ""));
    tell_answers(place.row, together.units, page);
}

/// With a target, how far the answer is from it on another day is told in place of the keys.
void tell_target_shifts(const Together& together, const Beside& beside,
                        const std::vector<Row>& rows, Page& page) {
    const Headline headline =
        in_system(headline_of(together.search.target->answer), together.units);
    std::vector<std::pair<double, std::string>> all;
    for (std::size_t u = 0; u < beside.inputs.size(); ++u) {
        const auto less = rows[2 * u].answers.number(headline.answer),
                   more = rows[2 * u + 1].answers.number(headline.answer);
        if (less && more && *less != *more) all.emplace_back((*more - *less) / 2, beside.inputs[u]);
    }
    std::sort(all.begin(), all.end(),
              [](const auto& a, const auto& b) { return std::abs(a.first) > std::abs(b.first); });
    std::vector<std::pair<std::string, std::string>> told;
    told.reserve(all.size());
    for (const auto& [by, name] : all)
        told.emplace_back(name, fmt::format("{}{} {}", by < 0 ? "" : "+",
                                            show_number(headline.scale * by, headline.decimals + 1),
                                            headline.unit));
    tell_shifts(std::string(headline.heading), told, page);
}

void tell_found(const Together& together, const FoundPoint& found, const Study& study,
                const Library& library, const Compute& compute, Page& page) {
    page.verdict(fmt::format("{} = {}{}", together.keys[0], together.shown(0, found.point[0]),
                             together.at_end(0, found.point[0])
                                 ? ", the end of what was looked at: it may go on beyond"
                                 : ""),
                 true);
    tell_point(together, found, page);
    const Beside beside =
        stoves_beside(study, library, together.search, found.point, together.keys,
                      [&](std::size_t k, double value) { return together.text(k, value); });
    Study at = study;
    for (const Override& set : together.settings(found.point)) at.sets.push_back(set);
    at.variants = beside.variants;
    const std::vector<Row> rows = compute(at);
    if (together.search.target) return tell_target_shifts(together, beside, rows, page);
    if (together.at_end(0, found.point[0])) return;
    std::vector<std::pair<std::string, std::string>> told;
    for (const auto& [by, name] : shifts(together.search, found, beside, rows))
        told.emplace_back(name, show_shift(by, together.found[0]->quantity, together.units));
    tell_shifts("It", told, page);
}

}  // namespace

SeveralSearch::Goal several_goal(Search::Goal goal) {
    switch (goal) {
        case Search::Goal::largest:
            return SeveralSearch::Goal::largest;
        case Search::Goal::target:
            return SeveralSearch::Goal::target;
        case Search::Goal::smallest:
            break;
    }
    return SeveralSearch::Goal::smallest;
}

void find_together(const Quest& quest, const FindOptions& options, const Study& study,
                   const Library& library, const Compute& compute) {
    Study filed = study;
    filed.variants = {Variant{}};
    const Together together = together_of(quest, options, stove_of(filed, 0, library));
    const SeveralFindings findings =
        find_several(together.search, [&](const std::vector<Point>& points) {
            Study at = study;
            at.variants.clear();
            for (const Point& point : points) at.variants.push_back({together.settings(point), {}});
            return compute(at);
        });
    Page page(terminal_with_colour());
    if (findings.found) {
        tell_found(together, *findings.found, study, library, compute, page);
        tell_days(together.settings(findings.found->point), study, options, compute, page);
    } else {
        page.verdict("Nowhere that was looked at.", false);
        if (findings.nearest) {
            page.paragraph(fmt::format("Least far off is {} = {}:", together.keys[0],
                                       together.shown(0, findings.nearest->point[0])));
            tell_point(together, *findings.nearest, page);
            tell_unanswered(together.search.where, together.search.target, findings.nearest->row,
                            page);
        }
    }
    tell_failures(findings.failures, page);
    std::cout << page.text();
}

}  // namespace drawwell
