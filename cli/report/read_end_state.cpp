#include "cli/report/read_end_state.h"

#include <H5Cpp.h>

#include <cmath>
#include <vector>

#include "cli/report/end_state_fields.h"
#include "cli/report/file_kind.h"
#include "cli/report/pending_file.h"
#include "cli/report/write_hdf5.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr hsize_t most_rows = 1'000'000;  // far beyond any stove
constexpr std::size_t longest_text = 4096;

struct Damaged {};

void require(bool good) {
    if (!good) throw Damaged{};
}

std::size_t rows_of(const H5::DataSet& data) {
    const H5::DataSpace space = data.getSpace();
    require(space.getSimpleExtentNdims() == 1);
    const hssize_t count = space.getSimpleExtentNpoints();
    require(count >= 0 && static_cast<hsize_t>(count) <= most_rows);
    return static_cast<std::size_t>(count);
}

std::vector<std::string> read_names(const H5::Group& group, const std::string& name) {
    const H5::DataSet data = group.openDataSet(name);
    const std::size_t rows = rows_of(data);
    const H5::StrType type = data.getStrType();
    const std::size_t width = type.getSize();
    require(!type.isVariableStr() && width > 0 && width <= longest_text);
    std::string text(rows * width, '\0');
    if (rows > 0) data.read(text.data(), type);
    std::vector<std::string> names;
    for (std::size_t i = 0; i < rows; ++i) {
        const std::string padded = text.substr(i * width, width);
        names.push_back(padded.substr(0, padded.find('\0')));
    }
    return names;
}

std::vector<double> read_row(const H5::Group& group, const std::string& name, std::size_t rows,
                             double least, double most) {
    const H5::DataSet data = group.openDataSet(name);
    require(rows_of(data) == rows);
    std::vector<double> values(rows);
    if (rows > 0) data.read(values.data(), H5::PredType::NATIVE_DOUBLE);
    for (const double value : values)
        require(std::isfinite(value) && value >= least && value <= most);
    return values;
}

template <class Number>
Number read_number(const H5::H5Object& object, const char* name, const H5::PredType& type) {
    const H5::Attribute attribute = object.openAttribute(name);
    require(attribute.getSpace().getSimpleExtentNpoints() == 1);
    Number number{};
    attribute.read(type, &number);
    return number;
}

std::vector<std::pair<std::string, double>> read_pairs(const H5::Group& group, const char* names,
                                                       const char* values, double least,
                                                       double most) {
    std::vector<std::pair<std::string, double>> pairs;
    for (std::string& name : read_names(group, names)) pairs.emplace_back(std::move(name), 0.0);
    const std::vector<double> row = read_row(group, values, pairs.size(), least, most);
    for (std::size_t i = 0; i < row.size(); ++i) pairs[i].second = row[i];
    return pairs;
}

SavedState read_state(const H5::Group& group) {
    constexpr double coldest = 50, hottest = 4000;  // [K] that the solver ever gives
    constexpr double largest_flow = 50;             // [kg/s] likewise
    SavedState state;
    state.time = read_number<double>(group, "time_s", H5::PredType::NATIVE_DOUBLE);
    require(std::isfinite(state.time) && state.time >= 0 && state.time < 1e9);
    state.temperature = read_pairs(group, "wall", "wall_temperature", coldest, hottest);
    state.inlet_flow = read_pairs(group, "inlet", "inlet_flow", -largest_flow, largest_flow);
    const std::vector<std::string> names = read_names(group, "left");
    const std::vector<std::string> places = read_names(group, "left_place");
    require(places.size() == names.size());
    state.left.resize(names.size());
    for (std::size_t i = 0; i < names.size(); ++i) {
        state.left[i].lot.name = names[i];
        state.left[i].place = places[i];
    }
    for (const LotField& field : lot_fields) {
        const auto row = read_row(group, field.name, names.size(), field.least, field.most);
        for (std::size_t i = 0; i < row.size(); ++i) field.set(state.left[i], row[i]);
    }
    return state;
}

}  // namespace

EndState read_end_state(const std::filesystem::path& file) {
    require_readable(file);
    H5::Exception::dontPrint();
    if (kind_of_file(file) != FileKind::result)
        throw InputError("cannot start from " + file.string() +
                         ": it is no result of drawwell burn, or is damaged");
    try {
        const H5::H5File hdf5(file.string(), H5F_ACC_RDONLY);
        const H5::Group root = hdf5.openGroup("/");
        const int version = read_number<int>(root, "schema_version", H5::PredType::NATIVE_INT);
        if (version != result_schema_version)
            throw InputError("cannot start from " + file.string() + ": its layout is version " +
                             std::to_string(version) + ", this program's is " +
                             std::to_string(result_schema_version) + "; burn it again");
        if (!hdf5.nameExists("end_state"))
            throw InputError("cannot start from " + file.string() +
                             ": an older drawwell wrote it, which did not keep the state at the "
                             "end; burn it again");
        EndState end;
        end.complete = read_number<int>(root, "complete", H5::PredType::NATIVE_INT) != 0;
        const H5::Attribute created = root.openAttribute("created");
        require(created.getInMemDataSize() <= longest_text);
        created.read(created.getStrType(), end.created);
        end.state = read_state(hdf5.openGroup("end_state"));
        return end;
    } catch (const H5::Exception&) {
    } catch (const Damaged&) {
    }
    throw InputError("cannot start from " + file.string() + ": it is damaged; burn it again");
}

}  // namespace drawwell
