#include "cli/report/write_end_state.h"

#include <H5Cpp.h>

#include <algorithm>
#include <string>
#include <vector>

#include "cli/report/end_state_fields.h"
#include "cli/report/hdf5_objects.h"
#include "cli/report/schema_versions.h"

namespace drawwell {
namespace {

H5::DataSet create_row(H5::Group& group, const std::string& name, const H5::DataType& type,
                       std::size_t count) {
    const H5::DSetCreatPropList creation;
    check_hdf5(H5Pset_obj_track_times(creation.getId(), false));
    check_hdf5(H5Pset_attr_creation_order(creation.getId(),
                                          H5P_CRT_ORDER_TRACKED | H5P_CRT_ORDER_INDEXED));
    const hsize_t size = count;
    if (count > 0) {
        creation.setChunk(1, &size);
        creation.setFletcher32();
    }
    return group.createDataSet(name, type, H5::DataSpace(1, &size), creation);
}

void write_names(H5::Group& group, const std::string& name, const std::string& meaning,
                 const std::vector<std::string>& names) {
    std::size_t longest = 0;
    for (const std::string& each : names) longest = std::max(longest, each.size());
    H5::StrType type(H5::PredType::C_S1, longest + 1);
    type.setCset(H5T_CSET_UTF8);
    std::string text(names.size() * (longest + 1), '\0');
    for (std::size_t i = 0; i < names.size(); ++i)
        text.replace(i * (longest + 1), names[i].size(), names[i]);
    H5::DataSet data = create_row(group, name, type, names.size());
    if (!names.empty()) data.write(text.data(), type);
    write_attribute(data, "long_name", meaning);
}

void write_row(H5::Group& group, const std::string& name, const std::string& unit,
               const std::string& meaning, const std::vector<double>& values) {
    H5::DataSet data = create_row(group, name, H5::PredType::IEEE_F64LE, values.size());
    if (!values.empty()) data.write(values.data(), H5::PredType::NATIVE_DOUBLE);
    write_attribute(data, "units", unit);
    write_attribute(data, "long_name", meaning);
}

template <class Row, class Get>
auto each(const std::vector<Row>& rows, Get get) {
    std::vector<std::decay_t<decltype(get(rows.front()))>> values;
    for (const Row& row : rows) values.push_back(get(row));
    return values;
}

}  // namespace

void write_end_state(H5::H5File& file, const SavedState& state) {
    H5::Group group = create_group(file, "end_state");
    write_attribute(group, "model_version", model_version);
    write_attribute(group, "time_s", state.time);
    const auto name = [](const auto& pair) { return pair.first; };
    const auto value = [](const auto& pair) { return pair.second; };
    write_names(group, "wall", "pieces of wall", each(state.temperature, name));
    write_row(group, "wall_temperature", "K", "temperature of each",
              each(state.temperature, value));
    write_names(group, "inlet", "openings that let air in", each(state.inlet_flow, name));
    write_row(group, "inlet_flow", "kg/s", "flow by each, inward", each(state.inlet_flow, value));
    write_names(group, "left", "loads of which wood or embers are left",
                each(state.left, [](const LeftLot& left) { return left.lot.name; }));
    write_names(group, "left_place", "where each lies",
                each(state.left, [](const LeftLot& left) { return left.place; }));
    for (const LotField& field : lot_fields)
        write_row(group, field.name, field.unit, field.meaning, each(state.left, field.get));
}

}  // namespace drawwell
