#include <H5Cpp.h>
#include <hdf5_hl.h>

#include <algorithm>
#include <limits>
#include <numeric>

#include "cli/report/file_kind.h"
#include "cli/report/hdf5_objects.h"
#include "cli/report/pending_file.h"
#include "cli/report/run_record.h"
#include "cli/report/schema_versions.h"
#include "cli/study/answer_names.h"
#include "cli/study/compare_files.h"

namespace drawwell {
namespace {

H5::DSetCreatPropList without_times() {
    H5::DSetCreatPropList creation;
    check_hdf5(H5Pset_obj_track_times(creation.getId(), false));
    return creation;
}

/// Data sets over the rows.
class RowFile {
  public:
    explicit RowFile(std::size_t rows) : count_(rows), space_(1, &count_), file_(new_hdf5_file()) {
        std::vector<double> number(rows);
        std::iota(number.begin(), number.end(), 0.0);
        H5::DataSet data = write("row", number);
        check_hdf5(H5DSset_scale(data.getId(), "row"));
        scale_ = data;
    }

    void numbers(const std::string& name, const std::vector<double>& values) {
        attach(write(name, values));
    }
    void words(const std::string& name, const std::vector<std::string>& values) {
        std::size_t width = 1;
        for (const std::string& value : values) width = std::max(width, value.size());
        H5::StrType type(H5::PredType::C_S1, width);
        type.setCset(H5T_CSET_UTF8);
        type.setStrpad(H5T_STR_NULLPAD);
        std::string bytes(width * values.size(), '\0');
        for (std::size_t i = 0; i < values.size(); ++i)
            values[i].copy(bytes.data() + i * width, width);
        H5::DataSet data = file_.createDataSet(name, type, space_, without_times());
        data.write(bytes.data(), type);
        attach(data);
    }
    H5::H5File& file() { return file_; }
    void write_to(const std::filesystem::path& target) {
        scale_.close();
        write_hdf5_file(file_, target);
    }

  private:
    H5::DataSet write(const std::string& name, const std::vector<double>& values) {
        H5::DataSet data =
            file_.createDataSet(name, H5::PredType::IEEE_F64LE, space_, without_times());
        data.write(values.data(), H5::PredType::NATIVE_DOUBLE);
        return data;
    }
    void attach(const H5::DataSet& data) {
        check_hdf5(H5DSattach_scale(data.getId(), scale_.getId(), 0));
    }

    hsize_t count_;
    H5::DataSpace space_;
    H5::H5File file_;
    H5::DataSet scale_;
};

void write_answer(RowFile& out, const std::string& name, const std::vector<Row>& rows) {
    std::vector<double> numbers;
    std::vector<std::string> words;
    bool spoken = false;
    for (const Row& row : rows) {
        const Answer* answer = row.answers.find(name);
        const std::string* word = answer ? std::get_if<std::string>(answer) : nullptr;
        spoken = spoken || word;
        words.push_back(word ? *word : "");
        numbers.push_back(
            row.answers.number(name).value_or(std::numeric_limits<double>::quiet_NaN()));
    }
    // A slash would make a group: `pot.kettle/steam_kg` becomes pot.kettle.steam_kg.
    std::string flat = name;
    std::replace(flat.begin(), flat.end(), '/', '.');
    if (spoken)
        out.words(flat, words);
    else
        out.numbers(flat, numbers);
}

void write_series(H5::H5File& file, const Study& study, const std::vector<Row>& rows,
                  const Journal& series) {
    create_group(file, "series");
    const std::vector<std::string> stoves = told_files(study);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (!rows[i].error.empty()) continue;
        H5::Group group = create_group(file, "series/" + std::to_string(i));
        write_attribute(group, "stove", stoves[i]);
        for (const Override& set : study.variant_of(i).settings)
            write_attribute(group, "set." + set.key, told_setting(set.key, set.value));
        write_columns(group, series.series_of(rows[i].identity));
    }
}

}  // namespace

void write_compare_hdf5(const std::filesystem::path& file, const Study& study,
                        const std::vector<Row>& rows, const Journal* series) {
    H5::Exception::dontPrint();
    try {
        RowFile out(rows.size());
        std::vector<std::string> errors;
        for (std::size_t i = 0; i < rows.size(); ++i)
            errors.push_back(told_text(rows[i].error, {study.file_of(i).name}));
        out.words("stove", told_files(study));
        for (const std::string& key : varied_keys(study)) {
            std::vector<std::string> values;
            for (std::size_t i = 0; i < rows.size(); ++i)
                values.push_back(told_setting(key, setting_of(study, i, key)));
            out.words("set." + key, values);
        }
        out.words("error", errors);
        for (const std::string& name : answer_names(rows)) write_answer(out, name, rows);
        if (series) write_series(out.file(), study, rows, *series);
        H5::Group root = out.file().openGroup("/");
        write_attribute(root, "program", std::string(program_mark));
        write_attribute(root, "content", std::string(comparison_mark));
        write_attribute(root, "program_version", std::string(DRAWWELL_VERSION));
        write_attribute(root, "schema_version", comparison_schema_version);
        root.close();
        out.write_to(file);
    } catch (const H5::Exception& error) {
        throw FileError("cannot write " + file.string() + " (HDF5: " + error.getDetailMsg() + ")");
    }
}

}  // namespace drawwell
