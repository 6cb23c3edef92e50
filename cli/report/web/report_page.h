#pragma once

#include <span>
#include <string>
#include <string_view>

#include "cli/report/web/page_run.h"

namespace drawwell {

/// As many burns as lines can be told apart by their dashes.
inline constexpr std::size_t most_runs = 4;

/// Burns as one HTML page that needs nothing else: the verdict first, then answers, heat, section,
/// plate, figures over time, cautions, all figures and the stove file. Several burns are laid over
/// one another, and their answers stand beside each other with the difference from the first. It
/// reads without JavaScript as well; with it, figures are zoomed and the section follows the time.
std::string report_page(std::span<const PageRun> runs);

/// A template with every `{{name}}` replaced by what `part(name)` gives.
template <class Part>
std::string filled(std::string_view text, const Part& part) {
    std::string page;
    for (;;) {
        const std::size_t open = text.find("{{"), close = text.find("}}", open);
        if (open == std::string_view::npos || close == std::string_view::npos)
            return page + std::string(text);
        page += text.substr(0, open);
        page += part(text.substr(open + 2, close - open - 2));
        text.remove_prefix(close + 2);
    }
}

}  // namespace drawwell
