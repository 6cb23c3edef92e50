#include "cli/report/summary_entries.h"

#include <doctest/doctest.h>

#include <type_traits>

#include "tests/cli/report/sample_run.h"

using namespace drawwell;

namespace {

SummaryFigures figures_of(const Summary& summary) {
    SummaryFigures figures;
    for (const SummaryEntry& entry : summary_entries(summary))
        std::visit(
            [&](const auto& value) {
                using T = std::decay_t<decltype(value)>;
                if constexpr (std::is_same_v<T, std::string_view>)
                    figures.words[std::string(entry.key)] = std::string(value);
                else if constexpr (!std::is_same_v<T, std::monostate>)
                    figures.numbers[std::string(entry.key)] = static_cast<double>(value);
            },
            entry.value);
    return figures;
}

/// Both as they are, key by key.
void check_same(const Summary& before, const Summary& after) {
    const SummaryFigures a = figures_of(before), b = figures_of(after);
    CHECK(a.words == b.words);
    CHECK(a.numbers.size() == b.numbers.size());
    for (const auto& figure : a.numbers) {
        const std::string& key = figure.first;
        INFO(key);
        REQUIRE(b.numbers.count(key) == 1);
        // Celsius and back to kelvin costs the last digits.
        CHECK(b.numbers.at(key) == doctest::Approx(figure.second).epsilon(1e-12));
    }
}

/// Every answer given, no two alike.
Summary full_summary() {
    SummaryFigures figures;
    double value = 1.5;
    Summary all = sample_summary();
    all.cold_start = ColdStart{};
    all.draw_limit = Limit::exchange;
    for (const SummaryEntry& entry : summary_entries(all)) {
        const std::string key(entry.key);
        if (std::holds_alternative<std::string_view>(entry.value)) continue;
        figures.numbers[key] = key == "draws"                                   ? 1
                               : key == "steps" || key.ends_with("evaluations") ? 7
                                                                                : (value += 1.25);
    }
    figures.words = {{"draw_limit", "exchange"}, {"before_lighting", "falls"}};
    return summary_from(figures);
}

}  // namespace

TEST_SUITE("cli/report/summary_entries") {
    TEST_CASE("a summary survives its entries, whether an answer is there or not") {
        check_same(sample_summary(), summary_from(figures_of(sample_summary())));
        check_same(Summary{}, summary_from(figures_of(Summary{})));
    }

    TEST_CASE("no entry is forgotten or taken for another") {
        const Summary full = full_summary();
        const SummaryFigures figures = figures_of(full);
        CHECK(figures.numbers.size() + figures.words.size() == summary_entries(full).size());
        double value = 1.5;
        for (const SummaryEntry& entry : summary_entries(full)) {
            const std::string key(entry.key);
            if (std::holds_alternative<std::string_view>(entry.value) || key == "draws" ||
                key == "steps" || key.ends_with("evaluations"))
                continue;
            INFO(key);
            CHECK(figures.numbers.at(key) == doctest::Approx(value += 1.25).epsilon(1e-12));
        }
    }

    TEST_CASE("words that no answer has are left out") {
        CHECK_FALSE(summary_from({{}, {{"draw_limit", "weather"}}}).draw_limit);
        CHECK_FALSE(summary_from({{}, {{"before_lighting", "sideways"}}}).cold_start);
    }

    TEST_CASE("figures stand in the units of their keys") {
        Summary summary;
        summary.plate_rim_max = 473.15;
        summary.exit_gas_max = 573.15;
        summary.heat_to_room = 36.8e6;
        summary.plate_pot = CookingTime{60, 120, 180, 240};
        const SummaryFigures figures = figures_of(summary);
        CHECK(figures.numbers.at("plate_rim_max_c") == doctest::Approx(200));
        CHECK(figures.numbers.at("exit_gas_max_c") == doctest::Approx(300));
        CHECK(figures.numbers.at("heat_to_room_mj") == doctest::Approx(36.8));
        CHECK(figures.numbers.at("plate_pot_minutes_fry") == doctest::Approx(3));
        for (const SummaryEntry& entry : summary_entries(summary)) {
            const bool kelvin = entry.key.ends_with("_max_c") || entry.key.ends_with("_mean_c");
            const auto* value = std::get_if<double>(&entry.value);
            INFO(entry.key);
            // Nothing at 0 K: -273.15 °C, or another that was set here.
            if (kelvin && value) CHECK((*value < -273 || *value >= 200));
        }
    }
}
