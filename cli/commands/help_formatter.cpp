#include "cli/commands/help_formatter.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <string>

#include "cli/report/page_text.h"

namespace drawwell {
namespace {

constexpr std::size_t beside = 28;  // characters before what it does

class HelpFormatter : public CLI::Formatter {
  public:
    std::string make_option(const CLI::Option* option, bool positional) const override {
        return described(make_option_name(option, positional) + make_option_opts(option),
                         make_option_desc(option));
    }
    std::string make_subcommand(const CLI::App* command) const override {
        return described(command->get_name(), command->get_description());
    }

    std::string make_description(const CLI::App* command) const override {
        return reflowed(CLI::Formatter::make_description(command));
    }
    std::string make_footer(const CLI::App* command) const override {
        return reflowed(CLI::Formatter::make_footer(command));
    }

  private:
    /// Lines that begin at the margin are one paragraph; indented ones, commands, stand as they
    /// are.
    static std::string reflowed(const std::string& text) {
        std::string all, paragraph;
        const auto finish = [&] {
            if (!paragraph.empty()) all += wrapped("", paragraph, 0);
            paragraph.clear();
        };
        for (std::size_t at = 0; at < text.size();) {
            const std::size_t end = std::min(text.find('\n', at), text.size());
            const std::string line = text.substr(at, end - at);
            at = end + 1;
            if (!line.empty() && line.front() != ' ') {
                paragraph += (paragraph.empty() ? "" : " ") + line;
                continue;
            }
            finish();
            all += line + "\n";
        }
        finish();
        return all;
    }

    static std::string described(const std::string& name, const std::string& text) {
        const std::string lead = "  " + name;
        if (text.empty()) return lead + "\n";
        if (lead.size() + 2 > beside)
            return lead + "\n" + wrapped(std::string(beside, ' '), text, beside);
        return wrapped(lead + std::string(beside - lead.size(), ' '), text, beside);
    }
};

}  // namespace

std::shared_ptr<CLI::FormatterBase> help_formatter() {
    return std::make_shared<HelpFormatter>();
}

}  // namespace drawwell
