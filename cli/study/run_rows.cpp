#include "cli/study/run_rows.h"

#include <fmt/format.h>
#include <tbb/global_control.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <exception>
#include <future>
#include <optional>
#include <utility>

#include "cli/read/read_stove.h"
#include "cli/read/resolved_text.h"
#include "cli/read/several_problems.h"
#include "cli/report/run_record.h"
#include "cli/study/row_line.h"
#include "cli/study/series_bytes.h"
#include "cli/study/sobol.h"
#include "models/burn.h"
#include "models/uncertain_inputs.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

bool stopped(const RowsWatch& watch) {
    return watch.stop && watch.stop->load();
}

using Days = std::vector<std::vector<double>>;  // [day][uncertain input] in the unit cube

constexpr std::size_t most_inputs = 200;

/// Sets all that is uncertain as a day has it.
void set_day(const std::vector<double>& day, Library& library, Stove& stove) {
    const boost::math::normal normal;
    const std::vector<UncertainInput> inputs = uncertain_inputs(library, stove);
    for (std::size_t k = 0; k < std::min(inputs.size(), day.size()); ++k)
        inputs[k].set(quantile(normal, std::clamp(day[k], 1e-9, 1 - 1e-9)), library, stove);
}

/// Sets one of them.
void set_off(const std::string& name, double deviations, Library& library, Stove& stove) {
    for (const UncertainInput& input : uncertain_inputs(library, stove))
        if (input.name == name) return input.set(deviations, library, stove);
    throw InputError("nothing uncertain is called " + name);
}

std::string off_text(const Variant& variant) {
    std::string text;
    for (const auto& [input, deviations] : variant.off)
        text += fmt::format("\n{} off by {}", input, deviations);
    return text;
}

Row compute(const Study& study, const Days& days, std::size_t at, const Library& usual,
            const Journal& journal, const RowsWatch& watch) {
    Row row;
    try {
        Stove stove = stove_of(study, at / study.repeats(), usual);
        const std::size_t day = at % study.repeats();
        row.identity = identity_of(
            resolved_text(stove) + off_text(study.variant_of(at / study.repeats())) +
            (study.days > 0 ? fmt::format("\nday {} of seed {}", day, study.seed) : ""));
        if (const Row* finished = journal.find(row.identity)) return *finished;
        Library library = usual;
        for (const auto& [input, deviations] : study.variant_of(at / study.repeats()).off)
            set_off(input, deviations, library, stove);
        if (study.days > 0) set_day(days[day], library, stove);
        BurnWatch burn;
        burn.stop = watch.stop;
        const BurnOutcome outcome = run_burn(stove, library, burn);
        if (!outcome.complete) return row;
        row.answers = Answers(outcome.summary);
        if (watch.series) row.series = series_bytes(outcome.results);
    } catch (const InputError& error) {
        row.error = error_text(error);
    } catch (const SolverError& error) {
        row.error = "the calculation failed: " + error_text(error);
    }
    row.done = true;
    return row;
}

}  // namespace

std::vector<std::string> told_files(const Study& study) {
    std::vector<std::string> files;
    for (std::size_t i = 0; i < study.stoves(); ++i) files.push_back(study.file_of(i).name);
    return told_names(files);
}

std::string told_setting(const std::string& key, const std::string& value) {
    return key == "site.weather" ? told_name(value) : value;
}

Stove stove_of(const Study& study, std::size_t stove, const Library& library) {
    const StoveText& file = study.file_of(stove);
    std::vector<Override> overrides = study.sets;
    const std::vector<Override>& settings = study.variant_of(stove).settings;
    overrides.insert(overrides.end(), settings.begin(), settings.end());
    // The stove as filed stays as it is.
    if (settings.empty() && study.variant_of(stove).off.empty() && study.variants.size() > 1)
        return read_stove(file.text, file.name, overrides, library, file.read_file);
    for (const Follow& follow : study.follows)
        overrides.push_back(followed(
            follow, read_unchecked(file.text, file.name, overrides, library, file.read_file)));
    return read_stove(file.text, file.name, overrides, library, file.read_file);
}

void check_follows_of(const Study& study, const Library& library) {
    if (study.follows.empty()) return;
    for (std::size_t file = 0; file < study.files.size(); ++file) {
        // The stove as filed follows nothing where others differ from it.
        const std::size_t variant = study.variants.size() - 1;
        const StoveText& text = study.files[file];
        std::vector<Override> overrides = study.sets;
        const std::vector<Override>& settings = study.variants[variant].settings;
        overrides.insert(overrides.end(), settings.begin(), settings.end());
        std::optional<Stove> stove;
        try {
            stove = read_unchecked(text.text, text.name, overrides, library, text.read_file);
        } catch (const InputError&) {
            continue;  // told in its row
        }
        for (const Follow& follow : study.follows) followed(follow, *stove);
    }
}

std::vector<Row> run_rows(const Study& study, const Library& library, Journal& journal,
                          const RowsWatch& watch) {
    OneRank alone;
    Ranks& ranks = watch.ranks ? *watch.ranks : alone;
    journal.learn(ranks.share(journal.text()));
    const unsigned threads = watch.threads > 0 ? watch.threads : ranks.threads();
    const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
    std::vector<Row> rows(ranks.writer() ? study.size() : 0);
    std::atomic<std::size_t> done = 0;
    const auto keep = [&](std::size_t i, Row row) {
        if (!row.identity.empty() && !journal.find(row.identity)) journal.add(row);
        if (watch.finished) watch.finished(row);
        row.series = {};
        rows.at(i) = std::move(row);
        if (watch.progress) watch.progress(++done);
    };
    const Days days = sobol_points(study.days, most_inputs, study.seed);
    const auto work = [&] {
        for (std::size_t i = ranks.next(); i < study.size(); i = ranks.next()) {
            if (stopped(watch)) return ranks.skip_rest();
            Row row = compute(study, days, i, library, journal, watch);
            if (!row.done) continue;
            if (ranks.writer())
                keep(i, std::move(row));
            else
                ranks.hand_in(i, line_of(row) + "\n" + row.series);
        }
    };
    std::future<void> collecting;
    if (ranks.writer())
        collecting = std::async(std::launch::async, [&] {
            ranks.collect([&](std::size_t i, const std::string& text) {
                const std::size_t end = text.find('\n');
                Row row = row_of(text.substr(0, end));
                row.series = text.substr(end + 1);
                keep(i, std::move(row));
            });
        });
    std::exception_ptr failure;
    try {
        tbb::parallel_for(
            0U, threads, [&](unsigned) { work(); }, tbb::simple_partitioner());
    } catch (...) {
        failure = std::current_exception();
        ranks.skip_rest();
    }
    ranks.finish();
    if (collecting.valid()) collecting.get();
    if (failure) std::rethrow_exception(failure);
    return rows;
}

}  // namespace drawwell
