#include "cli/study/vary.h"

#include <doctest/doctest.h>

#include <set>

#include "cli/read/units.h"
#include "solver/errors.h"

using namespace drawwell;

namespace {

std::string refusal(std::string_view text) {
    try {
        parse_vary(text);
    } catch (const InputError& error) {
        return error.what();
    }
    return "";
}

double metres(const Variant& variant, std::size_t at = 0) {
    return parse_quantity(variant.settings[at].value, Quantity::length);
}

}  // namespace

TEST_SUITE("cli/study/vary") {
    TEST_CASE("a range goes from its first value to its last, in whole figures") {
        const Vary vary = parse_vary("riser.top=500mm:900mm:50mm");
        CHECK(vary.key == "riser.top");
        REQUIRE(vary.values.size() == 9);
        CHECK(vary.values[0] == "500 mm");
        CHECK(vary.values[3] == "650 mm");
        CHECK(vary.values[8] == "900 mm");
        CHECK(parse_vary("riser.top=500mm:530mm:20mm").values.size() == 2);
        CHECK(parse_vary("load.main.pieces=1:3:1").values ==
              std::vector<std::string>{"1", "2", "3"});
    }

    TEST_CASE("a step of degrees is a difference, not a temperature") {
        const Vary vary = parse_vary("site.outdoor=-10 °C, 5 °C");
        CHECK(vary.values.size() == 2);
        CHECK(parse_vary("site.room=10°C:20°C:5°C").values.size() == 3);
    }

    TEST_CASE("a list is told by commas, or by semicolons where values hold commas") {
        CHECK(parse_vary("riser.lining=board, bricks").values ==
              std::vector<std::string>{"board", "bricks"});
        CHECK(parse_vary("riser.lining=25 mm aes_board, 1 mm mild_steel; bricks").values.size() ==
              2);
    }

    TEST_CASE("what can't be a variation is refused with the reason") {
        CHECK(refusal("riser.tup=1m:2m:1m").find("riser.top") != std::string::npos);
        CHECK(refusal("riser.top").find("KEY=FROM:TO:STEP") != std::string::npos);
        CHECK(refusal("riser.top=900mm:500mm:50mm").find("goes up") != std::string::npos);
        CHECK(refusal("riser.top=500mm:900mm:0mm").find("goes up") != std::string::npos);
        CHECK(refusal("riser.top=500mm:900mm:0.0001mm").find("million") != std::string::npos);
        CHECK(refusal("riser.top=500mm,,700mm").find("empty") != std::string::npos);
        CHECK(refusal("riser.top=500:900:50").find("riser.top") != std::string::npos);
        CHECK_THROWS_AS(grid_of({parse_vary("riser.top=500mm:900mm")}), InputError);
        CHECK_THROWS_AS(sample_of({}, 3, 1), InputError);
    }

    TEST_CASE("several keys make every combination, the last one moving fastest") {
        const auto grid = grid_of(
            {parse_vary("riser.top=500mm,600mm"), parse_vary("flue.stack.length=1m,2m,3m")});
        REQUIRE(grid.size() == 6);
        CHECK(grid[1].settings[0].value == "500mm");
        CHECK(grid[1].settings[1].value == "2m");
        CHECK(grid[3].settings[0].value == "600mm");
        CHECK(grid[3].settings[1].value == "1m");
        CHECK(grid_of({}).size() == 1);
    }

    TEST_CASE("a sample lies in its span, fills it evenly, and does not depend on its size") {
        const std::vector<Vary> spans{parse_vary("riser.top=500mm:900mm"),
                                      parse_vary("flue.stack.length=1m:3m")};
        const auto small = sample_of(spans, 16, 7), large = sample_of(spans, 64, 7);
        std::set<int> eighths;
        for (std::size_t i = 0; i < small.size(); ++i) {
            CHECK(small[i].settings[0].value == large[i].settings[0].value);
            CHECK(small[i].settings[1].value == large[i].settings[1].value);
            CHECK(metres(small[i]) >= 0.5);
            CHECK(metres(small[i]) <= 0.9);
            eighths.insert(static_cast<int>((metres(small[i]) - 0.5) / 0.05));
        }
        CHECK(eighths.size() >= 7);
        CHECK(sample_of(spans, 16, 8)[3].settings[0].value != small[3].settings[0].value);
    }

    TEST_CASE("a key given twice is refused") {
        CHECK(parse_varies({"riser.top=500mm,600mm", "riser.bore=100mm,120mm"}).size() == 2);
        CHECK_THROWS_WITH_AS(parse_varies({"riser.top=500mm,600mm", "riser.top = 1m:2m:1m"}),
                             doctest::Contains("riser.top is varied already"), InputError);
    }

    TEST_CASE("a range is one wherever a figure stands, also in what may change in time") {
        const Vary outdoor = parse_vary("site.outdoor=-10°C:20°C:15°C");
        CHECK(outdoor.values == std::vector<std::string>{"-10 °C", "5 °C", "20 °C"});
        CHECK(parse_vary("site.outdoor=\u221210°C:20°C:15°C").values == outdoor.values);
        CHECK(parse_vary("site.outdoor=14°F:68°F:27°F").values == outdoor.values);
        const auto span = parse_vary("site.outdoor=-10°C:20°C").span;
        REQUIRE(span);
        CHECK(span->first == doctest::Approx(263.15));
        CHECK(parse_vary("site.gust=0m/s:10m/s:5m/s").values.size() == 3);
        CHECK(parse_vary("schedule.damper=50%:100%:25%").values.size() == 3);
        CHECK(parse_vary("load.main.at=10min:30min:10min").values ==
              std::vector<std::string>{"10 min", "20 min", "30 min"});
        CHECK(parse_vary("load.main.at=19:30,20:00").values ==
              std::vector<std::string>{"19:30", "20:00"});
        CHECK(parse_vary("load.main.at=19:30").values == std::vector<std::string>{"19:30"});
        CHECK(parse_vary("burn.lit_at=19:30,20:00").values.size() == 2);
        CHECK(parse_vary("site.outdoor=[[\"19:30\", \"5 °C\"], [\"20:00\", \"0 °C\"]]; 5°C")
                  .values.size() == 2);
    }

    TEST_CASE("what is counted takes no half steps") {
        CHECK(refusal("load.main.pieces=2:4:0.5").find("whole numbers") != std::string::npos);
        CHECK(refusal("load.main.pieces=1.5:4:1").find("whole numbers") != std::string::npos);
        CHECK(refusal("load.main.pieces=1:4.5").find("whole numbers") != std::string::npos);
        CHECK(parse_vary("load.main.pieces=2:4:1").values.size() == 3);
    }

    TEST_CASE("a decimal comma parts no values, it is refused") {
        CHECK(refusal("port.width=62,5mm").find("write a decimal point") != std::string::npos);
        CHECK(refusal("port.width=62,5mm:80mm:5mm").find("decimal point") != std::string::npos);
        CHECK(refusal("site.outdoor=2,5°C").find("write a decimal point") != std::string::npos);
        CHECK(parse_vary("load.main.pieces=1,2,3").values.size() == 3);
        CHECK(parse_vary("port.width=60mm,90mm").values.size() == 2);
    }
}
