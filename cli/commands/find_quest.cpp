#include "cli/commands/find_quest.h"

#include <algorithm>

#include "cli/read/suggest_key.h"
#include "solver/errors.h"

namespace drawwell {

void set_span(const FindOptions& options, const Stove& stove, Quest& quest) {
    const std::size_t colon = options.between.find(':');
    if (!options.between.empty()) {
        if (colon == std::string::npos)
            throw InputError("--between " + options.between + ": write FROM:TO");
        quest.search.low = parse_quantity(options.between.substr(0, colon), quest.found->quantity);
        quest.search.high =
            parse_quantity(options.between.substr(colon + 1), quest.found->quantity);
    } else {
        const std::optional<Value> value = get_value(stove, quest.key);
        const double* here = value ? std::get_if<double>(&*value) : nullptr;
        if (!here || !(*here > 0))
            throw InputError(quest.key + " has no figure to begin from: say --between FROM:TO");
        quest.search.low = std::max(*here / 2, quest.found->least);
        quest.search.high = std::min(*here * 2, quest.found->most);
    }
    if (!(quest.search.low < quest.search.high))
        throw InputError("--between goes from the lower to the higher end");
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
    if (quest.found->kind != Kind::quantity)
        throw InputError(quest.key + " is no figure that could be sought");
    return quest;
}

}  // namespace drawwell
