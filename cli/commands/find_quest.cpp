#include "cli/commands/find_quest.h"

#include <algorithm>
#include <tuple>

#include "cli/read/suggest_key.h"
#include "cli/study/single_figure.h"
#include "cli/study/vary.h"
#include "solver/errors.h"

namespace drawwell {

void set_span(const FindOptions& options, const Stove& stove, Quest& quest) {
    if (!options.between.empty()) {
        const std::string typed = "--between " + options.between;
        const Vary span = parse_values(quest.key, options.between, typed);
        if (!span.span) throw InputError(typed + ": write FROM:TO");
        std::tie(quest.search.low, quest.search.high) = *span.span;
    } else {
        const std::optional<double> here = figure_of(stove, quest.key);
        if (!here || !(*here > 0) || quest.found->quantity == Quantity::temperature)
            throw InputError(quest.key + " has no figure to begin from: say --between FROM:TO");
        quest.search.low = std::max(*here / 2, quest.found->least);
        quest.search.high = std::min(*here * 2, quest.found->most);
        if (!(quest.search.low < quest.search.high))
            throw InputError(quest.key + " has no span to look in: say --between FROM:TO");
    }
}

Quest quest_of(const FindOptions& options) {
    Quest quest;
    const int goals = (options.smallest.empty() ? 0 : 1) + (options.largest.empty() ? 0 : 1) +
                      (options.target.empty() ? 0 : 1);
    if (goals != 1) throw InputError("say one of --smallest, --largest and --target");
    if (!options.target.empty()) {
        quest.search.goal = Search::Goal::target;
        quest.search.target = parse_condition(options.target);
        if (quest.search.target->relation != Condition::Relation::equal)
            throw InputError("--target " + options.target + ": write ANSWER=NUMBER");
        if (options.by.empty()) throw InputError("--target needs --by KEY: what may be changed");
        quest.key = options.by;
    } else {
        const bool smallest = !options.smallest.empty();
        quest.search.goal = smallest ? Search::Goal::smallest : Search::Goal::largest;
        quest.key = smallest ? options.smallest : options.largest;
        if (options.where.empty())
            throw InputError("say what must hold: --where 'reserve_draw_min_pa >= 3'");
    }
    for (const std::string& text : options.where)
        quest.search.where.push_back(parse_condition(text));
    quest.found = &known_key(quest.key, quest.key);
    quest.units = options.units;
    if (!takes_figure(*quest.found))
        throw InputError(quest.key + " is no figure that could be sought");
    return quest;
}

}  // namespace drawwell
