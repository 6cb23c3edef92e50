#include <algorithm>
#include <stdexcept>

#include "cli/report/pending_file.h"
#include "cli/study/compare_files.h"
#include "cli/study/compare_table.h"
#include "cli/study/journal.h"
#include "cli/study/series_bytes.h"
#include "validation/hard-use/fuzz/hostile_input.h"
#include "validation/hard-use/fuzz/samples.h"
#include "validation/hard-use/fuzz/text_mutator.h"

namespace drawwell {
namespace {

Row made_row(const std::string& identity, const std::string& error = {}) {
    Row row{.identity = identity, .error = error, .answers = {}, .done = true, .series = {}};
    if (error.empty()) row.answers = Answers(sample_burn().outcome.summary);
    return row;
}

/// A study of two stoves, whose journal it is.
Study made_study() {
    Study study;
    study.files = {{"stove.toml", sample_burn().stove_text, {}}};
    study.variants = {Variant{}, Variant{{{"riser.top", "700 mm"}}}};
    return study;
}

class HostileJournal : public HostileInput {
  public:
    explicit HostileJournal(const std::filesystem::path& scratch)
        : file_(scratch / "study.rows.jsonl") {}

    std::string make(Dice& dice) override { return change_(dice); }

    void read(const std::string& bytes) override {
        std::filesystem::remove(file_);
        put_bytes(file_, bytes);
        std::size_t finished = 0;
        try {
            Journal journal(file_);
            finished = journal.finished();
            Journal().learn(journal.text());
            for (const char* identity : {"one", "two"}) look_at_series(journal, identity);
            show({row_in(journal, "one"), row_in(journal, "two")});
            journal.add(made_row("added"));
        } catch (const FileError&) {
            if (bytes_in(file_) != bytes)
                throw std::logic_error("a file that is no journal was changed");
            throw;
        }
        const Journal again(file_);
        if (!again.find("added")) throw std::logic_error("the row added was lost");
        if (again.finished() < finished) throw std::logic_error("rows were lost");
    }

  private:
    static void look_at_series(const Journal& journal, const std::string& identity) {
        if (!journal.has_series_of(identity)) return;
        try {
            const Results results = journal.series_of(identity);
        } catch (const FileError&) {  // damaged: the comparison then ends
        }
    }

    /// A journal as a run leaves it, with a row's series or without.
    std::string written(bool with_series) const {
        {
            Journal journal(file_);
            Row one = made_row("one");
            if (with_series) one.series = series_bytes(few_);
            journal.add(one);
            journal.add(made_row("two", "can't be"));
            journal.add(made_row("two"));
        }
        std::string bytes = bytes_in(file_);
        std::filesystem::remove(file_);
        return bytes;
    }

    static Row row_in(const Journal& journal, const std::string& identity) {
        const Row* row = journal.find(identity);
        return row ? *row : made_row(identity);
    }

    /// All that a comparison makes of rows.
    void show(const std::vector<Row>& rows) const {
        CompareLook look;
        look.answers.assign(headlines().begin(), headlines().end());
        look.sort = "reserve_draw_min_pa";
        look.base = true;
        compare_table(study_, rows, look);
        compare_csv(study_, rows);
        compare_json(study_, rows);
    }

    std::filesystem::path file_;
    Study study_ = made_study();
    Results few_{{0, 30},
                 {{"ring", "m", "ring", {0.1, 0.2}}},
                 {{"plate", "K", "plate", "ring", 2, {1, 2, 3, 4}}}};
    std::string rows_ = written(false), series_ = written(true);
    TextMutator change_{{rows_, series_, rows_.substr(0, rows_.size() - 9)},
                        {"\"id\"", "\"answers\"", "\"error\"", "null", "true", "1e400", "-0.0",
                         "[]", "{}", "\"\\ud800\"", "\"one\"", "reserve_draw_min_pa", "draws",
                         "smoke_back_s", "\"no\"", "plate_centre_max_c"}};
};

}  // namespace

std::unique_ptr<HostileInput> hostile_journal(const std::filesystem::path& scratch) {
    return std::make_unique<HostileJournal>(scratch);
}

}  // namespace drawwell
