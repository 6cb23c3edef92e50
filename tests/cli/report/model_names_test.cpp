#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "cli/read/keys.h"
#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"
#include "cli/report/end_state_fields.h"
#include "cli/report/schema_versions.h"
#include "models/build_network.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

const std::filesystem::path noted = DRAWWELL_SOURCES "/tests/cli/report/model_names.txt";

/// `riser.wall.12.3` as `riser.wall.#.#`: pieces of a wall are counted, not listed.
std::string sort_of(const std::string& name) {
    std::string sort;
    for (const char c : name) {
        const bool digit = std::isdigit(static_cast<unsigned char>(c)) != 0;
        if (!digit) sort += c;
        if (digit && !sort.ends_with('#')) sort += '#';
    }
    return sort;
}

/// What a burn that goes on must find again: every key, every state, and the cells of every sample.
std::string names_now() {
    std::string text = fmt::format("model_version {}\n", model_version);
    for (const Key& key : all_keys()) text += fmt::format("key {}\n", key.name);
    for (const LotField& field : lot_fields)
        text += fmt::format("state of a load {}\n", field.name);
    std::set<std::filesystem::path> samples;
    for (const auto& each : std::filesystem::directory_iterator(DRAWWELL_SOURCES "/data/stoves"))
        if (each.path().extension() == ".toml") samples.insert(each.path());
    const Library library = read_library();
    for (const std::filesystem::path& sample : samples) {
        const Stove stove = read_stove(bytes_of(sample), sample.string(), {}, library);
        const BuiltStove built = build_network(stove, library);
        std::map<std::string, int> cells;
        for (const Solid& solid : built.network.solids) ++cells[sort_of(solid.name)];
        for (const auto& [sort, count] : cells)
            text += fmt::format("{} {} {}\n", sample.stem().string(), sort, count);
    }
    return text;
}

/// The first line of `text` that `other` has not in its place.
std::string first_unlike(const std::string& text, const std::string& other) {
    const auto parted = std::mismatch(text.begin(), text.end(), other.begin(), other.end()).first;
    const auto at = static_cast<std::size_t>(parted - text.begin());
    const std::size_t begin = at == 0 ? 0 : text.rfind('\n', at - 1) + 1;
    return text.substr(begin, text.find('\n', at) - begin);
}

}  // namespace

TEST_SUITE("cli/report/model_names") {
    TEST_CASE("states, cells and keys change with model_version and not without it") {
        const std::string now = names_now();
        if (std::getenv("DRAWWELL_NOTE_MODEL_NAMES")) put(noted, now);
        const std::string before = bytes_of(noted);
        INFO("here: " << first_unlike(now, before) << "; noted: " << first_unlike(before, now));
        INFO(
            "states, cells or keys have changed: raise model_version in "
            "cli/report/schema_versions.h, so that --start-from and --resume refuse what is older; "
            "list keys that were renamed in README.md, and note the names anew by running this "
            "test once with DRAWWELL_NOTE_MODEL_NAMES=1 set");
        const bool as_noted = now == before;
        CHECK(as_noted);
    }
}
