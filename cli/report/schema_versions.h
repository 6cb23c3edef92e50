#pragma once

namespace drawwell {

// Versions of what drawwell writes and reads again. DEVELOPERS.md says when each is raised.

/// Of the columns of tables; stands in the mark of every row.
inline constexpr int table_schema_version = 1;

}  // namespace drawwell
