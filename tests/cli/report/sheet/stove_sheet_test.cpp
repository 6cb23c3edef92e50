#include "cli/report/sheet/stove_sheet.h"

#include <doctest/doctest.h>

#include <fmt/format.h>

#include <algorithm>

#include "cli/report/sheet/order_of_work.h"
#include "tests/cli/read/small_stove.h"
#include "tests/cli/report/sheet/sheet_stoves.h"

using namespace drawwell;
using namespace drawwell::tests;

namespace {

bool holds(const PaperPage& page, const PaperBox& box) {
    return box.left >= 0 && box.top >= 0 && box.right <= page.width && box.bottom <= page.height;
}

/// What is wrong with a page's layout, the first of it; empty: nothing.
std::string fault(const PaperPage& page) {
    for (std::size_t i = 0; i < page.texts.size(); ++i) {
        const PaperText& text = page.texts[i];
        const PaperBox box = box_of(text);
        if (!holds(page, box)) return fmt::format("\"{}\" leaves the page", text.text);
        for (std::size_t k = i + 1; k < page.texts.size(); ++k)
            if (overlap(box, box_of(page.texts[k])))
                return fmt::format("\"{}\" meets \"{}\"", text.text, page.texts[k].text);
        for (const PaperLine& line : page.lines) {
            const std::size_t sides = line.points.size() - (line.closed ? 0 : 1);
            for (std::size_t s = 0; s < sides; ++s)
                if (crosses(line.points[s], line.points[(s + 1) % line.points.size()], box))
                    return fmt::format("a line crosses \"{}\"", text.text);
        }
    }
    for (const PaperLine& line : page.lines) {
        if (line.points.size() < 2) return "a line of one point";
        for (const PaperPoint& point : line.points)
            if (!holds(page, {point.x, point.y, point.x, point.y}))
                return fmt::format("a line leaves the page at {:.1f}, {:.1f}", point.x, point.y);
    }
    return {};
}

std::string fault(const Stove& stove, PaperSize paper, const SheetHead& head = {}) {
    const std::vector<PaperPage> pages =
        stove_sheet(stove, sheet_library(), {.paper = paper, .file = "s.toml", .head = head});
    for (std::size_t i = 0; i < pages.size(); ++i)
        if (const std::string found = fault(pages[i]); !found.empty())
            return fmt::format("page {}: {}", i + 1, found);
    return {};
}

std::string all_text(const std::vector<PaperPage>& pages) {
    std::string all;
    for (const PaperPage& page : pages)
        for (const PaperText& text : page.texts) all += text.text + "\n";
    return all;
}

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/report/sheet/stove_sheet") {
    TEST_CASE("no text meets a line, a text or the page's edge, whatever the stove") {
        int drawn = 0;
        for (std::uint32_t i = 0; i < 300; ++i) {
            const auto stove = made_up_stove(i);
            if (!stove) continue;
            ++drawn;
            CAPTURE(i);
            CHECK(fault(*stove, i % 2 == 0 ? paper_a4 : paper_letter) == "");
        }
        CHECK(drawn >= 270);  // at most one in ten may be refused
    }

    TEST_CASE("the samples' sheets are as tidy, on either paper") {
        for (const char* name :
             {"allotment-kitchen", "kitchen-window", "market-griddle", "workshop", "workshop-bell",
              "workshop-bench", "workshop-damp-bench", "workshop-ducted", "workshop-kitchen",
              "workshop-level-run"})
            for (const PaperSize paper : {paper_a4, paper_letter}) {
                CAPTURE(name);
                CHECK(fault(sample_stove(name), paper) == "");
            }
        CHECK(fault(sheet_stove(bare_stove), paper_a4) == "");
        CHECK(fault(sheet_stove(std::string(small_stove)), paper_letter) == "");
        CHECK(fault(sample_stove("workshop", {"riser.section=octagonal", "plate.hole=150 mm",
                                              "plate.hole_cover=8 mm"}),
                    paper_a4) == "");
    }

    TEST_CASE("no figure is cut short for want of room, be the flue as high as it may") {
        const SheetFrame frame{.paper = paper_a4, .file = {}, .templates = false};
        // Lengths a millimetre apart: some of them are as long to write as inches may be.
        for (int length = 9690; length < 9702; ++length) {
            const std::string set = fmt::format("flue.stack.length={} mm", length);
            for (const PaperPage& page :
                 stove_sheet(sample_stove("allotment-kitchen", {set}), sheet_library(), frame))
                for (const PaperText& text : page.texts) {
                    CAPTURE(text.text);
                    const bool figure = text.text.front() >= '0' && text.text.front() <= '9';
                    CHECK_FALSE((figure && text.text.ends_with("\u2026")));
                }
        }
    }

    TEST_CASE("names of any length and letters keep their place") {
        const std::string name(300, 'W');
        const Stove stove = sample_stove("allotment-kitchen", {"title=" + name});
        const SheetHead head{.author = name + " " + name,
                             .date = "\u65e5\u672c\u8a9e\u65e5\u672c\u8a9e"};
        CHECK(fault(stove, paper_a4, head) == "");
    }

    TEST_CASE("a layout that is spoiled is seen") {
        PaperPage page{100, 100, {}, {{{10, 50}, "a text"}}};
        CHECK(fault(page) == "");
        page.lines = {{{{0, 49}, {100, 49}}}};
        CHECK(contains(fault(page), "a line crosses"));
        page.lines.clear();
        page.texts.push_back({{12, 51}, "another"});
        CHECK(contains(fault(page), "meets"));
        page.texts = {{{98, 50}, "a text"}};
        CHECK(contains(fault(page), "leaves the page"));
    }

    TEST_CASE("it says who drew it, when, and what the figures are worth") {
        const Stove silent = sample_stove("allotment-kitchen");
        const SheetFrame frame{.paper = paper_a4, .file = "kitchen.toml", .templates = false};
        const std::string plain = all_text(stove_sheet(silent, sheet_library(), frame));
        CHECK(contains(plain, "drawn, not built yet"));
        CHECK(contains(plain, "not said"));
        CHECK(contains(plain, "kitchen.toml"));
        SheetFrame marked = frame;
        marked.head = {.author = "M. Smith", .date = "May 2026", .mark = "measured"};
        const std::string text = all_text(stove_sheet(silent, sheet_library(), marked));
        CHECK(contains(text, "M. Smith"));
        CHECK(contains(text, "May 2026"));
        CHECK(contains(text, "measured on the built stove"));
    }

    TEST_CASE("dimensions stand in millimetres and in sixteenths of an inch") {
        const SheetFrame frame{.paper = paper_a4, .file = {}, .templates = false};
        const std::string text =
            all_text(stove_sheet(sample_stove("workshop"), sheet_library(), frame));
        CHECK(contains(text, "1150 mm\n45 1/4 in\n"));            // plate's underside: 45.28
        CHECK(contains(text, "570 mm\n22 7/16 in\n"));            // barrel: 22.44
        CHECK(contains(text, "plate, cooking face\n1158 mm\n"));  // 8 mm over its underside
    }

    TEST_CASE("every sheet warns of carbon monoxide on its first page and in full at the end") {
        const SheetFrame frame{.paper = paper_a4, .file = {}, .templates = false};
        for (const Stove& stove : {sample_stove("workshop"), sheet_stove(bare_stove)}) {
            const std::vector<PaperPage> pages = stove_sheet(stove, sheet_library(), frame);
            CHECK(contains(all_text({pages.front()}), "carbon monoxide kills"));
            const std::string all = all_text(pages);
            CHECK(contains(all, "Hang a carbon monoxide alarm"));
            CHECK(contains(all, "zinc fumes"));
        }
    }

    TEST_CASE("the gas's way to the open air is drawn with the height of every end") {
        const SheetFrame frame{.paper = paper_a4, .file = {}, .templates = false};
        const std::string bell =
            all_text(stove_sheet(sample_stove("workshop-bell"), sheet_library(), frame));
        CHECK(contains(bell, "The gas's way to the open air"));
        CHECK(contains(bell, "floor of the bell, "));
        const std::string plain =
            all_text(stove_sheet(sheet_stove(bare_stove), sheet_library(), frame));
        CHECK_FALSE(contains(plain, "open air"));
    }

    TEST_CASE(
        "without a flue the outlet is on the sheet and the first caution says what it means") {
        const SheetFrame frame{.paper = paper_a4, .file = {}, .templates = true};
        Stove open = sample_stove("workshop");
        open.flue.sections.clear();
        CHECK(fault(open, paper_a4) == "");
        const std::vector<PaperPage> pages = stove_sheet(open, sheet_library(), frame);
        CHECK(contains(all_text({pages.front()}), "This stove has no flue: smoke"));
        const std::string text = all_text(pages);
        CHECK(contains(text, "open outlet, centre\n385 mm\n"));
        CHECK(contains(text, "Template: open outlet"));
        CHECK(contains(text, "\ndiameter 200 mm\n"));
        const std::size_t cautions = text.find("\nCautions\n");
        REQUIRE(cautions != std::string::npos);
        const std::size_t first = text.find("This stove has no flue", cautions);
        CHECK(first < text.find("Carbon monoxide kills unnoticed", cautions));
        CHECK(contains(all_text(stove_sheet(sheet_stove(bare_stove), sheet_library(), frame)),
                       "come out at the top of the riser"));
        for (const char* name : {"workshop", "workshop-bell"})
            CHECK_FALSE(contains(all_text(stove_sheet(sample_stove(name), sheet_library(), frame)),
                                 "has no flue"));
    }

    TEST_CASE("a bell's sheet lists the connector and cuts the holes that it goes through") {
        const SheetFrame frame{.paper = paper_a4, .file = {}, .templates = true};
        const std::string text =
            all_text(stove_sheet(sample_stove("workshop-bell"), sheet_library(), frame));
        // 300 mm inside, 1.2 mm of the barrel's sheet round it.
        CHECK(contains(text, "bell connector\n1\ndiameter 302.4 mm\n"));
        CHECK(contains(text, "into the bell, back\n1\ndiameter 302.4 mm\n"));
        // The stack of 200 mm, two sheets of 0.5 and 25 mm of blanket, leaves the bell.
        CHECK(contains(text, "out of the bell, back\n1\ndiameter 252 mm\n"));
        CHECK(contains(text, "connector into the bell, back\n"));
        CHECK(contains(text, "Template: bell connector"));
        // A hole that the barrel has no room for is remarked on.
        const std::vector<std::string> low =
            drawing_remarks(sample_stove("workshop-bell", {"flue.outlet=115 mm"}));
        CHECK(std::any_of(low.begin(), low.end(), [](const std::string& remark) {
            return contains(remark, "36.2 mm (1 7/16 in) below the barrel's foot");
        }));
    }
}
