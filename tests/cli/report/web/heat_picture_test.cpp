#include "cli/report/web/heat_picture.h"

#include <doctest/doctest.h>

#include "tests/cli/report/sample_run.h"
#include "tests/cli/report/svg_reading.h"

using namespace drawwell;

namespace {

double sum_of(const std::vector<HeatStream>& streams) {
    double sum = 0;
    for (const HeatStream& stream : streams) sum += stream.heat;
    return sum;
}

}  // namespace

TEST_SUITE("cli/report/web/heat_picture") {
    TEST_CASE("as much heat goes as was given, the flue's parts apart") {
        const HeatStreams streams = heat_streams(sample_summary());
        // The sample's books balance to the joule.
        CHECK(sum_of(streams.given) == doctest::Approx(52e6));
        CHECK(sum_of(streams.gone) == doctest::Approx(52e6));
        CHECK(streams.gone.size() == 4);
        CHECK(streams.gone[2].heat == doctest::Approx(13e6));
    }

    TEST_CASE("what goes up the flue is hot gas, steam and what did not burn") {
        Summary summary = sample_summary();
        summary.heat_up_flue_latent = 3e6;
        summary.heat_up_flue_unburnt = 2e6;
        const HeatStreams streams = heat_streams(summary);
        CHECK(sum_of(streams.gone) == doctest::Approx(52e6));
        const auto heat_of = [&](std::string_view name) {
            for (const HeatStream& stream : streams.gone)
                if (stream.name == name) return stream.heat;
            return 0.0;
        };
        CHECK(heat_of("up the flue, as steam") == doctest::Approx(3e6));
        CHECK(heat_of("up the flue, unburnt") == doctest::Approx(2e6));
    }

    TEST_CASE("walls that end colder give heat, and warmer air of the room brings some") {
        Summary summary = sample_summary();
        summary.heat_stored = -4e6;
        summary.heat_from_room_air = 2e6;
        summary.heat_to_room = 40e6;
        const HeatStreams streams = heat_streams(summary);
        REQUIRE(streams.given.size() == 3);
        CHECK(sum_of(streams.given) == doctest::Approx(58e6));
        CHECK(sum_of(streams.gone) == doctest::Approx(58e6));
    }

    TEST_CASE("the picture names each stream with its heat and share, and is sound XML") {
        const std::string svg = heat_picture(sample_summary());
        CHECK(well_formed(svg));
        CHECK(svg.find("to the room") != std::string::npos);
        CHECK(svg.find("29.0 MJ, 56 %") != std::string::npos);
        CHECK(count_of(svg, "<path style") == 4);
        CHECK(heat_picture(Summary{}).empty());
    }
}
