#include "cli/study/answer_names.h"

#include <algorithm>
#include <unordered_set>

namespace drawwell {

std::vector<std::string> varied_keys(const Study& study) {
    std::vector<std::string> keys;
    for (const Variant& variant : study.variants)
        for (const Override& set : variant.settings)
            if (std::find(keys.begin(), keys.end(), set.key) == keys.end()) keys.push_back(set.key);
    return keys;
}

std::string setting_of(const Study& study, std::size_t row, const std::string& key) {
    for (const Override& set : study.variant_of(row).settings)
        if (set.key == key) return set.value;
    return "";
}

std::vector<std::string> answer_names(const std::vector<Row>& rows) {
    std::vector<std::string> names;
    std::unordered_set<std::string> known;
    for (const Row& row : rows)
        for (const auto& [name, answer] : row.answers.all())
            if (known.insert(name).second) names.push_back(name);
    return names;
}

}  // namespace drawwell
