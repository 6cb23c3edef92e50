#include "cli/study/input_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <span>
#include <utility>

#include "cli/read/keys.h"

namespace drawwell {
namespace {

using Words = std::pair<std::string_view, std::string_view>;

constexpr std::array bed_words{
    Words{"surface_rate", "how fast a lit face of wood burns"},
    Words{"flame_feedback", "how much the wood's own flame heats it"},
    Words{"flux_scale", "how much heat it takes to make wood burn faster"},
    Words{"largest_rate", "how fast wood can burn at most"},
    Words{"ignition_flux", "how much heat lights wood"},
    Words{"response_time", "how soon wood burns faster when it gets hotter"},
    Words{"wood_absorptivity", "how much of the heat that shines on wood it takes in"},
    Words{"water_to_wood_heat", "how much wet wood slows the fire"},
    Words{"hand_lit_for", "how long paper and match burn under the kindling"},
    Words{"lighting_embers", "how many embers light new wood"},
    Words{"char_yield", "how much of the wood becomes embers"},
    Words{"char_kinetic_rate", "how eagerly embers take up oxygen"},
    Words{"char_transfer_rate", "how fast air reaches the embers"},
    Words{"char_area", "how much face embers turn to the air"},
    Words{"char_wait", "how long embers of a burn-rate table burn"},
    Words{"char_to_co", "how much of the embers leaves as carbon monoxide"},
    Words{"flame_length_factor", "how long the flames are"},
    Words{"flame_temperature", "how hot the flame is"},
    Words{"flame_absorption", "how sooty, hence how radiant, the flames are"},
    Words{"radiant_fraction", "how much of the heat flames radiate"},
    Words{"ember_temperature", "how hot embers are"},
    Words{"ember_view", "how much of the embers the wood sees"},
    Words{"full_ember_bed", "how many embers fill the hearth"},
    Words{"ash_density", "how loosely ash lies"},
    Words{"freezing_temperature", "how cold gas must get to stop burning"},
    Words{"ember_emissivity", "how much embers radiate"},
};

constexpr std::array day_words{
    Words{"outdoor", "how warm it is outdoors"},
    Words{"pressure", "the day's air pressure"},
    Words{"wood_moisture", "how damp the wood is"},
};

std::string_view find_words(std::span<const Words> all, std::string_view name) {
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const Words& words) { return words.first == name; });
    return found == all.end() ? std::string_view() : found->second;
}

}  // namespace

std::string input_in_words(std::string_view name) {
    if (const Key* key = find_key(name).key)
        return std::string(key->help.substr(0, key->help.find_first_of(";:")));
    const std::size_t dot = name.find('.');
    const std::string_view of = name.substr(0, dot);
    const std::string_view what = dot == std::string_view::npos ? "" : name.substr(dot + 1);
    std::string_view words;
    if (of == "fuel_bed") words = find_words(bed_words, what);
    if (of == "day") words = find_words(day_words, what);
    if (!words.empty()) return std::string(words);
    if (what == "conductivity") return fmt::format("how well {} leads heat", of);
    if (what == "emissivity") return fmt::format("how much {} radiates", of);
    return std::string(name);
}

}  // namespace drawwell
