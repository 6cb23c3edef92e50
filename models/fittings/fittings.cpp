#include "models/fittings/fittings.h"

#include <string>
#include <type_traits>

#include "models/components/stove_builder.h"

namespace drawwell {
namespace {

/// Does something for each kind of fitting, given as an empty one.
template <class... Kind, class Do>
void each_kind(std::type_identity<std::variant<Kind...>>, const Do& act) {
    (act(Kind{}), ...);
}
constexpr std::type_identity<Fitting> all_kinds;

/// Whether the gas goes through it on its way to the flue, whose beginning it then moves.
template <class Kind>
constexpr bool before_flue = requires {
    Kind::before_flue;
};

template <class Kind>
std::string table_of(const Kind& part) {
    return std::string(Kind::table) + "." + part.name;
}

}  // namespace

void add_fittings_before_flue(StoveBuilder& builder) {
    for (const Fitting& fitting : builder.stove.fittings)
        std::visit(
            [&]<class Kind>(const Kind& part) {
                if constexpr (before_flue<Kind>) add_fitting(builder, part);
            },
            fitting);
}

void add_fittings(StoveBuilder& builder) {
    for (const Fitting& fitting : builder.stove.fittings)
        std::visit(
            [&]<class Kind>(const Kind& part) {
                if constexpr (!before_flue<Kind>) add_fitting(builder, part);
            },
            fitting);
}

std::vector<TableProblem> fitting_problems(const Stove& stove) {
    std::vector<TableProblem> all;
    for (const Fitting& fitting : stove.fittings)
        std::visit(
            [&](const auto& part) {
                for (FittingProblem& problem : problems(part, stove))
                    all.push_back({table_of(part), std::move(problem)});
            },
            fitting);
    return all;
}

std::vector<ColumnInfo> fitting_columns() {
    std::vector<ColumnInfo> all;
    each_kind(all_kinds, [&]<class Kind>(const Kind&) {
        const auto columns = Kind::columns();
        all.insert(all.end(), columns.begin(), columns.end());
    });
    return all;
}

std::vector<Axis> fitting_axes(const Stove& stove) {
    std::vector<Axis> axes;
    each_kind(all_kinds, [&]<class Kind>(const Kind&) {
        Axis axis{std::string(Kind::table), "m", std::string(Kind::axis_meaning), {}};
        for (const Fitting& fitting : stove.fittings)
            if (const Kind* part = std::get_if<Kind>(&fitting))
                axis.positions.push_back(part->position());
        axes.push_back(std::move(axis));
    });
    return axes;
}

std::vector<FittingAnswer> fitting_answers(const Stove& stove, const Results& results) {
    std::vector<FittingAnswer> all;
    each_kind(all_kinds, [&]<class Kind>(const Kind&) {
        std::size_t at = 0;
        for (const Fitting& fitting : stove.fittings)
            if (const Kind* part = std::get_if<Kind>(&fitting))
                for (FittingAnswer& answer : answers(*part, stove, at++, results)) {
                    answer.fitting = table_of(*part);
                    all.push_back(std::move(answer));
                }
    });
    return all;
}

std::vector<FittingAnswer> answers_to_come(const Stove& stove) {
    constexpr double anything = 300;
    Results blank;  // of a single moment
    blank.time = {0};
    blank.columns.push_back({"heat_release", "W", "", "", 1, {anything}});
    for (const ColumnInfo& info : fitting_columns()) {
        const std::size_t width = stove.fittings.size();
        blank.columns.push_back({std::string(info.name), std::string(info.unit), "",
                                 std::string(info.axis), width,
                                 std::vector<double>(width, anything)});
    }
    return fitting_answers(stove, blank);
}

std::vector<FittingAnswer> answers_of_any_fitting() {
    Stove stove;
    each_kind(all_kinds, [&]<class Kind>(Kind part) {
        part.name = "NAME";
        if constexpr (std::is_same_v<Kind, Pot>) part.topped_up = false;  // tells more
        if constexpr (std::is_same_v<Kind, Grid>) {                       // of some size
            part.wire = 1e-3;
            part.pitch = 1e-2;
        }
        stove.fittings.emplace_back(std::move(part));
    });
    return answers_to_come(stove);
}

}  // namespace drawwell
