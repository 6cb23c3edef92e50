#include "cli/report/sheet/templates.h"

#include <doctest/doctest.h>

#include <cmath>

#include "cli/report/sheet/template_pages.h"
#include "tests/cli/report/sheet/sheet_stoves.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

double length_of(const PaperLine& line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.points.size(); ++i)
        sum += std::hypot(line.points[i].x - line.points[i - 1].x,
                          line.points[i].y - line.points[i - 1].y);
    return sum;
}

/// Length [mm] of what is cut or folded on all pages, the check lines left out.
double drawn_length(const Template& shape, PaperSize paper, std::size_t* pages = nullptr) {
    SheetFlow flow(paper, "t");
    add_template(flow, shape);
    double sum = 0;
    const std::vector<PaperPage> all = std::move(flow).finish();
    std::size_t tiles = 0;
    for (const PaperPage& page : all) {
        double on_page = 0;
        for (const PaperLine& line : page.lines)
            if (line.pen == Pen::cut || line.pen == Pen::fold) on_page += length_of(line);
        if (on_page > 0) {
            ++tiles;
            on_page -= 100 + 2 * 4;
        }
        sum += on_page;
    }
    if (pages) *pages = tiles;
    return sum;
}

double length_of(const Template& shape) {
    double sum = 0;
    for (const TemplateLine& line : shape.lines) {
        PaperLine run{line.points};
        if (line.closed) run.points.push_back(line.points.front());
        sum += length_of(run);
    }
    return sum;
}

}  // namespace

TEST_SUITE("cli/report/sheet/templates") {
    TEST_CASE("every page of a template has a line of exactly 100 mm to check the print by") {
        SheetFlow flow(paper_a4, "t");
        for (const Template& shape : templates_for(sample_stove("workshop")))
            add_template(flow, shape);
        for (const PaperPage& page : std::move(flow).finish()) {
            bool template_page = false, checked = false;
            for (const PaperLine& line : page.lines) {
                template_page = template_page || line.pen == Pen::cut;
                checked = checked || (line.pen == Pen::cut && line.points.size() == 2 &&
                                      std::abs(length_of(line) - 100) < 1e-9);
            }
            CHECK(checked == template_page);
        }
    }

    TEST_CASE("tiles put together show each line once and whole, at full size") {
        for (const char* name : {"allotment-kitchen", "workshop"})
            for (const PaperSize paper : {paper_a4, paper_letter})
                for (const Template& shape : templates_for(sample_stove(name))) {
                    CAPTURE(shape.title);
                    std::size_t pages = 0;
                    const double drawn = drawn_length(shape, paper, &pages);
                    CHECK(pages >= 1);
                    // Edges that lie along a tile's own edge may show on both tiles.
                    CHECK(drawn == doctest::Approx(length_of(shape)).epsilon(1e-6));
                }
    }

    TEST_CASE("the port is drawn as wide and high as it is") {
        const auto all = templates_for(sample_stove("allotment-kitchen"));
        REQUIRE(all.front().title == "Template: port");
        CHECK(all.front().width == doctest::Approx(70));
        CHECK(all.front().height == doctest::Approx(110));
    }

    TEST_CASE("a quarter of the rings lies between the axis and the largest radius") {
        const auto all = templates_for(sample_stove("workshop"));
        const Template& rings = all[1];
        CHECK(rings.width == doctest::Approx((570 - 2.4) / 2));
        CHECK(rings.height == doctest::Approx((570 - 2.4) / 2));
        CHECK(length_of(PaperLine{rings.lines.front().points}) ==
              doctest::Approx(100 * std::acos(0.0)).epsilon(1e-4));  // a quarter of pi times 200
    }

    TEST_CASE("a quarter's lines stay a quarter, from one axis to the other") {
        for (const Stove& stove :
             {sample_stove("workshop"), sample_stove("workshop", {"riser.section=octagonal"}),
              sheet_stove("[riser]\nwidth = \"100 mm\"\ndepth = \"120 mm\"\ntop = \"1 m\"\n"
                          "[heat]\npower = \"2 kW\"\n")}) {
            const auto all = templates_for(stove);
            for (const TemplateLine& line : all[stove.port ? 1 : 0].lines) {
                if (line.name.empty()) continue;
                CHECK(line.points.front().y == doctest::Approx(0));
                CHECK(line.points.back().x == doctest::Approx(0));
                for (std::size_t i = 1; i < line.points.size(); ++i) {
                    CHECK(line.points[i].x <= line.points[i - 1].x + 1e-9);
                    CHECK(line.points[i].y >= line.points[i - 1].y - 1e-9);
                }
            }
        }
    }

    TEST_CASE("an octagon's staves are drawn with the joints between them") {
        const auto all = templates_for(sample_stove("workshop", {"riser.section=octagonal"}));
        const Template& staves = all[1];
        int joints = 0;
        for (const TemplateLine& line : staves.lines)
            if (line.name.empty()) {
                ++joints;
                // From corner to corner, through 51 mm of wall at 22.5 degrees.
                CHECK(length_of(PaperLine{line.points}) ==
                      doctest::Approx(51 / std::cos(std::acos(-1.0) / 8)));
            }
        CHECK(joints == 2);  // of eight, a quarter
    }

    TEST_CASE("the flue outlet is unrolled: wider along the round than it is high") {
        const auto all = templates_for(sample_stove("allotment-kitchen"));
        const Template& outlet = all.back();
        CHECK(outlet.height == doctest::Approx(126.4));
        // 2 x 200 mm x asin(63.2 / 200).
        CHECK(outlet.width == doctest::Approx(400 * std::asin(63.2 / 200)));
        CHECK(outlet.width > outlet.height);
    }
}
