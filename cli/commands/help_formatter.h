#pragma once

#include <memory>

namespace CLI {
class FormatterBase;
}

namespace drawwell {

/// Help in lines of a page's width, what an option does beside it or below where it is long.
std::shared_ptr<CLI::FormatterBase> help_formatter();

}  // namespace drawwell
