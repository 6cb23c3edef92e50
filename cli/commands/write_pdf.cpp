#include "cli/commands/write_pdf.h"

#include <fmt/format.h>
#include <unistd.h>

#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "cli/commands/run_folder.h"
#include "cli/commands/run_tool.h"
#include "cli/report/pending_file.h"
#include "cli/report/sheet/page_svg.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

constexpr const char* light = "rsvg-convert";  // of Debian's librsvg2-bin
constexpr const char* heavy = "chromium";

std::string content_of(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

}  // namespace

void check_pdf_tool() {
    if (!is_installed(light) && !is_installed(heavy))
        throw FileError(
            "a PDF needs rsvg-convert or chromium, and neither is installed: apt install "
            "librsvg2-bin; or write -o sheet.html and print that to a PDF");
}

void write_pdf(const fs::path& target, std::span<const PaperPage> pages, std::string_view title) {
    check_pdf_tool();
    RunFolder folder;
    const fs::path made = folder.place("sheet.pdf");
    std::vector<std::string> command;
    std::string tool = light;
    if (is_installed(light)) {
        command = {light, "--format", "pdf", "--output", made.string()};
        for (std::size_t i = 0; i < pages.size(); ++i) {
            const fs::path page = folder.place(fmt::format("page-{}.svg", i + 1));
            write_whole(page, page_svg(pages[i], title));
            command.push_back(page.string());
        }
    } else {
        tool = heavy;
        const fs::path page = folder.place("sheet.html");
        write_whole(page, pages_html(pages, title));
        command = {heavy,
                   "--headless",
                   "--no-pdf-header-footer",
                   "--user-data-dir=" + folder.place("profile").string(),
                   "--print-to-pdf=" + made.string(),
                   page.string()};
        // As root its sandbox can't start; the page is our own.
        if (geteuid() == 0) command.insert(command.begin() + 1, "--no-sandbox");
    }
    const int code = run_tool(command);
    std::string pdf = code == 0 ? content_of(made) : "";
    if (pdf.empty())
        throw FileError(fmt::format("{} could not make the PDF {}", tool, target.string()));
    write_whole(target, pdf += pdf_origin());
}

}  // namespace drawwell
