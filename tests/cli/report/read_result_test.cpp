#include "cli/report/read_result.h"

#include <H5Cpp.h>
#include <doctest/doctest.h>

#include "cli/report/pending_file.h"
#include "cli/report/summary_entries.h"
#include "cli/report/write_hdf5.h"
#include "solver/errors.h"
#include "tests/cli/report/sample_run.h"
#include "tests/cli/scratch_folder.h"

using namespace drawwell;

TEST_SUITE("cli/report/read_result") {
    TEST_CASE("a result is read back as it was written, columns in their order") {
        const ScratchFolder folder;
        Summary summary = sample_summary();
        summary.remarks = {"load main waited", "another"};
        Stretched bends{"bends", "",  "Reynolds number",       "",    2e5, 1e6, 7390,
                        1,       0.1, Effect::judge_with_care, "draw"};
        Stretched slow = bends;
        slow.effect = Effect::small;
        Stretched idle = bends;
        idle.effect = Effect::nothing;
        summary.stretched = {bends, slow, idle, bends};
        write_hdf5(folder / "run.h5", sample_results(), summary, sample_record());

        const BurnResult read = read_result(folder / "run.h5");
        const Results written = sample_results();
        CHECK(read.results.time == written.time);
        REQUIRE(read.results.columns.size() == written.columns.size());
        for (std::size_t i = 0; i < written.columns.size(); ++i) {
            CHECK(read.results.columns[i].name == written.columns[i].name);
            CHECK(read.results.columns[i].unit == written.columns[i].unit);
            CHECK(read.results.columns[i].meaning == written.columns[i].meaning);
            CHECK(read.results.columns[i].axis == written.columns[i].axis);
            CHECK(read.results.columns[i].width == written.columns[i].width);
            CHECK(read.results.columns[i].values == written.columns[i].values);
        }
        REQUIRE(read.results.axes.size() == 1);
        CHECK(read.results.axes[0].name == "plate_radius");
        CHECK(read.results.axes[0].unit == "m");
        CHECK(read.results.axes[0].positions == written.axes[0].positions);

        CHECK(read.summary.draws == true);
        CHECK(*read.summary.plate_centre_max == doctest::Approx(*summary.plate_centre_max));
        CHECK(read.summary.remarks == summary.remarks);
        CHECK(read.with_care.size() == 2);
        CHECK(read.small_effect.size() == 1);
        CHECK(read.with_care[0].find("Reynolds number 7390") != std::string::npos);
        CHECK_FALSE(read.with_care[0].ends_with("care"));

        CHECK(read.record.title == "test stove");
        CHECK(read.record.stove_text == sample_record().stove_text);
        CHECK(read.record.stove_resolved == sample_record().stove_resolved);
        CHECK(read.record.overrides == sample_record().overrides);
        CHECK(read.record.created == sample_record().created);
        CHECK(read.record.complete);
        CHECK(read.record.started_from.empty());
    }

    TEST_CASE("a burn stopped before its end and one begun from another say so when read back") {
        const ScratchFolder folder;
        RunRecord record = sample_record();
        record.complete = false;
        record.started_from = "yesterday.h5";
        record.started_from_created = "2026-01-30T12:00:00Z";
        write_hdf5(folder / "run.h5", sample_results(), sample_summary(), record);
        const BurnResult read = read_result(folder / "run.h5");
        CHECK_FALSE(read.record.complete);
        CHECK(read.record.started_from == "yesterday.h5");
        CHECK(read.record.started_from_created == "2026-01-30T12:00:00Z");
    }

    TEST_CASE("what is no result is refused with its reason") {
        const ScratchFolder folder;
        put(folder / "letter.h5", "a letter");
        CHECK_THROWS_AS(read_result(folder / "none.h5"), FileError);
        CHECK_THROWS_AS(read_result(folder / ""), FileError);
        CHECK_THROWS_WITH_AS(read_result(folder / "letter.h5"), doctest::Contains("no result"),
                             InputError);
    }

    TEST_CASE("a damaged result is refused, as is one of another layout") {
        const ScratchFolder folder;
        const auto spoil = [&](const auto& how) {
            write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record());
            H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDWR);
            how(file);
        };
        spoil([](H5::H5File& file) { file.unlink("summary"); });
        CHECK_THROWS_WITH_AS(read_result(folder / "run.h5"), doctest::Contains("damaged"),
                             InputError);
        spoil([](H5::H5File& file) { file.unlink("time"); });
        CHECK_THROWS_WITH_AS(read_result(folder / "run.h5"), doctest::Contains("damaged"),
                             InputError);
        spoil([](H5::H5File& file) {
            const int later = result_schema_version + 1;
            file.openGroup("/")
                .openAttribute("schema_version")
                .write(H5::PredType::NATIVE_INT, &later);
        });
        CHECK_THROWS_WITH_AS(read_result(folder / "run.h5"), doctest::Contains("layout"),
                             InputError);
    }

    TEST_CASE("a column whose list of axes is something else is refused") {
        const ScratchFolder folder;
        for (const int values : {1, 2}) {
            write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record());
            {
                const H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDWR);
                H5::DataSet plate = file.openDataSet("plate_temperature");
                plate.removeAttr("DIMENSION_LIST");
                const std::vector<int> numbers(static_cast<std::size_t>(values), 7);
                const hsize_t shape[] = {numbers.size()};
                plate
                    .createAttribute("DIMENSION_LIST", H5::PredType::STD_I32LE,
                                     H5::DataSpace(1, shape))
                    .write(H5::PredType::NATIVE_INT, numbers.data());
            }
            CHECK_THROWS_WITH_AS(read_result(folder / "run.h5"), doctest::Contains("damaged"),
                                 InputError);
        }
    }

    TEST_CASE("an axis whose mark is spoilt is refused") {
        const ScratchFolder folder;
        for (const char* axis : {"time", "plate_radius"}) {
            write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record());
            {
                const H5::H5File file((folder / "run.h5").string(), H5F_ACC_RDWR);
                const H5::Attribute mark = file.openDataSet(axis).openAttribute("CLASS");
                mark.write(mark.getStrType(), std::string("DIMENSION-SCALE"));
            }
            CHECK_THROWS_WITH_AS(read_result(folder / "run.h5"), doctest::Contains("damaged"),
                                 InputError);
        }
    }

    TEST_CASE("what the answers likely are is read back, and absent where nobody asked") {
        const ScratchFolder folder;
        write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record());
        CHECK(read_result(folder / "run.h5").likely.days == 0);
        LikelyRanges likely{
            40, 33, 5, {{"plate_centre_max_c", 244, 306, 358}, {"smoke_back_s", 0, 0, 90}}};
        likely.low.time = likely.high.time = sample_results().time;
        likely.low.columns = {{"spare_draw", "Pa", "spare draw", "", 1, {1, 2, 3}}};
        likely.high.columns = {{"spare_draw", "Pa", "spare draw", "", 1, {7, 8, 9}}};
        likely.unjudged = 2;
        write_hdf5(folder / "run.h5", sample_results(), sample_summary(), sample_record(), nullptr,
                   likely);
        const LikelyRanges read = read_result(folder / "run.h5").likely;
        CHECK(read.days == 40);
        CHECK(read.draws_on == 33);
        CHECK(read.smoke_on == 5);
        CHECK(read.unjudged == 2);
        REQUIRE(read.find("plate_centre_max_c"));
        CHECK(read.find("plate_centre_max_c")->low == 244);
        CHECK(read.find("plate_centre_max_c")->median == 306);
        CHECK(read.find("plate_centre_max_c")->high == 358);
        CHECK(read.find("smoke_back_s")->high == 90);
        CHECK(read.low.time == sample_results().time);
        REQUIRE(read.low.find("spare_draw"));
        CHECK(read.low.find("spare_draw")->values == std::vector<double>{1, 2, 3});
        REQUIRE(read.high.find("spare_draw"));
        CHECK(read.high.find("spare_draw")->values == std::vector<double>{7, 8, 9});
        CHECK_FALSE(read.find("exit_gas_mean_c"));
    }
}
