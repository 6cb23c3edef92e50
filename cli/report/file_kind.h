#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace drawwell {

/// What a file holds, as far as drawwell can answer for it.
enum class FileKind {
    other,          // the user's or another program's
    stove,          // a stove file: the user's, also if `new` or `fit --save` wrote it
    result,         // of `burn` (HDF5)
    comparison,     // of `compare -o` (HDF5)
    series_table,   // of `burn --csv` and `export` (CSV)
    draw_table,     // of `draw --csv`
    compare_table,  // of `compare --csv`
    figure,         // of `plot`, `draw`, `explain`, `fit` (SVG)
    page,           // of `report` (HTML)
    sheet,          // of `sheet` (HTML, SVG, PDF)
    journal         // rows of a study that is not done, which `Journal` itself guards
};

/// What the file holds, by the mark that every file of drawwell's carries: the one judge of whether
/// it may be replaced. `other` wherever there is doubt: no mark, an edited table, a file that
/// cannot be read, a device or pipe (which are not opened). Reads little of a file that is not
/// drawwell's, however large.
FileKind kind_of_file(const std::filesystem::path& file);

/// A kind in words: "a table of series".
std::string_view kind_in_words(FileKind kind);

// The marks, as the writers put them in.

/// `program` of an HDF5 file's root.
inline constexpr std::string_view program_mark = "drawwell";
/// `content` of a comparison's root.
inline constexpr std::string_view comparison_mark = "comparison";
/// Begins the second line of a figure, and the description or generator of a page or sheet; the
/// program's version follows.
inline constexpr std::string_view figure_mark = "<metadata>drawn by drawwell ";
inline constexpr std::string_view page_mark = "drawwell report ";
inline constexpr std::string_view sheet_mark = "drawwell sheet ";
/// Begins the first line of a journal, its version follows.
inline constexpr std::string_view journal_mark = "{\"drawwell_rows\":";
/// Head of the last column of every table. Readers of tables pass it over.
inline constexpr std::string_view table_mark = "drawwell_table";
/// What stands in that column in every row: which table it is and its version, `series 1`.
std::string table_mark_of(FileKind table);

}  // namespace drawwell
