#include "cli/report/write_hdf5.h"

#include <H5Cpp.h>
#include <doctest/doctest.h>
#include <hdf5_hl.h>

#include <chrono>
#include <cmath>
#include <limits>
#include <thread>

#include "cli/report/file_kind.h"
#include "cli/report/pending_file.h"
#include "tests/cli/report/sample_run.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

namespace {

std::string text_of(const H5::H5Object& object, const char* name) {
    const H5::Attribute attribute = object.openAttribute(name);
    std::string text;
    attribute.read(attribute.getStrType(), text);
    return text;
}

template <class Number>
Number number_of(const H5::H5Object& object, const char* name, const H5::PredType& type) {
    Number number{};
    object.openAttribute(name).read(type, &number);
    return number;
}

std::vector<double> values_of(const H5::H5File& file, const char* name) {
    const H5::DataSet data = file.openDataSet(name);
    std::vector<double> values(static_cast<std::size_t>(data.getSpace().getSimpleExtentNpoints()));
    data.read(values.data(), H5::PredType::NATIVE_DOUBLE);
    return values;
}

}  // namespace

TEST_SUITE("cli/report/write_hdf5") {
    TEST_CASE("columns are read back as they were, with units and meaning") {
        const ScratchFolder folder;
        write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record());
        const H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDONLY);
        CHECK(values_of(file, "time") == std::vector<double>{0, 30, 60});
        CHECK(values_of(file, "spare_draw") == std::vector<double>{4.5, 5.5, 6.5});
        CHECK(values_of(file, "plate_temperature") == sample_results().columns[1].values);
        const H5::DataSet plate = file.openDataSet("plate_temperature");
        CHECK(text_of(plate, "units") == "K");
        CHECK(text_of(plate, "long_name") == "plate");
        hsize_t shape[2];
        REQUIRE(plate.getSpace().getSimpleExtentNdims() == 2);
        plate.getSpace().getSimpleExtentDims(shape);
        CHECK(shape[0] == 3);
        CHECK(shape[1] == 2);
    }

    TEST_CASE("time and the parts' cells are dimension scales of the columns") {
        const ScratchFolder folder;
        write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record());
        const H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDONLY);
        const H5::DataSet plate = file.openDataSet("plate_temperature");
        const H5::DataSet time = file.openDataSet("time");
        const H5::DataSet radius = file.openDataSet("plate_radius");
        CHECK(H5DSis_scale(time.getId()) > 0);
        CHECK(H5DSis_attached(plate.getId(), time.getId(), 0) > 0);
        CHECK(H5DSis_attached(plate.getId(), radius.getId(), 1) > 0);
        CHECK(H5DSis_attached(plate.getId(), radius.getId(), 0) == 0);
    }

    TEST_CASE("the file says where it came from and what came out") {
        const ScratchFolder folder;
        Summary summary = sample_summary();
        summary.plate_time_to_fry.reset();
        summary.remarks = {"one", "two"};
        summary.stretched = {{.law = "board",
                              .where = "riser lining",
                              .what = "tabled temperature",
                              .unit = "K",
                              .low = 0,
                              .high = 1273.15,
                              .worst = 1403.15,
                              .share_of_burn = 0.2,
                              .weight = 0.02,
                              .effect = Effect::small,
                              .on = "exit gas"}};
        write_hdf5(folder / "run.h5", sample_results(), summary, sample_record());
        const H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDONLY);
        const H5::Group root = file.openGroup("/");
        CHECK(text_of(root, "stove_text") == sample_record().stove_text);
        CHECK(text_of(root, "stove_resolved") == sample_record().stove_resolved);
        CHECK(text_of(root, "stove_overrides") == "flue.stack.length=2 m\n");
        CHECK(number_of<int>(root, "schema_version", H5::PredType::NATIVE_INT) ==
              result_schema_version);
        CHECK(number_of<int>(root, "complete", H5::PredType::NATIVE_INT) == 1);
        const H5::Group answers = file.openGroup("summary");
        CHECK(number_of<int>(answers, "draws", H5::PredType::NATIVE_INT) == 1);
        CHECK(number_of<double>(answers, "reserve_draw_min_pa", H5::PredType::NATIVE_DOUBLE) ==
              5.4);
        CHECK(text_of(answers, "remarks") == "one\ntwo\n");
        CHECK(text_of(answers, "stretched") ==
              "riser lining up to 1130 °C; board is tabled to 1000 °C (20 % of the time): "
              "small\n");
        CHECK(number_of<double>(root, "wall_clock_s", H5::PredType::NATIVE_DOUBLE) == 0.21);
        CHECK_MESSAGE(!answers.attrExists("wall_clock_s"), "equal runs differ in it");
        CHECK_MESSAGE(!answers.attrExists("plate_time_to_175c_s"), "it never happened");
    }

    TEST_CASE("a stopped burn is marked, may be empty, and stays readable") {
        const ScratchFolder folder;
        RunRecord record = sample_record();
        record.complete = false;
        Results results = sample_results();
        results.time.clear();
        for (Column& column : results.columns) column.values.clear();
        write_hdf5(folder / "run.h5", results, Summary{}, record);
        const H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDONLY);
        CHECK(number_of<int>(file.openGroup("/"), "complete", H5::PredType::NATIVE_INT) == 0);
        CHECK(values_of(file, "plate_temperature").empty());
    }

    TEST_CASE("values that are no numbers are stored without a floating-point trap") {
        const ScratchFolder folder;
        Results results = sample_results();
        results.columns[0].values[1] = std::numeric_limits<double>::quiet_NaN();
        write_hdf5(folder / "run.h5", results, sample_summary(), sample_record());
        const H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDONLY);
        CHECK(std::isnan(values_of(file, "spare_draw")[1]));
    }

    TEST_CASE("a stove file's text may pass the 64 kB of old attributes") {
        const ScratchFolder folder;
        RunRecord record = sample_record();
        record.stove_text = std::string(200'000, 'x');
        write_hdf5(folder / "run.h5", sample_results(), sample_summary(), record);
        const H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDONLY);
        CHECK(text_of(file.openGroup("/"), "stove_text") == record.stove_text);
    }

    TEST_CASE("equal runs give equal bytes, apart from when and how fast they were computed") {
        const ScratchFolder folder;
        write_hdf5(folder / "a.h5", sample_results(), sample_summary(), sample_record());
        // Over a second later: HDF5 would note the time of writing to the second.
        std::this_thread::sleep_for(std::chrono::milliseconds(1100));
        write_hdf5(folder / "b.h5", sample_results(), sample_summary(), sample_record());
        const std::string first = bytes_of(folder / "a.h5");
        CHECK(first == bytes_of(folder / "b.h5"));

        Summary later = sample_summary();
        later.wall_clock = 0.35;
        RunRecord record = sample_record();
        record.created = "2026-02-01T08:30:15Z";
        write_hdf5(folder / "c.h5", sample_results(), later, record);
        std::string third = bytes_of(folder / "c.h5");
        REQUIRE(third.size() == first.size());
        std::size_t different = 0;
        for (std::size_t i = 0; i < first.size(); ++i) different += first[i] != third[i];
        // The text of `created` has 20 characters, the number 8 bytes; each may carry one checksum
        // of 4 bytes, and the two share a block or not.
        CHECK(different > 0);
        CHECK(different <= 20 + 8 + 2 * 4);
    }

    TEST_CASE("only results of ours are taken for ours") {
        const ScratchFolder folder;
        write_hdf5(folder / "ours.h5", sample_results(), sample_summary(), sample_record());
        CHECK(kind_of_file(folder / "ours.h5") == FileKind::result);
        put(folder / "letter.h5", "Dear Sir or Madam");
        CHECK(kind_of_file(folder / "letter.h5") == FileKind::other);
        CHECK(kind_of_file(folder / "absent.h5") == FileKind::other);
        {
            const H5::H5File other((folder / "other.h5").string(), H5F_ACC_TRUNC);
            const H5::StrType type(H5::PredType::C_S1, 6);
            other.openGroup("/")
                .createAttribute("program", type, H5::DataSpace(H5S_SCALAR))
                .write(type, std::string("other"));
        }
        CHECK(kind_of_file(folder / "other.h5") == FileKind::other);
    }

    TEST_CASE("a result that cannot be written leaves the earlier one as it was") {
        const ScratchFolder folder;
        write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record());
        const std::string before = bytes_of(folder / "run.h5");
        Results broken = sample_results();
        broken.columns[1].name = "time";  // a name twice: HDF5 refuses half-way
        CHECK_THROWS_AS(write_hdf5(folder / "run.h5", broken, sample_summary(), sample_record()),
                        FileError);
        CHECK(bytes_of(folder / "run.h5") == before);
        CHECK(files_in(folder / "") == 1);
    }
}
