#include "cli/commands/write_pdf.h"

#include <fmt/format.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <string>
#include <system_error>
#include <vector>

#include "cli/commands/run_tool.h"
#include "cli/report/pending_file.h"
#include "cli/report/sheet/page_svg.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

constexpr const char* light = "rsvg-convert";  // of Debian's librsvg2-bin
constexpr const char* heavy = "chromium";

/// A folder that is gone with everything in it when this is.
class PassingFolder {
  public:
    PassingFolder() {
        std::string name = (fs::temp_directory_path() / "drawwell-sheet-XXXXXX").string();
        if (!mkdtemp(name.data())) throw FileError("no folder for passing files in " + name);
        folder_ = name;
    }
    ~PassingFolder() {
        std::error_code ignored;
        fs::remove_all(folder_, ignored);
    }
    PassingFolder(const PassingFolder&) = delete;
    PassingFolder& operator=(const PassingFolder&) = delete;

    fs::path operator/(const std::string& name) const { return folder_ / name; }

  private:
    fs::path folder_;
};

}  // namespace

void check_pdf_tool() {
    if (!is_installed(light) && !is_installed(heavy))
        throw FileError(
            "a PDF needs rsvg-convert or chromium, and neither is installed: apt install "
            "librsvg2-bin; or write -o sheet.html and print that to a PDF");
}

void write_pdf(const fs::path& target, std::span<const PaperPage> pages, std::string_view title) {
    check_pdf_tool();
    const PassingFolder folder;
    PendingFile pending(target);
    std::vector<std::string> command;
    std::string tool = light;
    if (is_installed(light)) {
        command = {light, "--format", "pdf", "--output", pending.path().string()};
        for (std::size_t i = 0; i < pages.size(); ++i) {
            const fs::path page = folder / fmt::format("page-{}.svg", i + 1);
            write_whole(page, page_svg(pages[i], title));
            command.push_back(page.string());
        }
    } else {
        tool = heavy;
        const fs::path page = folder / "sheet.html";
        write_whole(page, pages_html(pages, title));
        command = {heavy,
                   "--headless",
                   "--no-pdf-header-footer",
                   "--user-data-dir=" + (folder / "profile").string(),
                   "--print-to-pdf=" + pending.path().string(),
                   page.string()};
        // As root its sandbox can't start; the page is our own.
        if (geteuid() == 0) command.insert(command.begin() + 1, "--no-sandbox");
    }
    if (run_tool(command) != 0 || fs::file_size(pending.path()) == 0)
        throw FileError(fmt::format("{} could not make the PDF {}", tool, target.string()));
    std::ofstream(pending.path(), std::ios::app | std::ios::binary) << pdf_origin();
    pending.commit();
}

}  // namespace drawwell
