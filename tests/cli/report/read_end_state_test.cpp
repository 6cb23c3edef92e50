#include "cli/report/read_end_state.h"

#include <H5Cpp.h>
#include <doctest/doctest.h>

#include "cli/report/end_state_fields.h"
#include "cli/report/pending_file.h"
#include "cli/report/write_hdf5.h"
#include "solver/errors.h"
#include "tests/cli/report/sample_run.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

void write(const std::filesystem::path& file, const SavedState* state,
           const RunRecord& record = sample_record()) {
    write_hdf5(file, sample_results(), sample_summary(), record, state);
}

/// What reading a file brings: empty if it is read.
std::string trouble(const std::filesystem::path& file) {
    try {
        read_end_state(file);
    } catch (const InputError& error) {
        return error.what();
    }
    return "";
}

bool contains(const std::string& text, const char* part) {
    return text.find(part) != std::string::npos;
}

/// Puts a number in place of one in a data set of `end_state`.
void spoil(const std::filesystem::path& file, const std::string& name, double value) {
    const H5::H5File hdf5(file.string(), H5F_ACC_RDWR);
    const H5::DataSet data = hdf5.openDataSet("end_state/" + name);
    std::vector<double> values(static_cast<std::size_t>(data.getSpace().getSimpleExtentNpoints()));
    data.read(values.data(), H5::PredType::NATIVE_DOUBLE);
    values.back() = value;
    data.write(values.data(), H5::PredType::NATIVE_DOUBLE);
}

}  // namespace

TEST_SUITE("cli/report/read_end_state") {
    TEST_CASE("a state is read as it was written") {
        const ScratchFolder folder;
        const SavedState state = sample_end_state();
        RunRecord record = sample_record();
        record.complete = false;
        write(folder / "run.h5", &state, record);
        const EndState end = read_end_state(folder / "run.h5");
        CHECK_FALSE(end.complete);
        CHECK(end.created == record.created);
        CHECK(end.state.time == state.time);
        CHECK(end.state.temperature == state.temperature);
        CHECK(end.state.inlet_flow == state.inlet_flow);
        REQUIRE(end.state.left.size() == 2);
        for (std::size_t i = 0; i < 2; ++i) {
            CHECK(end.state.left[i].lot.name == state.left[i].lot.name);
            CHECK(end.state.left[i].place == state.left[i].place);
            for (const LotField& field : lot_fields)
                CHECK(field.get(end.state.left[i]) == field.get(state.left[i]));
        }
    }

    TEST_CASE("a state with nothing left is read") {
        const ScratchFolder folder;
        SavedState state = sample_end_state();
        state.left.clear();
        write(folder / "run.h5", &state);
        CHECK(read_end_state(folder / "run.h5").state.left.empty());
        CHECK(read_end_state(folder / "run.h5").complete);
    }

    TEST_CASE("a file that cannot be read is a file error") {
        const ScratchFolder folder;
        CHECK_THROWS_WITH_AS(read_end_state(folder / "none.h5"), doctest::Contains("No such file"),
                             FileError);
        CHECK_THROWS_WITH_AS(read_end_state(folder / ""), doctest::Contains("it is a folder"),
                             FileError);
    }

    TEST_CASE("what is no result, of another layout or without an end state is told apart") {
        const ScratchFolder folder;
        put(folder / "letter.h5", "Dear Sir or Madam");
        CHECK(contains(trouble(folder / "letter.h5"), "it is no result of drawwell"));
        write(folder / "old.h5", nullptr);
        CHECK(contains(trouble(folder / "old.h5"), "an older drawwell wrote it"));
        const SavedState state = sample_end_state();
        write(folder / "new.h5", &state);
        {
            const H5::H5File file((folder / "new.h5").string(), H5F_ACC_RDWR);
            const int version = result_schema_version + 1;
            file.openGroup("/")
                .openAttribute("schema_version")
                .write(H5::PredType::NATIVE_INT, &version);
        }
        CHECK(contains(trouble(folder / "new.h5"), "in a layout of version"));
    }

    TEST_CASE("figures beyond sense are refused") {
        const ScratchFolder folder;
        const SavedState state = sample_end_state();
        const double nothing = std::numeric_limits<double>::quiet_NaN();
        for (const auto& [name, value] : {std::pair{"wall_temperature", 1e9},
                                          {"wall_temperature", nothing},
                                          {"inlet_flow", -99.0},
                                          {"left_dry_mass", 0.0},
                                          {"left_wood", -1.0},
                                          {"left_foot_share", 2.0},
                                          {"left_char", nothing}}) {
            CAPTURE(name);
            write(folder / "run.h5", &state);
            CHECK(trouble(folder / "run.h5").empty());
            spoil(folder / "run.h5", name, value);
            CHECK(contains(trouble(folder / "run.h5"), "it is damaged"));
        }
    }

    TEST_CASE("a file cut short or with wrong bytes is refused or read, and never worse") {
        const ScratchFolder folder;
        const SavedState state = sample_end_state();
        write(folder / "run.h5", &state);
        const std::string whole = bytes_of(folder / "run.h5");
        int refused = 0;
        for (std::size_t part = 0; part < 40; ++part) {
            put(folder / "short.h5", whole.substr(0, whole.size() * part / 40));
            refused += trouble(folder / "short.h5").empty() ? 0 : 1;
        }
        CHECK(refused == 40);
        refused = 0;
        for (std::size_t at = 0; at < whole.size(); at += 97) {
            std::string wrong = whole;
            wrong[at] = static_cast<char>(wrong[at] ^ 0x55);
            put(folder / "wrong.h5", wrong);
            refused += trouble(folder / "wrong.h5").empty() ? 0 : 1;
        }
        CHECK(refused > 10);
    }
}
