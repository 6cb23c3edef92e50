#include "cli/commands/new_command.h"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <array>
#include <iostream>
#include <memory>
#include <optional>

#include "cli/commands/targets.h"
#include "cli/read/starting_stove.h"
#include "cli/read/units.h"
#include "cli/read/visible_text.h"
#include "cli/report/pending_file.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

std::optional<double> option_value(const std::string& text, Quantity quantity,
                                   const std::string& option) {
    if (text.empty()) return {};
    try {
        return parse_quantity(text, quantity);
    } catch (const InputError& error) {
        throw InputError(fmt::format("{} {}: {}", option, text, error.what()));
    }
}

}  // namespace

std::string run_new(const NewRequest& request) {
    BuildersStock stock;
    stock.bore = option_value(request.bore, Quantity::length, "--bore");
    stock.drum_volume = option_value(request.drum, Quantity::volume, "--drum");
    std::string text = starting_stove(stock);
    if (request.file.empty()) return text;
    check_outputs(std::array{Output{"FILE", request.file, FileKind::stove}}, {}, request.force);
    write_whole(request.file, text);
    const std::string name = visible(request.file);
    return fmt::format("{} written; next: drawwell burn {}\n", name, name);
}

void add_new_command(CLI::App& app) {
    CLI::App* command = app.add_subcommand("new", "write a stove file to start from");
    auto request = std::make_shared<NewRequest>();
    command->add_option("FILE", request->file, "where to write it (default: standard output)");
    command->add_option("--bore", request->bore, "inside diameter of the riser, for example 125mm");
    command->add_option("--drum", request->drum, "volume of the drum that becomes the barrel: 60l");
    command->add_flag("--force", request->force, "replace FILE if it exists");
    command->callback([request] { std::cout << run_new(*request); });
}

}  // namespace drawwell
