#pragma once

#include <string_view>

namespace drawwell {

/// Text of a file of cli/report/web/ as compiled in ("page.html"), or of the charting library
/// ("dygraph.min.js"); empty if there is none.
std::string_view web_template(std::string_view name);

}  // namespace drawwell
