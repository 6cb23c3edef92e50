#include "models/columns.h"

#include <array>
#include <vector>

#include "models/fittings/fittings.h"

namespace drawwell {

std::span<const ColumnInfo> all_columns() {
    static constexpr std::array of_every_stove{
        ColumnInfo{"feed_air_flow", "kg/s", "", "air into the feed; negative: smoke comes out"},
        ColumnInfo{"side_air_flow", "kg/s", "", "air through all side openings"},
        ColumnInfo{"flue_gas_flow", "kg/s", "", "gas leaving by the flue top"},
        ColumnInfo{"air_ratio", "1", "",
                   "oxygen taken in over oxygen the fuel needs; 99 without fuel"},
        ColumnInfo{"oxygen_at_flue", "1", "", "oxygen in the dry flue gas, by volume"},
        ColumnInfo{"heat_release", "W", "", "heat set free by burning (higher heating value)"},
        ColumnInfo{"pyrolysis_rate", "kg/s", "", "dry wood turning to gas and char"},
        ColumnInfo{"wood_left", "kg", "", "dry wood in the stove"},
        ColumnInfo{"char_left", "kg", "", "embers in the stove"},
        ColumnInfo{"ash_left", "kg", "", "ash of the wood that has burned, embers' included"},
        ColumnInfo{"ash_depth", "m", "", "ash under the fire"},
        ColumnInfo{"drive", "Pa", "", "all columns of gas together (buoyancy)"},
        ColumnInfo{"buoyancy_feed", "Pa", "",
                   "column in the feed; heat there works against the draw"},
        ColumnInfo{"buoyancy_riser", "Pa", "", "column in the riser"},
        ColumnInfo{"buoyancy_annulus", "Pa", "", "column in the space round the riser (annulus)"},
        ColumnInfo{"buoyancy_flue", "Pa", "", "column in the flue"},
        ColumnInfo{"loss_feed", "Pa", "", "lost in mouth and feed"},
        ColumnInfo{"loss_tunnel", "Pa", "", "lost in tunnel, port and the bend into the riser"},
        ColumnInfo{"loss_riser", "Pa", "", "lost in the riser"},
        ColumnInfo{"loss_turn", "Pa", "", "lost in the opening under the plate (curtain area)"},
        ColumnInfo{"loss_annulus", "Pa", "", "lost in the space round the riser (annulus)"},
        ColumnInfo{"loss_flue", "Pa", "", "lost from flue outlet to flue top"},
        ColumnInfo{"feed_suction", "Pa", "", "suction at the feed's foot against the room"},
        ColumnInfo{"flue_draft", "Pa", "", "suction at the flue outlet against the room"},
        ColumnInfo{"feed_air_speed", "m/s", "", "air speed in the feed, past the wood"},
        ColumnInfo{
            "reserve_draw", "Pa", "",
            "spare draw: the push that would turn the flow, walls as they are; last worked out"},
        ColumnInfo{"reserve_draw_suction", "Pa", "",
                   "the same by suction in the room; differs with ducted air and leaks"},
        ColumnInfo{
            "sustained_push", "Pa", "",
            "the push that would turn it if it lasted and the walls followed; from 5 min on"},
        ColumnInfo{"exchange_draw_early", "Pa", "",
                   "the push from which smoke may trickle out beside the air coming in"},
        ColumnInfo{"exchange_draw_late", "Pa", "", "the push from which it surely does"},
        ColumnInfo{
            "draw_limit", "1", "",
            "what gives way first: 0 a short push, 1 a lasting one, 2 exchange at the mouth"},
        ColumnInfo{"gust_push", "Pa", "", "what the gusts then push into the flue's top at worst"},
        ColumnInfo{"burnout_index", "1", "",
                   "time in the heat over the time carbon monoxide needs to burn"},
        ColumnInfo{"flue_top_temperature", "K", "", "gas at the flue top"},
        ColumnInfo{"outlet_gas_temperature", "K", "", "gas at the flue outlet (collar)"},
        ColumnInfo{"flue_dew_point", "K", "",
                   "below which water runs down the flue's wall (dew point)"},
        ColumnInfo{"heat_to_room", "W", "", "given off by all faces in the room"},
        ColumnInfo{"heat_outdoors", "W", "", "given off by faces outdoors"},
        ColumnInfo{"room_temperature", "K", "",
                   "the room, heated by the stove alone; site.room where site.room_volume is not "
                   "given"},
        ColumnInfo{"heat_up_flue", "W", "", "carried off by the flue gas, over outdoor air"},
        ColumnInfo{"tunnel_gas_temperature", "K", "tunnel_cell", "gas along the burn tunnel"},
        ColumnInfo{"tunnel_wall_temperature", "K", "tunnel_cell", "inner face of the burn tunnel"},
        ColumnInfo{"riser_gas_temperature", "K", "riser_cell", "gas up the riser"},
        ColumnInfo{"riser_wall_temperature", "K", "riser_cell", "inner face of the riser"},
        ColumnInfo{"riser_skin_temperature", "K", "riser_cell", "outside of the riser"},
        ColumnInfo{"plate_temperature", "K", "plate_radius",
                   "plate, ring by ring from the centre; in a hole, its cover or the bottom of the "
                   "pot over it"},
        ColumnInfo{
            "plate_bow_low", "m", "plate_rim",
            "plate's middle over its rim, bowed by heat: negative, it dishes; if its rim can "
            "slide"},
        ColumnInfo{"plate_bow_high", "m", "plate_rim", "the same if its rim can't grow"},
        ColumnInfo{"annulus_gas_temperature", "K", "annulus_cell",
                   "gas down the space round the riser"},
        ColumnInfo{"barrel_temperature", "K", "barrel_cell", "barrel from the top down"},
        ColumnInfo{"flue_gas_temperature", "K", "flue_cell", "gas along the flue"},
        ColumnInfo{"flue_wall_temperature", "K", "flue_cell", "inner face of the flue"},
        ColumnInfo{"load_water", "kg", "load",
                   "water in each load; it leaves with the wood it wets, none ahead of it"},
        ColumnInfo{"load_wood", "kg", "load", "dry wood in each load"},
        ColumnInfo{"load_char", "kg", "load", "embers that each load left"},
    };
    static const std::vector<ColumnInfo> columns = [] {
        std::vector<ColumnInfo> all(of_every_stove.begin(), of_every_stove.end());
        const std::vector<ColumnInfo> more = fitting_columns();
        all.insert(all.end(), more.begin(), more.end());
        return all;
    }();
    return columns;
}

}  // namespace drawwell
