#include <H5Cpp.h>

#include <stdexcept>

#include "cli/read/read_stove.h"
#include "cli/read/resolved_text.h"
#include "cli/report/read_end_state.h"
#include "cli/report/read_result.h"
#include "cli/report/series_svg.h"
#include "cli/report/web/report_page.h"
#include "cli/report/write_csv.h"
#include "cli/report/write_hdf5.h"
#include "models/build_network.h"
#include "models/carried_fire.h"
#include "solver/errors.h"
#include "validation/hard-use/fuzz/change_hdf5.h"
#include "validation/hard-use/fuzz/hostile_input.h"
#include "validation/hard-use/fuzz/samples.h"
#include "validation/hard-use/fuzz/text_mutator.h"

namespace drawwell {
namespace {

/// Some likely ranges, as `burn --likely` would add them.
LikelyRanges made_ranges(const Results& results) {
    LikelyRanges likely{
        7, 6, 1, {{"plate_centre_max_c", 20, 30, 40}, {"reserve_draw_min_pa", 1, 2, 3}}};
    for (Results* band : {&likely.low, &likely.high}) {
        band->time = results.time;
        for (const Column& column : results.columns)
            if (column.name == "reserve_draw" || column.name == "outlet_gas_temperature")
                band->columns.push_back(column);
    }
    return likely;
}

/// Damaged byte by byte, or sound HDF5 that says odd things.
class HostileResult : public HostileInput {
  public:
    explicit HostileResult(const std::filesystem::path& scratch) : scratch_(scratch) {
        H5::Exception::dontPrint();
        next_file();
        const SampleBurn& sample = sample_burn();
        RunRecord record;
        record.title = sample.stove.title;
        record.stove_name = "stove.toml";
        record.stove_text = sample.stove_text;
        record.stove_resolved = resolved_text(sample.stove);
        record.overrides = {"burn.duration=6 min"};
        record.created = "2026-01-31T12:00:00Z";
        write_hdf5(file_, sample.outcome.results, sample.outcome.summary, record,
                   &sample.outcome.end_state, made_ranges(sample.outcome.results));
        whole_ = bytes_in(file_);
    }

    std::string make(Dice& dice) override {
        if (dice.chance(0.4)) return damaged(dice);
        next_file();
        put_bytes(file_, whole_);
        change_hdf5(file_, dice, change_);
        return bytes_in(file_);
    }

    void read(const std::string& bytes) override {
        next_file();
        put_bytes(file_, bytes);
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
        attempt([&] { show(read_result(file_), turn_of(bytes, 4) == 0); });
        attempt([&] { begin(read_end_state(file_)); });
        if (!taken) throw InputError(reason);
    }

  private:
    /// HDF5 may keep a damaged file open, and would take another of the same place for it.
    void next_file() {
        std::filesystem::remove(file_);
        file_ = scratch_ / ("run" + std::to_string(++files_) + ".h5");
    }

    std::string damaged(Dice& dice) const {
        std::string bytes = whole_;
        const auto place = [&] {  // what says how the file is built stands at its beginning
            const std::size_t within =
                dice.chance(0.5) ? std::min<std::size_t>(bytes.size(), 2000) : bytes.size();
            return static_cast<std::size_t>(dice.share() * static_cast<double>(within));
        };
        do {
            if (dice.chance(0.1)) {
                bytes.resize(place());
                if (bytes.empty()) break;
            } else if (dice.chance(0.1)) {
                bytes.erase(place(), static_cast<std::size_t>(dice.whole(1, 600)));
                if (bytes.empty()) break;
            } else {
                const char odd[] = {0, 1, 8, 127, -128, -1};
                char& byte = bytes[place()];
                byte = dice.chance(0.5) ? static_cast<char>(dice.whole(0, 255)) : dice.one_of(odd);
            }
        } while (dice.chance(0.5));
        return bytes;
    }

    static void show(const BurnResult& result, bool page) {
        csv_text(result.results);
        if (!page) return;
        const std::vector<PageRun> runs{page_run(result, "run")};
        if (report_page(runs).empty()) throw std::logic_error("an empty page");
        Results few = result.results;
        if (few.columns.size() > 3) few.columns.resize(3);
        series_svg(few, result.record.title);
    }

    static void begin(const EndState& end) {
        Stove stove = sample_burn().stove;
        spare_kindling(stove, end.state);
        const BuiltStove built = build_network(stove, sample_library(), &end.state);
    }

    std::filesystem::path scratch_, file_;
    std::size_t files_ = 0;
    std::string whole_;
    TextMutator change_{{sample_burn().stove_text},
                        {"riser.top", "1", "true", "[heat]", "</script>"}};
};

}  // namespace

std::unique_ptr<HostileInput> hostile_result(const std::filesystem::path& scratch) {
    return std::make_unique<HostileResult>(scratch);
}

}  // namespace drawwell
