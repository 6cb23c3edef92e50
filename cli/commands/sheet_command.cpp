#include "cli/commands/sheet_command.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <array>
#include <filesystem>
#include <iostream>
#include <memory>
#include <optional>
#include <vector>

#include "cli/commands/stove_request.h"
#include "cli/commands/targets.h"
#include "cli/commands/write_pdf.h"
#include "cli/read/read_stove.h"
#include "cli/read/visible_text.h"
#include "cli/report/pending_file.h"
#include "cli/report/sheet/order_of_work.h"
#include "cli/report/sheet/page_svg.h"
#include "cli/report/sheet/stove_sheet.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

namespace fs = std::filesystem;

struct SheetOptions {
    StoveRequest stove;
    std::string output;
    std::string paper = "A4";
    SheetHead head{.author = {}, .date = {}, .mark = {}};  // empty: as the file says
    std::optional<std::size_t> page;
    bool no_templates = false;
    bool force = false;
    bool quiet = false;
};

enum class SheetKind { html, svg, pdf };

SheetKind kind_of(const fs::path& file) {
    const std::string ending = file.extension().string();
    if (ending == ".html" || ending == ".htm") return SheetKind::html;
    if (ending == ".svg") return SheetKind::svg;
    if (ending == ".pdf") return SheetKind::pdf;
    throw InputError(fmt::format(
        "-o {}: a sheet is written as .html, .svg or .pdf; the name's ending says which",
        file.string()));
}

/// What the options say, and else the file.
SheetHead head_of(const SheetOptions& options, const RequestedStove& requested) {
    std::vector<Override> overrides;
    for (const std::string& set : options.stove.sets) overrides.push_back(parse_override(set));
    SheetHead head = read_sheet_note(requested.file.text, requested.file.name, overrides,
                                     requested.library, requested.file.read_file);
    const auto take = [](const std::string& said, std::string& into) {
        if (!said.empty()) into = said;
    };
    take(options.head.author, head.author);
    take(options.head.date, head.date);
    take(options.head.mark, head.mark);
    return head;
}

void sheet(const SheetOptions& options) {
    const RequestedStove requested = read_requested(options.stove);
    const fs::path target =
        result_target(options.output, options.stove.file, "-sheet.html", "sheet.html");
    const SheetKind kind = kind_of(target);
    check_outputs(std::array{Output{"-o", target, FileKind::sheet}}, requested.inputs,
                  options.force);
    if (kind == SheetKind::pdf) check_pdf_tool();
    const Stove& stove = requested.stove;
    std::vector<PaperPage> pages =
        stove_sheet(stove, requested.library,
                    {.paper = options.paper == "Letter" ? paper_letter : paper_a4,
                     .file = fs::path(requested.record.stove_name).filename().string(),
                     .templates = !options.no_templates,
                     .head = head_of(options, requested)});
    if (options.page) {
        if (*options.page < 1 || *options.page > pages.size())
            throw InputError(
                fmt::format("--page {}: the sheet has pages 1 to {}", *options.page, pages.size()));
        pages = {pages[*options.page - 1]};
    }
    const std::string title = stove.title + ", sheet to build from";
    switch (kind) {
        case SheetKind::html:
            write_whole(target, pages_html(pages, title));
            break;
        case SheetKind::svg:
            write_whole(target, pages_svg(pages, title));
            break;
        case SheetKind::pdf:
            write_pdf(target, pages, title);
            break;
    }
    if (options.quiet) return;
    std::cout << fmt::format("{} written, {} pages of {}; print at full size (100 %)\n",
                             visible(target.string()), pages.size(), options.paper);
    for (const std::string& remark : drawing_remarks(stove))
        std::cout << "  - " << visible(remark) << "\n";
}

}  // namespace

void add_sheet_command(CLI::App& app) {
    const auto options = std::make_shared<SheetOptions>();
    CLI::App* command = app.add_subcommand(
        "sheet", "Pages to build the stove from: drawings, cut list, full-size templates");
    add_stove_options(*command, options->stove);
    command->add_option("-o,--output", options->output,
                        "where to write, as .html, .svg or .pdf; default: the stove file's name "
                        "with -sheet.html, here");
    command->add_option("--paper", options->paper, "A4 or Letter; default: A4")
        ->transform(CLI::IsMember({"A4", "Letter"}, CLI::ignore_case));
    command->add_option("--author", options->head.author, "who drew it")->type_name("NAME");
    command->add_option("--date", options->head.date, "when, as you write it")->type_name("DATE");
    command
        ->add_option(
            "--mark", options->head.mark,
            "what the dimensions are worth: drawn, built or measured; these three default to "
            "[sheet] of the stove file")
        ->check(CLI::IsMember({"drawn", "built", "measured"}));
    command->add_option("--page", options->page, "write this page alone, counted from 1")
        ->type_name("N");
    command->add_flag("--no-templates", options->no_templates, "leave out the full-size templates");
    command->add_flag("--force", options->force, "replace a file that is no sheet of drawwell");
    command->add_flag("--quiet", options->quiet, "say nothing");
    command->footer(
        "Section and plan to scale with their dimensions in millimetres and inches, areas along\n"
        "the gas's way, volumes, cut list, holes, materials and masses, order of work, cautions,\n"
        "and templates to cut by at full size. Nothing is burned.\n\n"
        "A PDF is made by rsvg-convert (apt install librsvg2-bin) or chromium. An earlier sheet\n"
        "is replaced, other files only with --force.\n\n"
        "Example:\n"
        "  drawwell sheet kitchen.toml -o kitchen.pdf --paper Letter\n"
        "  drawwell sheet kitchen.toml --author 'M. Smith' --mark built\n");
    command->callback([options] { sheet(*options); });
}

}  // namespace drawwell
