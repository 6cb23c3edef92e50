#include "cli/study/known_answers.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/read/nearest.h"
#include "cli/report/answer_infos.h"
#include "cli/report/fitting_text.h"
#include "models/fittings/fittings.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

bool of_fitting(std::string_view answer) {
    return answer.find('/') != std::string_view::npos;
}

[[noreturn]] void refuse(std::string_view answer, const std::vector<std::string>& known) {
    throw InputError(fmt::format("no answer is called {}{}; `drawwell list answers` names all",
                                 answer, did_you_mean(answer, known)));
}

/// Answers on what the study's stoves are fitted with: of each file as filed and in its last
/// variant. Whether one of them could be read.
bool find_fitted(const Study& study, const Library& library, std::vector<std::string>& names) {
    bool any = false;
    for (std::size_t file = 0; file < study.files.size(); ++file)
        for (const std::size_t variant : {std::size_t{0}, study.variants.size() - 1}) try {
                const Stove stove =
                    stove_of(study, file * study.variants.size() + variant, library);
                for (const FittingAnswer& answer : answers_to_come(stove))
                    names.push_back(answer.fitting + "/" + fitting_figure(answer).first);
                any = true;
            } catch (const InputError&) {
                // Told in its row.
            }
    return any;
}

}  // namespace

void check_answer(std::string_view answer, bool number) {
    if (of_fitting(answer)) return;
    std::vector<std::string> known;
    for (const AnswerInfo& info : burn_answers()) {
        if (info.name == answer && number && info.unit == "word")
            throw InputError(
                fmt::format("{} is told in words, here stands one that is a number", answer));
        if (info.name == answer) return;
        known.push_back(info.name);
    }
    refuse(answer, known);
}

void check_answers(const std::vector<std::string>& answers, const Study& study,
                   const Library& library) {
    if (std::none_of(answers.begin(), answers.end(), of_fitting)) return;
    std::vector<std::string> known;
    if (!find_fitted(study, library, known)) return;
    for (const std::string& answer : answers)
        if (of_fitting(answer) && std::find(known.begin(), known.end(), answer) == known.end()) {
            if (known.empty())
                throw InputError(
                    fmt::format("{}: the stove has no pot, griddle or other fitting", answer));
            refuse(answer, known);
        }
}

}  // namespace drawwell
