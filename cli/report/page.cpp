#include "cli/report/page.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string_view>

#include "cli/read/units.h"
#include "cli/report/cautions.h"
#include "cli/report/fitting_text.h"
#include "cli/report/page_draw.h"
#include "cli/report/page_text.h"
#include "cli/report/page_writer.h"
#include "cli/report/stretched_text.h"

namespace drawwell {
namespace {

constexpr double residual_limit = 1e-3;  // [-] above it the books do not balance
constexpr double worth_a_line = 0.01;    // [-] share of the heat below which it is left out

void write_bands(Page& page, std::string_view label, const CookingTime& time) {
    page.aligned(label,
                 fmt::format("{:>8.0f}{:>9.0f}{:>9.0f}{:>9.0f}", to_minutes(time.warm),
                             to_minutes(time.simmer), to_minutes(time.fry), to_minutes(time.sear)));
}

constexpr double least_bow = 1e-4;  // [m] nobody measures less on a plate

std::string bow_text(const Summary& summary, UnitSystem units) {
    const auto shown = [&](double bow) {
        return show_length(std::max(std::abs(bow), least_bow), units, 1);
    };
    if (std::abs(*summary.plate_bow_high) < least_bow / 2)
        return "stays flat within " + show_length(least_bow, units, 1);
    return fmt::format(
        "{} at most {} where its rim can slide, {} where it can't, {} after lighting",
        *summary.plate_bow_high < 0 ? "dishes" : "domes", shown(*summary.plate_bow_low),
        shown(*summary.plate_bow_high), show_duration(*summary.plate_bow_time));
}

/// The bands in which a plate cooks, by their edges in degrees.
void write_band_heads(Page& page, UnitSystem units) {
    const auto degrees = [&](double celsius) {
        return fmt::format("{:.0f}", shown_unit("K", units).from_si(from_celsius(celsius)));
    };
    page.aligned("minutes in each band",
                 fmt::format("{:>8}{:>9}{:>9}{:>9}", "warm", "simmer", "fry", "sear"));
    page.aligned("(" + shown_unit("K", units).label + ")",
                 fmt::format("{:>8}{:>9}{:>9}{:>9}", degrees(60) + "-" + degrees(120),
                             degrees(120) + "-" + degrees(175), degrees(175) + "-" + degrees(230),
                             "over " + degrees(230)));
}

void write_plate(Page& page, const Summary& summary, UnitSystem units) {
    if (!summary.plate_centre_max) return;
    page.heading("Cooking plate");
    std::string centre = "at most " + show_temperature(*summary.plate_centre_max, units);
    if (summary.plate_centre_max_time)
        centre += fmt::format(", {} after lighting", show_duration(*summary.plate_centre_max_time));
    page.row(summary.plate_hole ? "at the hole" : "centre", centre);
    if (summary.plate_rim_max)
        page.row("rim", "at most " + show_temperature(*summary.plate_rim_max, units));
    page.row(in_system("cooks (175 °C)", units),
             summary.plate_time_to_fry ? "after " + show_duration(*summary.plate_time_to_fry)
                                       : "never in this burn");
    if (summary.plate_bow_low && summary.plate_bow_high && summary.plate_bow_time)
        page.row("bow by heat", bow_text(summary, units));
    if (!summary.plate_best_ring && !summary.plate_pot) return;
    write_band_heads(page, units);
    if (summary.plate_best_ring) {
        std::string label = "best ring";
        if (summary.plate_best_ring_radius)
            label += fmt::format(", {} out", show_length(*summary.plate_best_ring_radius, units));
        write_bands(page, label, *summary.plate_best_ring);
    }
    if (summary.plate_pot)
        write_bands(page, show_length(0.2, units) + " pot, centred", *summary.plate_pot);
}

void write_fittings(Page& page, const Summary& summary, UnitSystem units) {
    std::string fitting;
    for (const FittingAnswer& answer : summary.fittings) {
        if (answer.fitting != fitting) page.heading(answer.fitting);
        fitting = answer.fitting;
        page.row(in_system(answer.label, units), fitting_text(answer, units));
    }
}

void write_temperatures(Page& page, const Summary& summary, UnitSystem units) {
    page.heading("How hot");
    page.row("riser gas", "at most " + show_temperature(summary.riser_gas_max, units));
    std::string exit_gas = "at most " + show_temperature(summary.exit_gas_max, units);
    if (summary.exit_gas_mean)
        exit_gas += fmt::format(", {} on average while it burns",
                                show_temperature(*summary.exit_gas_mean, units));
    page.row("exit gas, flue outlet", exit_gas);
    page.row("gas at the flue top", "at most " + show_temperature(summary.flue_top_max, units));
    if (summary.flue_wet)
        page.row("flue wall", *summary.flue_wet > 0 && summary.flue_wet_last
                                  ? fmt::format("wet for {}, last {} after lighting",
                                                show_duration(*summary.flue_wet),
                                                show_duration(*summary.flue_wet_last))
                                  : std::string("never wet (dew point)"));
    if (summary.barrel_top_max && summary.barrel_foot_max)
        page.row("barrel", fmt::format("at most {} at the top, {} at the foot",
                                       show_temperature(*summary.barrel_top_max, units),
                                       show_temperature(*summary.barrel_foot_max, units)));
}

void write_heat(Page& page, const Summary& summary, double duration, UnitSystem units) {
    page.heading("Heat");
    const double from_walls = std::max(-summary.heat_stored, 0.0);
    const double given = summary.heat_released + summary.heat_from_room_air + from_walls;
    const auto amount = [&](std::string_view label, double heat, std::string_view more = "") {
        if (std::abs(to_megajoules(heat)) < 0.05) heat = 0;  // no "-0.0"
        std::string value = fmt::format("{:6.1f} MJ", to_megajoules(heat));
        if (given > 0) value += fmt::format("  {:4.0f} %", to_percent(heat / given));
        if (!more.empty()) value += "  " + std::string(more);
        page.aligned(label, value);
    };
    const auto steady = [&](double heat) {
        return duration > 0 ? fmt::format("{:.1f} kW on average", to_kilowatts(heat / duration))
                            : std::string();
    };
    amount("given by the wood", summary.heat_released,
           summary.wood_burned > 0 ? show_mass(summary.wood_burned, units) + " of it, dry" : "");
    if (std::abs(summary.heat_from_room_air) >= worth_a_line * given)
        amount("warmth of the room's air", summary.heat_from_room_air);
    if (from_walls > 0) amount("given by the walls", from_walls, "they end colder than they began");
    amount("to the room", summary.heat_to_room, steady(summary.heat_to_room));
    if (summary.heat_lost_outdoors > worth_a_line * given)
        amount("from faces outdoors", summary.heat_lost_outdoors);
    if (summary.heat_with_smoke > worth_a_line * given)
        amount("out of the feed, in smoke", summary.heat_with_smoke);
    if (!(from_walls > 0)) amount("still in the stove", summary.heat_stored);
    amount("up the flue", summary.heat_up_flue);
    if (summary.heat_up_flue_latent > worth_a_line * given)
        amount("  of that as steam", summary.heat_up_flue_latent);
    if (summary.heat_up_flue_unburnt > worth_a_line * given)
        amount("  of that unburnt", summary.heat_up_flue_unburnt);
    if (summary.room_demand > 0)
        page.row("the room lost",
                 fmt::format("{:.1f} MJ meanwhile; the stove gave {:.0f} % of that",
                             to_megajoules(summary.room_demand),
                             to_percent(summary.heat_to_room / summary.room_demand)));
    if (summary.room_warmest && summary.room_warmest_time)
        page.row("room, stove alone", fmt::format("at most {}, {} after lighting",
                                                  show_temperature(*summary.room_warmest, units),
                                                  show_duration(*summary.room_warmest_time)));
}

void write_books(Page& page, const Summary& summary) {
    const auto miss = [](double residual) {
        return std::isfinite(residual) ? fmt::format("{:.2g} %", to_percent(std::abs(residual)))
                                       : std::string("nobody knows what");
    };
    const std::string misses = fmt::format(
        "off by {} in heat, {} in gas, {} in its elements (carbon, hydrogen, oxygen)",
        miss(summary.energy_residual), miss(summary.mass_residual), miss(summary.element_residual));
    // A residual that is not a number must not pass for a small one.
    const auto small = [](double residual) {
        return std::isfinite(residual) && std::abs(residual) <= residual_limit;
    };
    const bool balance = small(summary.energy_residual) && small(summary.mass_residual) &&
                         small(summary.element_residual);
    if (balance) {
        page.heading("The books balance");
        page.paragraph(misses + ".");
    } else {
        page.heading("THE BOOKS DO NOT BALANCE");
        page.paragraph(misses +
                       ", where 0.1 % is allowed. Do not build on these figures; the "
                       "fault is the program's, please report it with the stove file.");
    }
    page.paragraph(
        fmt::format("Computed in {:.2f} s, {} steps.", summary.wall_clock, summary.steps));
}

}  // namespace

void write_answers(Page& page, const Summary& summary, const PageFrame& frame) {
    page.line(fmt::format("{}{}{}{}", frame.title, frame.title.empty() ? "" : ", ",
                          show_duration(frame.duration),
                          frame.begun_from.empty() ? " from lighting" : ""));
    if (!frame.begun_from.empty())
        page.paragraph(frame.begun_from + "; \"after lighting\" counts from then");
    if (!frame.complete)
        page.verdict("STOPPED BEFORE ITS END: this holds only as far as it was computed.", false);
    write_draw(page, summary);
    write_plate(page, summary, frame.units);
    write_fittings(page, summary, frame.units);
    write_temperatures(page, summary, frame.units);
    write_heat(page, summary, frame.duration, frame.units);
    if (!summary.remarks.empty()) page.heading("To note");
    for (const std::string& remark : summary.remarks) page.point(remark);
    const std::vector<std::string> stretched = stretched_points(summary, frame.units);
    if (!stretched.empty()) page.heading("Judge with care");
    for (const std::string& point : stretched) page.point(point);
    page.heading("Before you light it");
    for (const std::string_view caution : standing_cautions()) page.point(caution);
    write_books(page, summary);
    if (!frame.files.empty()) page.heading("Files");
    // Paths are not broken: they are copied.
    for (const auto& [meaning, path] : frame.files)
        page.line(fmt::format("  {:<24}{}", meaning, path.string()));
}

std::string burn_page(const Summary& summary, const PageFrame& frame) {
    Page page(frame.colour);
    write_answers(page, summary, frame);
    return page.text();
}

}  // namespace drawwell
