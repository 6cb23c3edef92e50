#include <array>

#include "cli/read/unit_table.h"
#include "cli/report/burn_log.h"
#include "cli/study/fit/sensor.h"
#include "models/columns.h"
#include "solver/errors.h"
#include "validation/hard-use/fuzz/hostile_input.h"
#include "validation/hard-use/fuzz/samples.h"
#include "validation/hard-use/fuzz/text_mutator.h"

namespace drawwell {
namespace {

std::vector<std::string> log_words() {
    std::vector<std::string> words{"time",     "time_s", "time_min", "TC1",
                                   "nan",      "ol",     "23:59:59", "2026-01-31T12:00:00",
                                   "[0.105m]", "[last]", "[-1]",     "\"1,5\""};
    for (const ColumnInfo& column : all_columns()) words.emplace_back(column.name);
    for (const Unit& unit : all_units()) words.emplace_back(unit.name);
    return words;
}

/// Read by `fit` and by `report`: refused only if both refuse it.
class HostileLog : public HostileInput {
  public:
    std::string make(Dice& dice) override { return change_(dice); }

    void read(const std::string& bytes) override {
        bool taken = false;
        std::string reason;
        const auto attempt = [&](auto&& reading) {
            try {
                reading();
                taken = true;
            } catch (const InputError& error) {
                reason = error.what();
            }
        };
        attempt([&] { read_burn_log(bytes, sample_burn().outcome.results); });
        attempt([&] {
            const BurnLog log = read_log(bytes, "burn.csv");
            attempt([&] { sensors_of(log, {}); });
            for (const LogHeader& header : log.headers)
                for (const Unit& unit : all_units())
                    if (unit.name == header.unit)
                        attempt([&] {
                            log_values(log, log.find(header.whole), unit.name, unit.quantity);
                        });
        });
        // Also what is said of a log's columns on the command line.
        const std::string word = bytes.substr(0, bytes.find('\n'));
        attempt([&] { sensors_of(read_log(log_, "burn.csv"), {.maps = {"TC1=" + word}}); });
        attempt([&] { sensors_of(read_log(log_, "burn.csv"), {.beads = {"TC1=" + word}}); });
        attempt([&] { sensors_of(read_log(log_, "burn.csv"), {.noises = {word}}); });
        attempt([&] { parse_log_time(word); });
        if (!taken) throw InputError(reason);
    }

  private:
    std::vector<std::string> corpus_ = texts_in("validation/hard-use/fuzz/corpus/log", ".csv");
    std::string log_ = corpus_.front();
    TextMutator change_{corpus_, log_words()};
};

}  // namespace

std::unique_ptr<HostileInput> hostile_log() {
    return std::make_unique<HostileLog>();
}

}  // namespace drawwell
