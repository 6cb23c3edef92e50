#include "cli/report/section/outline.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "cli/report/section/geometry.h"
#include "tests/cli/report/sheet/sheet_stoves.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

double most_y(const std::vector<CutBlock>& blocks, CutPart part) {
    double most = -1e9;
    for (const CutBlock& block : blocks)
        if (block.part == part) most = std::max(most, block.y2);
    return most;
}

}  // namespace

TEST_SUITE("cli/report/section/outline") {
    TEST_CASE("every block has an extent and a material that is known, whatever the stove") {
        for (std::uint32_t i = 0; i < 100; ++i) {
            const auto stove = made_up_stove(i);
            if (!stove) continue;
            CAPTURE(i);
            for (const CutBlock& block : cut_outline(*stove)) {
                CHECK(block.x2 > block.x1);
                CHECK(block.y2 > block.y1);
                if (!block.material.empty())
                    CHECK(sheet_library().materials.contains(std::string(block.material)));
            }
        }
    }

    TEST_CASE("parts stand at the heights of the file") {
        const Stove stove = sample_stove("workshop");
        const std::vector<CutBlock> blocks = cut_outline(stove);
        CHECK(most_y(blocks, CutPart::riser_wall) == stove.riser.top);
        CHECK(most_y(blocks, CutPart::feed_gas) == stove.feed->mouth);
        CHECK(most_y(blocks, CutPart::under_plate) == stove.plate->underside);
        CHECK(most_y(blocks, CutPart::plate) == stove.plate->underside + stove.plate->thickness);
        CHECK(most_y(blocks, CutPart::tunnel_gas) == stove.tunnel->height);
        CHECK(most_y(blocks, CutPart::space_round_riser) == stove.riser.top);
    }

    TEST_CASE("a hole leaves the plate in two, a cover lies in it") {
        const auto count = [](const Stove& stove, CutPart part) {
            const std::vector<CutBlock> blocks = cut_outline(stove);
            return std::count_if(blocks.begin(), blocks.end(),
                                 [&](const CutBlock& block) { return block.part == part; });
        };
        const Stove holed = sample_stove("market-griddle");
        CHECK(count(holed, CutPart::plate) == 2);
        CHECK(count(holed, CutPart::plate_cover) == 0);
        CHECK(count(sample_stove("workshop"), CutPart::plate) == 1);
        CHECK(count(sample_stove("workshop", {"plate.hole=150 mm", "plate.hole_cover=8 mm"}),
                    CutPart::plate_cover) == 1);
    }
}
