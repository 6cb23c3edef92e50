#include "cli/report/choose_columns.h"

#include <doctest/doctest.h>

#include "cli/report/write_csv.h"
#include "solver/errors.h"
#include "tests/cli/report/sample_run.h"

using namespace drawwell;

namespace {

Results chosen(const std::vector<std::string>& names, double every = 0) {
    return choose_columns(sample_results(), names, every);
}

}  // namespace

TEST_SUITE("cli/report/choose_columns") {
    TEST_CASE("columns come in the order asked, all of them if none is named") {
        const Results both = chosen({"plate_temperature", "spare_draw"});
        CHECK(both.columns[0].name == "plate_temperature");
        CHECK(both.columns[1].name == "spare_draw");
        CHECK(both.axes.size() == 1);
        CHECK(both.time == sample_results().time);
        CHECK(chosen({"spare_draw"}).axes.empty());
        CHECK(chosen({}).columns.size() == 2);
    }

    TEST_CASE("one cell is chosen by its label, and keeps it in a table") {
        const Results rim = chosen({"plate_temperature[0.15m]", "plate_temperature[0.05m]"});
        CHECK(rim.columns[0].values == std::vector<double>{281, 361, 441});
        CHECK(rim.columns[1].values == std::vector<double>{280, 380, 480});
        CHECK(csv_text(rim).starts_with(
            "time_s,plate_temperature_c[0.15m],plate_temperature_c[0.05m],"));
    }

    TEST_CASE("rows are thinned to those computed, the last among them") {
        CHECK(chosen({}, 60).time == std::vector<double>{0, 60});
        CHECK(chosen({"spare_draw"}, 60).columns[0].values == std::vector<double>{4.5, 6.5});
        CHECK(chosen({}, 1000).time == std::vector<double>{0, 60});
        CHECK(chosen({}, 1).time == sample_results().time);
        Results uneven = sample_results();
        uneven.time = {0, 59, 61};
        CHECK(choose_columns(uneven, {}, 60).time == std::vector<double>{0, 61});
    }

    TEST_CASE("a column or cell that is not there is refused with what is") {
        CHECK_THROWS_WITH_AS(chosen({"spare_drew"}), doctest::Contains("spare_draw"), InputError);
        CHECK_THROWS_WITH_AS(chosen({"plate_temperature[1m]"}), doctest::Contains("[0.15m]"),
                             InputError);
        CHECK_THROWS_WITH_AS(chosen({"spare_draw[0]"}), doctest::Contains("one value"), InputError);
        CHECK_THROWS_AS(chosen({""}), InputError);
    }
}
