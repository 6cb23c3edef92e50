#include "cli/commands/targets.h"

#include <system_error>

#include "cli/report/pending_file.h"
#include "solver/errors.h"

namespace drawwell {

namespace fs = std::filesystem;

void check_target(const fs::path& file, bool ours, bool force) {
    std::error_code ignored;
    if (fs::exists(file, ignored) && !fs::is_regular_file(file, ignored))
        throw FileError("cannot write " + file.string() + " (it is not a plain file)");
    if (fs::exists(file, ignored) && !ours && !force)
        throw InputError(
            file.string() +
            " exists and is no result of drawwell: name another with -o, or replace it "
            "with --force");
    check_writable(file);
}

fs::path result_target(const std::string& output, const std::string& stove,
                       const std::string& ending, const std::string& unnamed) {
    if (!output.empty()) return output;
    return stove == "-" ? fs::path(unnamed) : fs::path(stove).stem().concat(ending);
}

fs::path table_target(const std::string& file, const fs::path& result) {
    const fs::path table =
        file.empty() ? result.parent_path() / result.stem().concat(".csv") : fs::path(file);
    if (table == result)
        throw InputError("the table and the result file are both called " + result.string());
    return table;
}

}  // namespace drawwell
