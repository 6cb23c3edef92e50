#pragma once

#include <array>
#include <string_view>

namespace drawwell {

/// A figure with its spread: one standard deviation of what it may well be.
struct Uncertain {
    double value = 0;
    double spread = 0;  // relative, one standard deviation
};

/// The uncertain constants of the fuel bed; data/fuel_bed.toml gives each with its source.
struct BedConstants {
    Uncertain surface_rate;         // [kg/(m2 s)] dry wood lost per lit area at 20 kW/m2
    Uncertain flame_feedback;       // [W/m2] what the wood's own flame adds
    Uncertain flux_scale;           // [W/m2] flux that raises the rate by one surface_rate
    Uncertain largest_rate;         // [kg/(m2 s)] upper bound of the rate
    Uncertain ignition_flux;        // [W/m2] least flux that ignites without a flame
    Uncertain response_time;        // [s] of the rate to the flux
    Uncertain wood_absorptivity;    // [-] of charring wood
    Uncertain water_to_wood_heat;   // [-] heat to boil water off over heat to pyrolyse as much wood
    Uncertain hand_lit_for;         // [s] in which a hand's flame lights the kindling
    Uncertain lighting_embers;      // [kg] of char that light new wood surely
    Uncertain char_yield;           // [-] of dry wood
    Uncertain char_kinetic_rate;    // [m/s] k_c at the ember surface
    Uncertain char_transfer_rate;   // [m/s] h_m, oxygen through the boundary layer
    Uncertain char_area;            // [m2/kg] ember surface per kilogram of char
    Uncertain char_wait;            // [s] in which a burn-rate table's char burns in enough air
    Uncertain char_to_co;           // [-] share of the char's carbon leaving the ember as CO
    Uncertain flame_length_factor;  // [-] multiplies Heskestad's flame length
    Uncertain flame_temperature;    // [K] of the flame that the wood itself sees
    Uncertain flame_absorption;     // [1/m] of luminous flame
    Uncertain radiant_fraction;     // [-] of the heat set free that flame and embers radiate
    Uncertain ember_temperature;    // [K] of the glowing bed
    Uncertain ember_view;           // [-] share of the wood's view that a full ember bed fills
    Uncertain full_ember_bed;       // [kg] of char, half of which fills half of ember_view
    Uncertain ash_density;          // [kg/m3] of ash as it lies under the fire
    Uncertain freezing_temperature;  // [K] mixed gas below this stops burning past the flame tip
};

/// Every one of them by the name it has in data/fuel_bed.toml.
struct BedMember {
    std::string_view name;
    Uncertain BedConstants::*member;
};
inline constexpr std::array bed_members{
    BedMember{"surface_rate", &BedConstants::surface_rate},
    BedMember{"flame_feedback", &BedConstants::flame_feedback},
    BedMember{"flux_scale", &BedConstants::flux_scale},
    BedMember{"largest_rate", &BedConstants::largest_rate},
    BedMember{"ignition_flux", &BedConstants::ignition_flux},
    BedMember{"response_time", &BedConstants::response_time},
    BedMember{"wood_absorptivity", &BedConstants::wood_absorptivity},
    BedMember{"water_to_wood_heat", &BedConstants::water_to_wood_heat},
    BedMember{"hand_lit_for", &BedConstants::hand_lit_for},
    BedMember{"lighting_embers", &BedConstants::lighting_embers},
    BedMember{"char_yield", &BedConstants::char_yield},
    BedMember{"char_kinetic_rate", &BedConstants::char_kinetic_rate},
    BedMember{"char_transfer_rate", &BedConstants::char_transfer_rate},
    BedMember{"char_area", &BedConstants::char_area},
    BedMember{"char_wait", &BedConstants::char_wait},
    BedMember{"char_to_co", &BedConstants::char_to_co},
    BedMember{"flame_length_factor", &BedConstants::flame_length_factor},
    BedMember{"flame_temperature", &BedConstants::flame_temperature},
    BedMember{"flame_absorption", &BedConstants::flame_absorption},
    BedMember{"radiant_fraction", &BedConstants::radiant_fraction},
    BedMember{"ember_temperature", &BedConstants::ember_temperature},
    BedMember{"ember_view", &BedConstants::ember_view},
    BedMember{"full_ember_bed", &BedConstants::full_ember_bed},
    BedMember{"ash_density", &BedConstants::ash_density},
    BedMember{"freezing_temperature", &BedConstants::freezing_temperature},
};

}  // namespace drawwell
