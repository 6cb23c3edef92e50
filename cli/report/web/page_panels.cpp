#include "cli/report/web/page_panels.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <limits>
#include <optional>

#include "cli/read/units.h"
#include "cli/report/cell_labels.h"
#include "cli/report/shown_unit.h"
#include "models/fittings/fittings.h"

namespace drawwell {
namespace {

constexpr double no_fuel_ratio = 90;  // [-] the air ratio is 99 where nothing burns

constexpr double steady_room = 0.1;  // [K] by which it changes at most

enum class Cell { first, middle, last };

/// One line of a panel: a column, and of a divided part the cell.
struct Wanted {
    std::string_view label, column;
    Cell cell = Cell::first;
};

std::size_t index_of(const Column& column, Cell cell) {
    if (cell == Cell::first) return 0;
    return cell == Cell::last ? column.width - 1 : column.width / 2;
}

bool worth_drawing(const std::vector<double>& values) {
    return std::any_of(values.begin(), values.end(),
                       [](double value) { return std::isfinite(value) && value != 0; });
}

void add_series(ShownPanel& panel, const Results& results, const Column& column, std::size_t cell,
                std::string_view label) {
    const ShownUnit unit = shown_unit(column.unit);
    panel.unit = unit.label;
    ShownSeries series{std::string(label), {}, column.name, cell};
    for (std::size_t step = 0; step < results.time.size(); ++step)
        series.values.push_back(unit.from_si(column.values[step * column.width + cell]));
    if (worth_drawing(series.values)) panel.series.push_back(std::move(series));
}

ShownPanel panel_with(const Results& results, std::string_view title,
                      const std::vector<Wanted>& wanted) {
    ShownPanel panel{std::string(title), "", {}};
    for (const Wanted& line : wanted)
        if (const Column* column = results.find(line.column); column && column->width > 0)
            add_series(panel, results, *column, index_of(*column, line.cell), line.label);
    return panel;
}

/// Up to six rings from the centre to the rim, by their distance from the centre.
ShownPanel plate_panel(const Results& results) {
    ShownPanel panel{"Plate, ring by ring", "", {}};
    const Column* column = results.find("plate_temperature");
    if (!column) return panel;
    panel = panel_of(results, *column);
    panel.title = "Plate, ring by ring";
    const std::string name = column->name;
    for (ShownSeries& series : panel.series) {
        double radius = 0;  // the label is the ring's place in metres: `[0.105m]`
        const std::string place = series.label.substr(name.size());
        series.label = std::sscanf(place.c_str(), "[%lfm]", &radius) == 1
                           ? fmt::format("{:.0f} mm from the centre", to_millimetres(radius))
                           : "ring " + place;
    }
    if (!panel.series.empty()) {
        panel.series.front().label += ", innermost";
        panel.series.back().label += ", rim";
    }
    return panel;
}

ShownPanel air_panel(const Results& results) {
    ShownPanel panel = panel_with(results, "Air taken in over air the wood needs",
                                  {{"air over need", "air_ratio"}});
    for (ShownSeries& series : panel.series)
        for (double& value : series.values)
            if (value > no_fuel_ratio) value = std::numeric_limits<double>::quiet_NaN();
    panel.unit = "times";
    return panel;
}

/// Nothing where the room stays as warm as it is given.
ShownPanel room_panel(const Results& results) {
    ShownPanel panel = panel_with(results, "Room", {{"room", "room_temperature"}});
    std::erase_if(panel.series, [](const ShownSeries& series) {
        const auto [least, most] = std::minmax_element(series.values.begin(), series.values.end());
        return *most - *least < steady_room;
    });
    return panel;
}

/// Temperatures of all that is fitted.
ShownPanel fitted_panel(const Results& results) {
    ShownPanel panel{"What is fitted", "°C", {}};
    for (const ColumnInfo& info : fitting_columns()) {
        const Column* column = info.unit == "K" ? results.find(info.name) : nullptr;
        if (!column) continue;
        const std::vector<std::string> labels = cell_labels(results, *column);
        for (std::size_t cell = 0; cell < column->width; ++cell)
            add_series(panel, results, *column, cell,
                       column->meaning + (column->width > 1 ? " " + labels[cell] : ""));
    }
    return panel;
}

}  // namespace

std::vector<PagePanel> page_panels(const Results& results) {
    std::vector<PagePanel> panels = {
        {"pull",
         "Gas lighter than the air outside pulls where it rises. In the feed, and where it falls "
         "round the riser, its heat works against the draw and counts below nothing.",
         panel_with(results, "What pulls, part by part",
                    {{"all together", "drive"},
                     {"riser", "buoyancy_riser"},
                     {"flue", "buoyancy_flue"},
                     {"space round the riser", "buoyancy_annulus"},
                     {"feed", "buoyancy_feed"}})},
        {"spent",
         "What pulls is spent part by part on the gas's way. The spare draw is the push that would "
         "turn the flow: the lower it lies, the less it takes.",
         panel_with(results, "Where the draw is spent, and what is spare",
                    {{"spare draw", "reserve_draw"},
                     {"mouth and feed", "loss_feed"},
                     {"tunnel, port and bend", "loss_tunnel"},
                     {"riser", "loss_riser"},
                     {"opening under the plate", "loss_turn"},
                     {"space round the riser", "loss_annulus"},
                     {"flue", "loss_flue"}})},
        {"path", "The same gas on its way from the fire to the open air.",
         panel_with(results, "Gas along its way",
                    {{"end of the tunnel", "tunnel_gas_temperature", Cell::last},
                     {"riser, foot", "riser_gas_temperature", Cell::first},
                     {"riser, top", "riser_gas_temperature", Cell::last},
                     {"foot of the space round it", "annulus_gas_temperature", Cell::last},
                     {"flue outlet", "outlet_gas_temperature"},
                     {"flue top", "flue_top_temperature"}})},
        {"plate",
         "It keeps food warm from 60 °C, simmers from 120, fries from 175, sears from 230.",
         plate_panel(results)},
        {"barrel", "What stands in the room and warms it, and the outside of the riser within.",
         panel_with(results, "Barrel, riser's outside and flue wall",
                    {{"barrel, top", "barrel_temperature", Cell::first},
                     {"barrel, middle", "barrel_temperature", Cell::middle},
                     {"barrel, foot", "barrel_temperature", Cell::last},
                     {"riser's outside, top", "riser_skin_temperature", Cell::last},
                     {"flue wall, where it begins", "flue_wall_temperature", Cell::first},
                     {"flue wall, top", "flue_wall_temperature", Cell::last}})},
        {"flows", "Air in by the feed below nothing is smoke that comes out of it.",
         panel_with(results, "Air and gas",
                    {{"air into the feed", "feed_air_flow"},
                     {"air by side openings", "side_air_flow"},
                     {"gas out of the flue", "flue_gas_flow"},
                     {"wood turning to gas and embers", "pyrolysis_rate"}})},
        {"air",
         "Below one there is too little air for the wood: smoke and carbon monoxide. Far above it, "
         "air that nothing needs cools the riser. Left out where nothing burns.",
         air_panel(results)},
        {"heat", "What the fire gives, and where it goes at each moment.",
         panel_with(results, "Heat",
                    {{"given by the fire", "heat_release"},
                     {"to the room", "heat_to_room"},
                     {"up the flue", "heat_up_flue"},
                     {"from faces outdoors", "heat_outdoors"}})},
        {"fuel", "Dry wood and embers that lie in the stove.",
         panel_with(results, "Wood and embers", {{"wood", "wood_left"}, {"embers", "char_left"}})},
        {"room", "The room as the stove alone would warm it.", room_panel(results)},
        {"fitted", "Pots, griddles, tubes, panes and what else the stove file names.",
         fitted_panel(results)},
    };
    std::erase_if(panels, [](const PagePanel& panel) { return panel.shown.series.empty(); });
    return panels;
}

}  // namespace drawwell
