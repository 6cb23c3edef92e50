#include "validation/hard-use/fuzz/samples.h"

#include <algorithm>
#include <fstream>
#include <functional>
#include <iterator>
#include <stdexcept>

#include "cli/read/read_library.h"
#include "cli/read/read_stove.h"

namespace drawwell {

std::vector<std::string> texts_in(const std::string& folder, const std::string& ending) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::filesystem::path(DRAWWELL_SOURCES) / folder))
        if (entry.path().extension() == ending) files.push_back(entry.path());
    if (files.empty()) throw std::runtime_error("no files in " + folder);
    std::sort(files.begin(), files.end());
    std::vector<std::string> texts;
    for (const auto& file : files) texts.push_back(bytes_in(file));
    return texts;
}

const Library& sample_library() {
    static const Library library = read_library();
    return library;
}

const SampleBurn& sample_burn() {
    static const SampleBurn sample = [] {
        SampleBurn made;
        made.stove_text = bytes_in(DRAWWELL_SOURCES "/data/stoves/allotment-kitchen.toml");
        const std::vector<Override> minutes{{"burn.duration", "6 min"}};
        made.stove = read_stove(made.stove_text, "stove.toml", minutes, sample_library());
        made.outcome = run_burn(made.stove, sample_library());
        return made;
    }();
    return sample;
}

std::string bytes_in(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

void put_bytes(const std::filesystem::path& file, const std::string& bytes) {
    std::ofstream(file, std::ios::binary) << bytes;
}

std::size_t turn_of(const std::string& bytes, std::size_t turns) {
    return std::hash<std::string>()(bytes) % turns;
}

}  // namespace drawwell
