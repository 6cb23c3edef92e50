#pragma once

namespace drawwell {

// Versions of what drawwell writes and others, or a later drawwell, read. DEVELOPERS.md says when
// each is raised, and a test tells of `model_version` that it must be.

/// Of the layout of a burn's result: its attributes, groups, units and what they mean. Every older
/// layout is still read.
inline constexpr int result_schema_version = 1;
/// Of states, cells and keys: what a burn that goes on must have in common with the earlier one,
/// and the rows of a study with each other.
inline constexpr int model_version = 1;
/// Of the layout of a comparison's result.
inline constexpr int comparison_schema_version = 1;
/// Of the lines of a journal.
inline constexpr int journal_schema_version = 1;
/// Of the columns of a table, in the mark of its rows.
inline constexpr int table_schema_version = 1;
/// Of what `--json` prints, by every command.
inline constexpr int json_schema_version = 1;

}  // namespace drawwell
