#include "cli/read/keys/fields.h"

namespace drawwell {
namespace {

/// Something moved by hand; it has a home only while there is what it moves.
template <auto member, bool (*is_there)(const Stove&)>
Field moved(StoveDraft& draft, std::string_view, bool create) {
    if (!create && !is_there(draft.stove)) return {};
    return &(draft.stove.schedule.*member);
}

bool has_flue(const Stove& stove) {
    return !stove.flue.sections.empty();
}
bool has_bypass(const Stove& stove) {
    return stove.bypass.has_value();
}
bool has_port(const Stove& stove) {
    return stove.port || stove.tunnel;
}
bool has_side_air(const Stove& stove) {
    return !stove.side_air.empty();
}
bool has_feed(const Stove& stove) {
    return stove.feed.has_value();
}
bool has_plate(const Stove& stove) {
    return stove.plate.has_value();
}

Field load_times(StoveDraft& draft, std::string_view, bool) {
    return &draft.load_times;
}

/// What is common to all that is moved: a share, all of it at most.
Key moved_key(std::string_view name, std::string_view fallback, std::vector<NumberWord> words,
              std::string_view help, Field (*field)(StoveDraft&, std::string_view, bool)) {
    return {.name = name,
            .kind = Kind::steps,
            .quantity = Quantity::share,
            .fallback = fallback,
            .most = 1,
            .words = std::move(words),
            .help = help,
            .field = field};
}

}  // namespace

std::vector<Key> schedule_keys() {
    const std::vector<NumberWord> opening{{"open", 1}, {"half", 0.5}, {"shut", 0}};
    const std::vector<NumberWord> cover{{"on", 1}, {"half", 0.5}, {"off", 0}};
    Key port = moved_key("schedule.port", "100 %", {{"open", 1}, {"half", 0.5}},
                         "share of the port left open (an insert), over time",
                         moved<&Schedule::port, has_port>);
    port.least = 0.05;
    return {
        moved_key("schedule.damper", "100 %", opening,
                  "share of the flue that its damper leaves open, over time",
                  moved<&Schedule::damper, has_flue>),
        moved_key("schedule.bypass", "0 %", opening,
                  "share of the bypass that its damper leaves open, over time",
                  moved<&Schedule::bypass, has_bypass>),
        port,
        moved_key("schedule.side_air", "100 %", opening,
                  "share of all side air left open, over time",
                  moved<&Schedule::side_air, has_side_air>),
        moved_key("schedule.feed_cover", "0 %", cover,
                  "share of the feed's mouth that a cover closes, over time",
                  moved<&Schedule::feed_cover, has_feed>),
        moved_key("schedule.plate_cover", "0 %", cover,
                  "share of the cooking plate that a cover lies on, over time",
                  moved<&Schedule::plate_cover, has_plate>),
        {.name = "schedule.load",
         .kind = Kind::loads,
         .quantity = Quantity::time,
         .fallback = "none: by load.NAME.at",
         .most = 864000,
         .help = "loads by name at their times after lighting: [[\"8 min\", \"first\"], [\"16 "
                 "min\", \"main\"]]",
         .field = load_times},
    };
}

}  // namespace drawwell
