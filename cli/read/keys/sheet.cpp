#include "cli/read/keys/fields.h"

namespace drawwell {
namespace {

/// A member of what the file says of its sheet; it bears on no calculation.
template <auto member>
Field noted(StoveDraft& draft, std::string_view, bool create) {
    if (!draft.sheet && !create) return {};
    if (!draft.sheet) draft.sheet.emplace();
    return &((*draft.sheet).*member);
}

}  // namespace

std::vector<Key> sheet_keys() {
    return {
        {.name = "sheet.author",
         .kind = Kind::text,
         .fallback = "none",
         .help = "who drew the stove, for the sheet to build from",
         .field = noted<&SheetNote::author>},
        {.name = "sheet.date",
         .kind = Kind::text,
         .fallback = "none",
         .help = "when it was drawn, as you write it",
         .field = noted<&SheetNote::date>},
        {.name = "sheet.mark",
         .kind = Kind::choice,
         .fallback = "drawn",
         .choices = {"drawn", "built", "measured"},
         .help = "what the file's dimensions are worth: drawn only, built by, or measured on the "
                 "built stove",
         .field = noted<&SheetNote::mark>},
    };
}

}  // namespace drawwell
