#include "cli/report/read_end_state.h"

#include <H5Cpp.h>

#include <cmath>
#include <vector>

#include "cli/report/end_state_fields.h"
#include "cli/report/read_result.h"
#include "cli/report/schema_versions.h"
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

std::string read_text(const H5::Group& group, const char* name) {
    const H5::Attribute attribute = group.openAttribute(name);
    require(attribute.getTypeClass() == H5T_STRING && attribute.getInMemDataSize() <= longest_text);
    std::string text;
    attribute.read(attribute.getStrType(), text);
    return text.substr(0, text.find('\0'));
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
    require_result(file, "start from");
    H5::Exception::dontPrint();
    const std::string refused = "cannot start from " + file.string();
    try {
        const H5::H5File hdf5(file.string(), H5F_ACC_RDONLY);
        const H5::Group root = hdf5.openGroup("/");
        const int version = read_number<int>(root, "schema_version", H5::PredType::NATIVE_INT);
        const std::string program = read_text(root, "program_version");
        if (version > result_schema_version)
            throw InputError(later_layout(refused, version, program));
        if (!hdf5.nameExists("end_state"))
            throw InputError(refused +
                             ": an older drawwell wrote it, which did not keep the state at the "
                             "end; burn it again");
        const H5::Group state = hdf5.openGroup("end_state");
        // The first results kept a state without saying of which version.
        const int model = state.attrExists("model_version")
                              ? read_number<int>(state, "model_version", H5::PredType::NATIVE_INT)
                              : 1;
        if (model != model_version)
            throw InputError(refused + ": drawwell " + program +
                             " wrote it, whose walls, wood and keys are of model version " +
                             std::to_string(model) + ", and this program's are of version " +
                             std::to_string(model_version) +
                             "; burn it again with this program, then start from that");
        EndState end;
        end.complete = read_number<int>(root, "complete", H5::PredType::NATIVE_INT) != 0;
        end.created = read_text(root, "created");
        end.state = read_state(state);
        return end;
    } catch (const H5::Exception&) {
    } catch (const Damaged&) {
    }
    throw InputError(refused + ": it is damaged; burn it again");
}

}  // namespace drawwell
