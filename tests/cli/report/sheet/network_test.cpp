#include <doctest/doctest.h>

#include <filesystem>

#include "tests/cli/report/sheet/compare_gas_way.h"
#include "tests/cli/report/sheet/compare_measures.h"

// What a sheet says is held against the network that a burn of the same stove is computed with, not
// against the stove that both were made from.

using namespace drawwell;
using namespace drawwell::tests;

namespace {

void compare(const Stove& stove) {
    const Built built(stove);
    compare_areas(built);
    compare_volumes(built);
    compare_flue(built);
    compare_measures(built);
    compare_pieces(built);
}

}  // namespace

TEST_SUITE("cli/report/sheet/network") {
    TEST_CASE("every sample's sheet has the dimensions that its burn is computed with") {
        int seen = 0;
        const std::filesystem::path folder = std::string(DRAWWELL_SOURCES) + "/data/stoves";
        for (const auto& file : std::filesystem::directory_iterator(folder)) {
            CAPTURE(file.path().string());
            compare(sample_stove(file.path().stem().string()));
            ++seen;
        }
        CHECK(seen >= 10);
    }

    TEST_CASE("sheets of random stoves have the dimensions that their burns are computed with") {
        int seen = 0;
        for (std::uint32_t i = 0; i < 300; ++i) {
            const auto stove = made_up_stove(i);
            if (!stove) continue;
            CAPTURE(i);
            compare(*stove);
            ++seen;
        }
        CHECK(seen >= 270);
    }

    TEST_CASE("sheets without a flue or with two bells have the dimensions of their burns") {
        compare(sheet_stove(bare_stove));
        Stove open = sample_stove("workshop");
        open.flue.sections.clear();
        compare(open);
        Stove bells = sample_stove("workshop-bell");
        Bell second = std::get<Bell>(bells.fittings.front());
        second.name = "second";
        second.opening = 0.25;
        second.inlet = 0.5;
        bells.fittings.emplace_back(second);
        compare(bells);
        Stove short_cut = sample_stove("workshop-level-run");
        short_cut.bypass->length = 0.1;  // shorter than it has to go down
        compare(short_cut);
    }
}
