#include "cli/read/stove_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cli/read/checker.h"
#include "cli/read/over_time.h"
#include "cli/read/units.h"
#include "models/fittings/fittings.h"
#include "models/stops.h"
#include "solver/constants.h"

namespace drawwell {
namespace {

std::string mm(double value) {
    return show_quantity(value, Quantity::length);
}

void check_firebox(const Stove& stove, Checker& check) {
    if (const auto& tunnel = stove.tunnel; tunnel && stove.feed) {
        check.require(stove.feed->mouth > tunnel->fire_height(),
                      {"feed.mouth", "tunnel.height", "tunnel.firebox_height"},
                      fmt::format("the feed's mouth is not above the tunnel's roof ({})",
                                  mm(tunnel->fire_height())));
        const double least = (stove.feed->depth + equal_bore(stove.riser)) / 2;
        check.require(
            tunnel->length >= least,
            {"tunnel.length", "feed.depth", "riser.bore", "riser.width", "riser.depth"},
            fmt::format("feed and riser stand in each other: their centres must be at least {} "
                        "apart",
                        mm(least)));
    }
    if (stove.port && stove.tunnel) {
        check.require(
            stove.port->width <= stove.tunnel->width, {"port.width", "tunnel.width"},
            fmt::format("the port is wider than the tunnel ({})", mm(stove.tunnel->width)));
        check.require(
            stove.port->height <= stove.tunnel->height, {"port.height", "tunnel.height"},
            fmt::format("the port is higher than the tunnel ({})", mm(stove.tunnel->height)));
    } else if (stove.port) {
        check.require(stove.port->width * stove.port->height <= riser_area(stove.riser),
                      {"port.width", "port.height", "riser.bore", "riser.width", "riser.depth"},
                      "the port is larger than the riser's inner section");
    }
    for (const SideAir& air : stove.side_air) {
        const std::string prefix = "side_air." + air.name + ".";
        const bool slot = air.slot_width > 0 && air.slot_height > 0;
        const bool holes = air.holes > 0 && air.hole_diameter > 0;
        check.require(
            slot != holes,
            {prefix + "width", prefix + "height", prefix + "holes", prefix + "diameter"},
            "a side inlet is a slot (width and height) or a row of holes (holes and diameter)");
        check.require(stove.tunnel.has_value() || stove.feed.has_value(), {prefix + "at"},
                      "side air needs a tunnel or feed to enter");
        if (stove.feed)
            check.require(
                air.height < stove.feed->mouth, {prefix + "at", "feed.mouth"},
                fmt::format("side air enters above the feed's mouth ({})", mm(stove.feed->mouth)));
    }
}

void check_ledge(const Stove& stove, Checker& check) {
    if (!stove.tunnel) return;
    const Tunnel& tunnel = *stove.tunnel;
    const bool larger =
        tunnel.firebox_width > tunnel.width || tunnel.firebox_height > tunnel.height;
    check.require(!larger || tunnel.firebox_length > 0,
                  {"tunnel.firebox_width", "tunnel.firebox_height", "tunnel.firebox_length"},
                  "a firebox larger than the tunnel ends somewhere: say tunnel.firebox_length, up "
                  "to its ledge");
    if (tunnel.firebox_length > 0) {
        check.require(tunnel.firebox_length < tunnel.length,
                      {"tunnel.firebox_length", "tunnel.length"},
                      fmt::format("the firebox takes the whole tunnel ({}): it ends at a ledge "
                                  "before the riser",
                                  mm(tunnel.length)));
        check.require(
            tunnel.firebox_width >= tunnel.width && tunnel.firebox_height >= tunnel.height,
            {"tunnel.firebox_width", "tunnel.firebox_height", "tunnel.width", "tunnel.height"},
            "the firebox is smaller than the tunnel after it");
    }
    check.require(tunnel.ash < tunnel.fire_height() / 2,
                  {"tunnel.ash", "tunnel.height", "tunnel.firebox_height"},
                  fmt::format("ash fills half of the firebox ({} high) or more: clean it before "
                              "lighting",
                              mm(tunnel.fire_height())));
}

void check_riser(const Stove& stove, Checker& check) {
    const Riser& riser = stove.riser;
    check.require(
        !riser.octagonal || riser.bore > 0, {"riser.section", "riser.width", "riser.depth"},
        "an octagonal riser has a bore, from flat to flat: say riser.bore in place of width "
        "and depth");
    check.require(riser.top > riser.foot, {"riser.top", "riser.foot"},
                  fmt::format("the riser's top is not above its foot ({})", mm(riser.foot)));
    if (stove.tunnel)
        check.require(riser.top > stove.tunnel->height, {"riser.top", "tunnel.height"},
                      fmt::format("the riser's top is not above the tunnel's roof ({})",
                                  mm(stove.tunnel->height)));
}

void check_barrel(const Stove& stove, Checker& check) {
    check.require_part(
        !stove.barrel || stove.plate, "barrel",
        "a barrel hangs from a plate: add [plate], an empty table takes the defaults");
    check.require_part(!stove.plate || stove.barrel, "plate",
                       "a plate needs a barrel under it: add [barrel]");
    if (stove.plate)
        check.require(stove.plate->underside > stove.riser.top, {"riser.top", "plate.underside"},
                      fmt::format("the riser goes through the plate: its top is at {}, the plate's "
                                  "underside at {}, and gas must pass between",
                                  mm(stove.riser.top), mm(stove.plate->underside)));
    if (!stove.barrel) return;
    const Barrel& barrel = *stove.barrel;
    const Riser& riser = stove.riser;
    const double lining = 2 * (thickness(riser.lining) + barrel.soot);
    // From corner to corner.
    const double outside =
        riser.bore > 0 ? (riser.bore + lining) / (riser.octagonal ? std::cos(constants::pi / 8) : 1)
                       : std::hypot(riser.width + lining, riser.depth + lining);
    const double inside = barrel.diameter - 2 * (thickness(barrel.shell) + barrel.soot);
    check.require(
        inside > outside,
        {"barrel.diameter", "riser.bore", "riser.width", "riser.depth", "riser.lining",
         "barrel.shell", "barrel.soot"},
        fmt::format("the barrel is narrower inside ({}) than the riser outside ({}): no space "
                    "round the riser is left",
                    mm(inside), mm(outside)));
    if (!stove.plate) return;
    check.require(stove.barrel_foot() < riser.top,
                  {"barrel.height", "riser.top", "plate.underside"},
                  fmt::format("the barrel ends at {}, above the riser's top at {}",
                              mm(stove.barrel_foot()), mm(riser.top)));
    const double foot = stove.axis_height();
    check.require(stove.barrel_foot() >= foot - 1e-9,
                  {"barrel.height", "plate.underside", "tunnel.height", "riser.foot"},
                  fmt::format("the barrel reaches down to {}, below the riser's foot at {}",
                              mm(stove.barrel_foot()), mm(foot)));
    check.require(stove.plate->diameter >= inside, {"plate.diameter", "barrel.diameter"},
                  fmt::format("the plate does not cover the barrel ({} inside)", mm(inside)));
}

void check_hole(const Stove& stove, Checker& check) {
    if (!stove.plate || !stove.barrel) return;
    const Plate& plate = *stove.plate;
    check.require(!plate.hole_cover || plate.hole, {"plate.hole_cover"},
                  "there is no hole to cover: say plate.hole, its diameter");
    if (!plate.hole) return;
    const double inside = stove.barrel->diameter - 2 * thickness(stove.barrel->shell);
    check.require(
        *plate.hole < inside, {"plate.hole", "barrel.diameter"},
        fmt::format("the hole is as wide as the barrel ({} inside): no plate is left", mm(inside)));
    check.require(plate.hole_cover || pot_over_hole(stove), {"plate.hole"},
                  "the hole is open to fire and flue gas: say plate.hole_cover, or stand a pot "
                  "over it, [pot.NAME], that covers it all round");
}

void check_jacket(const Stove& stove, const Said& said, Checker& check) {
    for (const std::string key : {"barrel.jacket_from", "barrel.jacket_to"})
        check.require(!said.entries.contains(key) || said.entries.contains("barrel.jacket"), {key},
                      "there is no jacket to place: say barrel.jacket, its layers");
    if (!stove.barrel || !stove.plate || stove.barrel->jacket.empty()) return;
    const Barrel& barrel = *stove.barrel;
    check.require(barrel.jacket_from < barrel.jacket_to, {"barrel.jacket_from", "barrel.jacket_to"},
                  fmt::format("the jacket's lower edge, at {}, is not below its upper one, at {}",
                              mm(barrel.jacket_from), mm(barrel.jacket_to)));
    const double foot = stove.barrel_foot(), top = stove.plate->underside;
    check.require(barrel.jacket_from >= foot - 1e-9,
                  {"barrel.jacket_from", "barrel.height", "plate.underside"},
                  fmt::format("the jacket reaches down to {}, below the barrel's foot at {}",
                              mm(barrel.jacket_from), mm(foot)));
    check.require(barrel.jacket_to <= top + 1e-9, {"barrel.jacket_to", "plate.underside"},
                  fmt::format("the jacket reaches up to {}, above the barrel's top at {}",
                              mm(barrel.jacket_to), mm(top)));
}

/// Soot may leave no way for the gas; a way narrower than this is none.
constexpr double narrowest_way = 0.01;  // [m]

void check_soot(const Stove& stove, Checker& check) {
    const auto require_way = [&](double across, double soot, const std::string& soot_key,
                                 const std::vector<std::string>& keys) {
        std::vector<std::string> all{soot_key};
        all.insert(all.end(), keys.begin(), keys.end());
        check.require(across - 2 * soot >= narrowest_way, all,
                      fmt::format("{} of soot leave no way for the gas: it is {} across when clean",
                                  mm(soot), mm(across)));
    };
    const Riser& riser = stove.riser;
    if (riser.soot > 0)
        require_way(riser.bore > 0 ? riser.bore : std::min(riser.width, riser.depth), riser.soot,
                    "riser.soot", {"riser.bore", "riser.width", "riser.depth"});
    if (stove.barrel && stove.barrel->soot > 0 && stove.bypass)
        require_way(stove.bypass->bore, stove.barrel->soot, "barrel.soot", {"bypass.bore"});
    for (const FlueSection& section : stove.flue.sections)
        if (section.soot > 0)
            require_way(section.bore, section.soot, "flue." + section.name + ".soot",
                        {"flue." + section.name + ".bore"});
}

void check_flue(const Stove& stove, Checker& check) {
    for (const FlueSection& section : stove.flue.sections) {
        const std::string prefix = "flue." + section.name + ".";
        check.require(std::abs(section.rise) <= section.length,
                      {prefix + "rise", prefix + "length"},
                      fmt::format("a section {} long can't rise or fall by {}", mm(section.length),
                                  mm(std::abs(section.rise))));
    }
    check.require_part(stove.barrel || stove.flue.outlet == 0, "flue",
                       "flue.outlet is a height on a barrel, and there is none");
    if (!stove.barrel || stove.flue.sections.empty()) return;
    const FlueSection& first = stove.flue.sections.front();
    const bool inside = stove.flue.outlet >= first.bore / 2 &&
                        stove.flue.outlet + first.bore / 2 <= stove.barrel->height;
    check.require(inside, {"flue.outlet", "barrel.height", "flue." + first.name + ".bore"},
                  fmt::format("the flue outlet ({} across) reaches outside the barrel ({} high)",
                              mm(first.bore), mm(stove.barrel->height)));
    if (!inside || !stove.plate || stove.barrel_foot() >= stove.riser.top) return;
    const double outlet = stove.outlet_height();
    check.require(outlet < stove.riser.top,
                  {"flue.outlet", "riser.top", "barrel.height", "plate.underside"},
                  fmt::format("the flue outlet's centre, at {}, must be below the riser's top, at "
                              "{}: the gas goes down round the riser to it",
                              mm(outlet), mm(stove.riser.top)));
}

void check_leaks(const Stove& stove, Checker& check) {
    check.require_part(!stove.bypass || stove.barrel, "bypass",
                       "a bypass goes round a barrel: add [barrel]");
    for (const Leak& leak : stove.leaks) {
        const std::string place = "leak." + leak.name + ".place";
        if (leak.place == LeakPlace::under_plate)
            check.require(stove.barrel && stove.plate, {place},
                          "a joint under the plate needs a [barrel] and a [plate]");
        if (leak.place == LeakPlace::flue_outlet)
            check.require(!stove.flue.sections.empty(), {place},
                          "a joint at the flue outlet needs a [flue.NAME]");
        if (leak.place == LeakPlace::tunnel)
            check.require(stove.tunnel.has_value(), {place},
                          "a joint in the tunnel needs a [tunnel]");
    }
}

void check_room(const Stove& stove, Checker& check) {
    check.require(
        !(stove.site.room_volume > 0) || stove.site.room_loss > 0,
        {"site.room_volume", "site.room_loss"},
        "how warm a room gets hangs on what it loses: say site.room_loss too, the heat it "
        "loses for each degree");
}

void check_wood(const Stove& stove, const Said& said, Checker& check) {
    const bool wood = !stove.loads.empty() || stove.burn_rate;
    // A source of heat whose value was refused is one all the same.
    bool heated = wood || stove.kindling || said.tables.contains("load");
    for (const std::string key : {"heat.power", "burn_rate.table", "riser.wall_temperature"})
        heated = heated || said.entries.contains(key);
    check.require_part(
        heated, "load",
        "nothing heats this stove: add [load.NAME], or burn_rate.table, heat.power or "
        "riser.wall_temperature");
    if (!wood) return;
    check.require_part(stove.feed && stove.tunnel, stove.burn_rate ? "burn_rate" : "load",
                       "wood needs a [feed] and a [tunnel] to burn in; plain heat is heat.power");
    if (!stove.feed) return;
    for (const Load& load : stove.loads) {
        const std::string prefix = "load." + load.name + ".";
        if (!(load.side > 0)) continue;  // refused already
        const double abreast =
            std::floor(stove.feed->width / load.side) * std::floor(stove.feed->depth / load.side);
        check.require(
            load.pieces <= abreast,
            {prefix + "pieces", prefix + "side", "wood.side", "feed.width", "feed.depth"},
            fmt::format("{} sticks of {} never fit a feed of {} x {}: it takes {:.0f}", load.pieces,
                        mm(load.side), mm(stove.feed->width), mm(stove.feed->depth), abreast));
    }
}

void check_fittings(const Stove& stove, Checker& check) {
    for (const auto& [table, problem] : fitting_problems(at_common_stops(stove))) {
        std::vector<std::string> keys;
        for (const std::string& word : problem.keys) keys.push_back(table + "." + word);
        check.require(false, keys, problem.reason);
    }
}

}  // namespace

void check_stove(const StoveDraft& draft, const Said& said, Problems& problems) {
    Checker check(draft, said, problems);
    check_firebox(draft.stove, check);
    check_ledge(draft.stove, check);
    check_riser(draft.stove, check);
    check_barrel(draft.stove, check);
    check_hole(draft.stove, check);
    check_jacket(draft.stove, said, check);
    check_soot(draft.stove, check);
    check_flue(draft.stove, check);
    check_leaks(draft.stove, check);
    check_fittings(draft.stove, check);
    check_wood(draft.stove, said, check);
    check_room(draft.stove, check);
    check_moved(draft, said, check);
}

void check_contradictions(const Said& said, Problems& problems) {
    const auto both = [&](const std::string& first, const std::string& second) {
        const auto found = said.entries.find(first);
        if (found != said.entries.end() && said.entries.contains(second))
            problems.add(found->second,
                         fmt::format("{} says it too: leave one of them out", second));
    };
    both("site.altitude", "site.pressure");
    both("heat.power", "burn_rate.table");
    for (const std::string instead : {"heat.power", "burn_rate.table"}) {
        const auto loads = said.entries.find("schedule.load");
        if (loads != said.entries.end() && said.entries.contains(instead))
            problems.add(loads->second,
                         fmt::format("{} stands instead of loads: leave one of them out", instead));
    }
    for (const std::string member : {"riser.width", "riser.depth"}) both(member, "riser.bore");
    for (const auto& [table, place] : said.tables) {
        if (table.starts_with("flue.")) both(table + ".direction", table + ".rise");
        if (!table.starts_with("load.") && table != "kindling") continue;
        for (const std::string instead : {"heat.power", "burn_rate.table"})
            if (said.entries.contains(instead))
                problems.add(
                    place,
                    fmt::format(
                        "[{}]: {} stands instead of loads and kindling: leave one of them out",
                        table, instead));
    }
}

}  // namespace drawwell
