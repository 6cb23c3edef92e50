#include "cli/read/several_problems.h"

#include "cli/read/visible_text.h"

namespace drawwell {
namespace {

std::string joined(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines)
        text += (&line == &lines.front() ? "" : "\n") + visible(line);
    return text;
}

}  // namespace

SeveralProblems::SeveralProblems(const std::vector<std::string>& lines)
    : InputError(joined(lines)) {}

std::string error_text(const std::exception& error) {
    const bool several = dynamic_cast<const SeveralProblems*>(&error) != nullptr;
    return several ? visible_lines(error.what()) : visible(error.what());
}

}  // namespace drawwell
