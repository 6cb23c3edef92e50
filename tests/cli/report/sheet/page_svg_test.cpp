#include "cli/report/sheet/page_svg.h"

#include <doctest/doctest.h>

#include <vector>

#include "tests/cli/report/svg_reading.h"

using namespace drawwell;

namespace {

std::vector<PaperPage> two_pages() {
    PaperPage page{210, 297, {{{{10, 10}, {110, 10}}}}, {{{10, 20}, "5 < 6 & \"so\""}}};
    return {page, page};
}

bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_SUITE("cli/report/sheet/page_svg") {
    TEST_CASE("a page is as large as its paper, a millimetre a unit") {
        const std::string svg = page_svg(two_pages().front(), "a <title>");
        CHECK(well_formed(svg));
        CHECK(contains(svg, "width=\"210mm\" height=\"297mm\" viewBox=\"0 0 210 297\""));
        CHECK(contains(svg, "10.000,10.000 110.000,10.000"));
        CHECK(contains(svg, "5 &lt; 6 &amp;"));
    }

    TEST_CASE("pages stand under one another in one SVG") {
        const std::string svg = pages_svg(two_pages(), "t");
        CHECK(well_formed(svg));
        CHECK(contains(svg, "height=\"602mm\""));  // two of 297 and 8 between
    }

    TEST_CASE("HTML holds a drawing for each page, breaks between them and fetches nothing") {
        const std::string html = pages_html(two_pages(), "t");
        CHECK(contains(html, "size: 210mm 297mm"));
        CHECK(contains(html, "break-after: page"));
        std::size_t count = 0;
        for (std::size_t at = html.find("<svg "); at != std::string::npos;
             at = html.find("<svg ", at + 1))
            ++count;
        CHECK(count == 2);
        CHECK_FALSE(contains(html, "src="));
        CHECK_FALSE(contains(html, "href="));
    }
}
