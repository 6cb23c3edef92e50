#pragma once

#include <algorithm>

#include "cli/read/keys.h"

namespace drawwell::fields {

template <class Part, class T>
Part owner_of(T Part::*);

/// A member of one of the stove's parts, which may be absent.
template <auto part, auto member>
Field of(StoveDraft& draft, std::string_view, bool create) {
    auto& held = draft.stove.*part;
    if constexpr (requires { held.has_value(); }) {
        if (!held && !create) return {};
        if (!held) held.emplace();
        return &((*held).*member);
    } else {
        return &(held.*member);
    }
}

/// A member of the stove itself.
template <auto member>
Field own(StoveDraft& draft, std::string_view, bool) {
    return &(draft.stove.*member);
}

inline std::vector<FlueSection>& parts_of(StoveDraft& draft, const FlueSection*) {
    return draft.stove.flue.sections;
}
inline std::vector<SideAir>& parts_of(StoveDraft& draft, const SideAir*) {
    return draft.stove.side_air;
}
inline std::vector<Leak>& parts_of(StoveDraft& draft, const Leak*) {
    return draft.stove.leaks;
}
inline std::vector<Load>& parts_of(StoveDraft& draft, const Load*) {
    return draft.stove.loads;
}

/// The part of that name, or null.
template <class Part>
Part* named_part(StoveDraft& draft, std::string_view name, bool create) {
    std::vector<Part>& parts = parts_of(draft, static_cast<const Part*>(nullptr));
    const auto found = std::find_if(parts.begin(), parts.end(),
                                    [&](const Part& part) { return part.name == name; });
    if (found != parts.end()) return &*found;
    if (!create) return nullptr;
    parts.emplace_back().name = name;
    return &parts.back();
}

/// A member of a named part.
template <auto member>
Field named(StoveDraft& draft, std::string_view name, bool create) {
    auto* part = named_part<decltype(owner_of(member))>(draft, name, create);
    if (!part) return {};
    return &(part->*member);
}

/// A member of a fitting of that name.
template <auto member>
Field fitted(StoveDraft& draft, std::string_view name, bool create) {
    using Part = decltype(owner_of(member));
    std::vector<Fitting>& fittings = draft.stove.fittings;
    for (Fitting& fitting : fittings)
        if (Part* part = std::get_if<Part>(&fitting); part && part->name == name)
            return &(part->*member);
    if (!create) return {};
    Part& part = std::get<Part>(fittings.emplace_back(Part{}));
    part.name = name;
    return &(part.*member);
}

}  // namespace drawwell::fields

namespace drawwell {

// The keys part by part; each list stands in the file of its name.
std::vector<Key> firebox_keys();
std::vector<Key> riser_keys();
std::vector<Key> pot_keys();
std::vector<Key> griddle_keys();
std::vector<Key> oven_tube_keys();
std::vector<Key> window_keys();
std::vector<Key> grid_keys();
std::vector<Key> air_channel_keys();
std::vector<Key> bell_keys();
std::vector<Key> damp_keys();
std::vector<Key> flue_keys();
std::vector<Key> wood_keys();
std::vector<Key> schedule_keys();
std::vector<Key> site_keys();
std::vector<Key> burn_keys();
std::vector<Key> sheet_keys();

}  // namespace drawwell
