#include "cli/read/keys/fields.h"

namespace drawwell {

std::vector<Key> sheet_keys() {
    using namespace fields;
    return {
        {.name = "sheet.author",
         .kind = Kind::text,
         .fallback = "none",
         .help = "who drew the stove, for `drawwell sheet`",
         .field = of<&Stove::sheet, &SheetHead::author>},
        {.name = "sheet.date",
         .kind = Kind::text,
         .fallback = "none",
         .help = "when, as you write it",
         .field = of<&Stove::sheet, &SheetHead::date>},
        {.name = "sheet.mark",
         .kind = Kind::choice,
         .fallback = "drawn",
         .choices = {"drawn", "built", "measured"},
         .help = "what the dimensions are worth: drawn only, built by, or measured on the stove",
         .field = of<&Stove::sheet, &SheetHead::mark>},
    };
}

}  // namespace drawwell
