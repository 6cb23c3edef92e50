#include "cli/read/keys/fields.h"
#include "cli/read/standard_atmosphere.h"

namespace drawwell {
namespace {

using namespace fields;
using Derived = std::optional<Value>;

Derived pressure_by_altitude(const StoveDraft& draft, std::string_view) {
    return standard_pressure_at(draft.altitude);
}
Field altitude(StoveDraft& draft, std::string_view, bool) {
    return &draft.altitude;
}

Field weather(StoveDraft& draft, std::string_view, bool) {
    return &draft.weather;
}

}  // namespace

std::vector<Key> site_keys() {
    using enum Quantity;
    return {
        {.name = "site.room",
         .quantity = temperature,
         .fallback = "20 °C",
         .least = 233.15,
         .most = 333.15,
         .help = "temperature of the air round the stove",
         .field = of<&Stove::site, &Site::room>},
        {.name = "site.weather",
         .kind = Kind::text,
         .fallback = "none",
         .help = "CSV file beside the stove file with the weather over time, in columns time_min "
                 "(or time_s, time_h) and any of outdoor_c, wind_m_s, gust_m_s, room_suction_pa",
         .field = weather},
        {.name = "site.outdoor",
         .kind = Kind::table,
         .quantity = temperature,
         .fallback = "5 °C",
         .least = 213.15,
         .most = 333.15,
         .help = "temperature outdoors",
         .field = of<&Stove::site, &Site::outdoor>},
        {.name = "site.altitude",
         .quantity = length,
         .fallback = "0 m",
         .least = -450,
         .most = 5500,
         .help = "height above the sea (gives the air pressure)",
         .field = altitude},
        {.name = "site.pressure",
         .quantity = pressure,
         .fallback = "by site.altitude",
         .derive = pressure_by_altitude,
         .least = 50000,
         .most = 110000,
         .help = "air pressure outdoors at the tunnel floor",
         .field = of<&Stove::site, &Site::pressure>},
        {.name = "site.wind",
         .kind = Kind::table,
         .quantity = speed,
         .fallback = "0 m/s",
         .most = 60,
         .help = "wind at the flue's top",
         .field = of<&Stove::site, &Site::wind>},
        {.name = "site.wind_factor",
         .quantity = number,
         .fallback = "0",
         .least = -2,
         .most = 2,
         .help = "share of the wind's pressure that pushes into the flue's top; negative: it sucks",
         .field = of<&Stove::site, &Site::wind_factor>},
        {.name = "site.gust",
         .kind = Kind::table,
         .quantity = speed,
         .fallback = "0 m/s",
         .most = 80,
         .help = "wind at the flue's top in gusts; 0: none",
         .field = of<&Stove::site, &Site::gust>},
        {.name = "site.gust_factor",
         .quantity = number,
         .fallback = "0.3",
         .most = 2,
         .help =
             "share of a gust's dynamic pressure that pushes into the flue at worst (0.3 is our "
             "choice)",
         .field = of<&Stove::site, &Site::gust_factor>},
        {.name = "site.wind_at_stove",
         .quantity = speed,
         .fallback = "0 m/s",
         .most = 30,
         .help = "wind on plate and barrel",
         .field = of<&Stove::site, &Site::wind_at_stove>},
        {.name = "site.room_suction",
         .kind = Kind::table,
         .quantity = pressure,
         .fallback = "0 Pa",
         .least = -100,
         .most = 100,
         .help = "fan suction: by how much the room is below outdoors (pressure offset); a fan "
                 "switched on is two rows of a table, a second apart",
         .field = of<&Stove::site, &Site::room_suction>},
        {.name = "site.room_suction_height",
         .quantity = length,
         .fallback = "0 mm",
         .least = -20,
         .most = 50,
         .help = "height above the tunnel floor where that suction holds",
         .field = of<&Stove::site, &Site::room_suction_height>},
        {.name = "site.room_loss",
         .quantity = heat_loss,
         .fallback = "0 W/K",
         .most = 1e5,
         .help = "heat the room loses to outdoors for each degree; 0: not given",
         .field = of<&Stove::site, &Site::room_loss>},
        {.name = "site.room_volume",
         .quantity = volume,
         .fallback = "0 m3",
         .most = 1e5,
         .help = "air in the stove's room, floor times height; with site.room_loss it tells how "
                 "warm the stove alone makes the room, from site.room on; 0: not given",
         .field = of<&Stove::site, &Site::room_volume>},
    };
}

std::vector<Key> burn_keys() {
    using enum Quantity;
    return {
        {.name = "burn.lit_at",
         .kind = Kind::clock,
         .fallback = "none",
         .most = 86399,
         .help = "time of day at lighting, \"19:30\"; then times after lighting may be written by "
                 "the clock too, \"20:10\"",
         .field = of<&Stove::burn, &Burn::lit_at>},
        {.name = "burn.duration",
         .quantity = time,
         .fallback = "3 h",
         .least = 1,
         .most = 864000,
         .help = "how long the burn is computed, from lighting",
         .field = of<&Stove::burn, &Burn::duration>},
        {.name = "burn.output_every",
         .quantity = time,
         .fallback = "30 s",
         .least = 0.1,
         .most = 86400,
         .help = "time between rows of the result file",
         .field = of<&Stove::burn, &Burn::output_every>},
        {.name = "burn.reserve_every",
         .quantity = time,
         .fallback = "1 min",
         .most = 86400,
         .help = "time between computations of the spare draw (reserve); 0: not computed",
         .field = of<&Stove::burn, &Burn::reserve_every>},
        {.name = "burn.sustained_every",
         .quantity = time,
         .fallback = "15 min",
         .most = 86400,
         .help =
             "time between computations of the push from outside that the draw still stands, if "
             "it lasts; 0: not computed",
         .field = of<&Stove::burn, &Burn::sustained_every>},
        {.name = "burn.tolerance",
         .quantity = number,
         .fallback = "0.0002",
         .least = 1e-10,
         .most = 0.1,
         .help = "relative error allowed in a step of the solver",
         .field = of<&Stove::burn, &Burn::tolerance>},
        {.name = "burn.refine",
         .quantity = number,
         .fallback = "1",
         .least = 0.25,
         .most = 16,
         .help = "multiplies the number of cells everywhere",
         .field = of<&Stove::burn, &Burn::refine>},
    };
}

}  // namespace drawwell
