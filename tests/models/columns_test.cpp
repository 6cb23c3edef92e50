#include "models/columns.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <set>
#include <string>

#include "models/fittings/fittings.h"

using namespace drawwell;

TEST_SUITE("models/columns") {
    TEST_CASE("every column has a name of its own, a unit and a phrase that explains it") {
        std::set<std::string_view> names;
        for (const ColumnInfo& column : all_columns()) {
            CAPTURE(column.name);
            CHECK(names.insert(column.name).second);
            CHECK(std::all_of(column.name.begin(), column.name.end(), [](unsigned char c) {
                return std::islower(c) || std::isdigit(c) || c == '_';
            }));
            CHECK(column.meaning.size() > 10);
        }
        CHECK(names.size() > 30);
    }

    TEST_CASE("units are SI's, axes those that parts are divided along") {
        const std::set<std::string_view> units{"1", "K", "Pa", "W", "m", "kg", "kg/s", "m/s"};
        std::set<std::string> axes{
            "",          "tunnel_cell", "riser_cell", "plate_radius", "barrel_cell", "annulus_cell",
            "flue_cell", "load",        "plate_rim"};
        for (const Axis& axis : fitting_axes(Stove{})) axes.insert(axis.name);
        for (const ColumnInfo& column : all_columns()) {
            CAPTURE(column.name);
            CHECK(units.contains(column.unit));
            CHECK(axes.contains(std::string(column.axis)));
            if (column.name.ends_with("_temperature")) CHECK(column.unit == "K");
            if (column.name.starts_with("loss_") || column.name.starts_with("buoyancy_"))
                CHECK(column.unit == "Pa");
        }
    }
}
