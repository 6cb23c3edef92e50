#include "cli/report/write_end_state.h"

#include <H5Cpp.h>
#include <doctest/doctest.h>

#include "cli/report/end_state_fields.h"
#include "cli/report/write_hdf5.h"
#include "tests/cli/report/sample_run.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

std::string text_of(const H5::DataSet& data, const char* name) {
    const H5::Attribute attribute = data.openAttribute(name);
    std::string text;
    attribute.read(attribute.getStrType(), text);
    return text;
}

void write(const std::filesystem::path& file, const SavedState& state) {
    write_hdf5(file, sample_results(), sample_summary(), sample_record(), &state);
}

}  // namespace

TEST_SUITE("cli/report/write_end_state") {
    TEST_CASE("every figure has a unit and a meaning, every row its names") {
        const ScratchFolder folder;
        write(folder / "run.h5", sample_end_state());
        const H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDONLY);
        const H5::Group group = file.openGroup("end_state");
        double temperature[2]{};
        const H5::DataSet walls = group.openDataSet("wall_temperature");
        walls.read(temperature, H5::PredType::NATIVE_DOUBLE);
        CHECK(temperature[1] == 701.25);
        CHECK(text_of(walls, "units") == "K");
        CHECK(text_of(group.openDataSet("inlet_flow"), "units") == "kg/s");
        for (const LotField& field : lot_fields) {
            const H5::DataSet row = group.openDataSet(field.name);
            CHECK(text_of(row, "units") == field.unit);
            CHECK(text_of(row, "long_name") == field.meaning);
            CHECK(row.getSpace().getSimpleExtentNpoints() == 2);
        }
        std::string names(2 * group.openDataSet("wall").getStrType().getSize(), 'x');
        group.openDataSet("wall").read(names.data(), group.openDataSet("wall").getStrType());
        CHECK(names.starts_with(std::string("plate.0\0", 8)));
    }

    TEST_CASE("a stove with nothing left keeps empty rows") {
        const ScratchFolder folder;
        SavedState state = sample_end_state();
        state.left.clear();
        write(folder / "run.h5", state);
        const H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDONLY);
        CHECK(file.openDataSet("end_state/left").getSpace().getSimpleExtentNpoints() == 0);
        CHECK(file.openDataSet("end_state/left_wood").getSpace().getSimpleExtentNpoints() == 0);
    }

    TEST_CASE("equal states give equal bytes") {
        const ScratchFolder folder;
        write(folder / "a.h5", sample_end_state());
        write(folder / "b.h5", sample_end_state());
        CHECK(bytes_of(folder / "a.h5") == bytes_of(folder / "b.h5"));
        SavedState other = sample_end_state();
        other.left[1].state[2] = 0.003;
        write(folder / "c.h5", other);
        CHECK(bytes_of(folder / "a.h5") != bytes_of(folder / "c.h5"));
    }
}
