#include "cli/report/write_hdf5.h"

#include <H5Cpp.h>
#include <hdf5_hl.h>

#include <algorithm>
#include <map>
#include <stdexcept>
#include <string>
#include <type_traits>

#include "cli/report/file_kind.h"
#include "cli/report/hdf5_objects.h"
#include "cli/report/pending_file.h"
#include "cli/report/stretched_text.h"
#include "cli/report/summary_entries.h"
#include "cli/report/write_end_state.h"

namespace drawwell {
namespace {

std::string joined(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) text += line + "\n";
    return text;
}

H5::DataSet write_values(H5::Group& into, const std::string& name,
                         const std::vector<hsize_t>& shape, const std::vector<double>& values) {
    H5::DSetCreatPropList creation;
    check_hdf5(H5Pset_obj_track_times(creation.getId(), false));
    check_hdf5(H5Pset_attr_creation_order(creation.getId(),
                                          H5P_CRT_ORDER_TRACKED | H5P_CRT_ORDER_INDEXED));
    if (shape.size() > 1 && !values.empty()) {
        const std::vector<hsize_t> chunk = {std::min<hsize_t>(shape[0], 1024), shape[1]};
        creation.setChunk(2, chunk.data());
        creation.setShuffle();
        creation.setDeflate(4);
    }
    const H5::DataSpace space(static_cast<int>(shape.size()), shape.data());
    H5::DataSet data = into.createDataSet(name, H5::PredType::IEEE_F64LE, space, creation);
    if (!values.empty()) data.write(values.data(), H5::PredType::NATIVE_DOUBLE);
    return data;
}

H5::DataSet write_scale(H5::Group& into, const Axis& axis) {
    H5::DataSet data = write_values(into, axis.name, {axis.positions.size()}, axis.positions);
    check_hdf5(H5DSset_scale(data.getId(), axis.name.c_str()));
    write_attribute(data, "units", axis.unit);
    write_attribute(data, "long_name", axis.meaning);
    return data;
}

}  // namespace

void write_columns(H5::Group& into, const Results& results) {
    std::map<std::string, H5::DataSet> scales;
    const H5::DataSet time = write_scale(into, {"time", "s", "time after lighting", results.time});
    for (const Axis& axis : results.axes) scales.emplace(axis.name, write_scale(into, axis));

    for (const Column& column : results.columns) {
        if (column.values.size() != results.time.size() * column.width)
            throw std::logic_error("column " + column.name + " does not fit the instants");
        std::vector<hsize_t> shape = {results.time.size()};
        if (!column.axis.empty()) shape.push_back(column.width);
        H5::DataSet data = write_values(into, column.name, shape, column.values);
        check_hdf5(H5DSattach_scale(data.getId(), time.getId(), 0));
        if (!column.axis.empty())
            check_hdf5(H5DSattach_scale(data.getId(), scales.at(column.axis).getId(), 1));
        write_attribute(data, "units", column.unit);
        write_attribute(data, "long_name", column.meaning);
    }
}

namespace {

void write_summary(H5::H5File& file, const Summary& summary) {
    H5::Group group = create_group(file, "summary");
    for (const SummaryEntry& entry : summary_entries(summary)) {
        if (entry.key == "wall_clock_s") continue;  // stands with what differs between equal runs
        std::visit(
            [&](const auto& value) {
                using T = std::decay_t<decltype(value)>;
                if constexpr (std::is_same_v<T, double>)
                    write_attribute(group, std::string(entry.key), value);
                else if constexpr (std::is_same_v<T, std::string_view>)
                    write_attribute(group, std::string(entry.key), std::string(value));
                else if constexpr (!std::is_same_v<T, std::monostate>)
                    write_attribute(group, std::string(entry.key), static_cast<int>(value));
            },
            entry.value);
    }
    write_attribute(group, "remarks", joined(summary.remarks));
    std::vector<std::string> stretched;
    for (const Stretched& each : summary.stretched)
        stretched.push_back(stretched_text(each) + ": " + effect_name(each.effect));
    write_attribute(group, "stretched", joined(stretched));
}

void write_likely(H5::H5File& file, const LikelyRanges& likely) {
    H5::Group group = create_group(file, "likely");
    write_attribute(group, "days", static_cast<int>(likely.days));
    write_attribute(group, "draws_on_days", static_cast<int>(likely.draws_on));
    write_attribute(group, "smoke_back_on_days", static_cast<int>(likely.smoke_on));
    write_attribute(group, "unjudged_days", static_cast<int>(likely.unjudged));
    for (const LikelyFigure& figure : likely.figures) {
        write_attribute(group, figure.answer + "_low", figure.low);
        write_attribute(group, figure.answer + "_median", figure.median);
        write_attribute(group, figure.answer + "_high", figure.high);
    }
    if (likely.low.columns.empty()) return;
    H5::Group low = create_group(file, "likely/low"), high = create_group(file, "likely/high");
    write_columns(low, likely.low);
    write_columns(high, likely.high);
}

void write_record(H5::H5File& file, const RunRecord& record, double wall_clock) {
    H5::Group root = file.openGroup("/");
    write_attribute(root, "title", record.title);
    write_attribute(root, "program", std::string(program_mark));
    write_attribute(root, "program_version", std::string(DRAWWELL_VERSION));
    write_attribute(root, "schema_version", result_schema_version);
    write_attribute(root, "complete", record.complete ? 1 : 0);
    write_attribute(root, "created", record.created);
    write_attribute(root, "wall_clock_s", wall_clock);
    write_attribute(root, "stove_name", told_name(record.stove_name));
    write_attribute(root, "stove_overrides", joined(record.overrides));
    write_attribute(root, "stove_text", record.stove_text);
    write_attribute(root, "stove_resolved", record.stove_resolved);
    if (record.started_from.empty()) return;
    write_attribute(root, "started_from", told_name(record.started_from));
    write_attribute(root, "started_from_created", record.started_from_created);
}

}  // namespace

void write_hdf5(const std::filesystem::path& file, const Results& results, const Summary& summary,
                const RunRecord& record, const SavedState* end_state, const LikelyRanges& likely) {
    H5::Exception::dontPrint();
    try {
        H5::H5File hdf5 = new_hdf5_file();
        write_record(hdf5, record, summary.wall_clock);
        write_columns(hdf5, results);
        write_summary(hdf5, summary);
        if (end_state) write_end_state(hdf5, *end_state);
        if (likely.days > 0) write_likely(hdf5, likely);
        write_hdf5_file(hdf5, file);
    } catch (const H5::Exception& error) {
        throw FileError("cannot write " + file.string() + " (HDF5: " + error.getDetailMsg() + ")");
    }
}

}  // namespace drawwell
