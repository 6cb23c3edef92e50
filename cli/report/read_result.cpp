#include "cli/report/read_result.h"

#include <H5Cpp.h>
#include <hdf5_hl.h>

#include <algorithm>
#include <array>

#include "cli/report/file_kind.h"
#include "cli/report/hdf5_objects.h"
#include "cli/report/pending_file.h"
#include "cli/report/stretched_text.h"
#include "cli/report/summary_entries.h"
#include "cli/report/write_hdf5.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr hsize_t most_values = 100'000'000;  // of a column: far beyond any burn
constexpr std::size_t longest_text = 16'000'000;

struct Damaged {};

void require(bool good) {
    if (!good) throw Damaged{};
}

std::string text_of(const H5::H5Object& object, const std::string& name) {
    const H5::Attribute attribute = object.openAttribute(name);
    require(attribute.getTypeClass() == H5T_STRING);
    require(attribute.getInMemDataSize() <= longest_text);
    std::string text;
    attribute.read(attribute.getStrType(), text);
    return text.substr(0, text.find('\0'));
}

double number_of(const H5::H5Object& object, const std::string& name) {
    const H5::Attribute attribute = object.openAttribute(name);
    require(attribute.getSpace().getSimpleExtentNpoints() == 1);
    double number = 0;
    attribute.read(H5::PredType::NATIVE_DOUBLE, &number);
    return number;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::size_t start = 0;
    while (start < text.size()) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        lines.push_back(text.substr(start, end - start));
        start = end + 1;
    }
    return lines;
}

std::vector<double> values_of(const H5::DataSet& data) {
    require(data.getTypeClass() == H5T_FLOAT);
    const hssize_t count = data.getSpace().getSimpleExtentNpoints();
    require(count >= 0 && static_cast<hsize_t>(count) <= most_values);
    std::vector<double> values(static_cast<std::size_t>(count));
    if (count > 0) data.read(values.data(), H5::PredType::NATIVE_DOUBLE);
    return values;
}

/// The name of the scale on a data set's second dimension.
std::string second_axis(const H5::DataSet& data) {
    // H5DSiterate_scales takes for granted that this is a list of references, one a dimension.
    const H5::Attribute lists = data.openAttribute("DIMENSION_LIST");
    require(lists.getTypeClass() == H5T_VLEN);
    require(lists.getVarLenType().getSuper().getClass() == H5T_REFERENCE);
    require(lists.getSpace().getSimpleExtentNpoints() == 2);
    std::string name;
    const auto note = [](hid_t, unsigned, hid_t scale, void* into) -> herr_t {
        std::array<char, 256> text{};
        if (H5Iget_name(scale, text.data(), text.size()) <= 1) return -1;
        *static_cast<std::string*>(into) = text.data() + 1;  // without the root's slash
        return 1;
    };
    require(H5DSiterate_scales(data.getId(), 1, nullptr, note, &name) == 1);
    return name;
}

/// H5DSis_scale frees twice what it read where CLASS is a text of another kind.
bool is_scale(const H5::DataSet& data) {
    return data.attrExists("CLASS") && text_of(data, "CLASS") == "DIMENSION_SCALE";
}

void read_column(Results& results, const H5::DataSet& data, const std::string& name) {
    const std::string unit = text_of(data, "units"), meaning = text_of(data, "long_name");
    if (is_scale(data)) {
        if (name == "time")
            results.time = values_of(data);
        else
            results.axes.push_back({name, unit, meaning, values_of(data)});
        return;
    }
    const H5::DataSpace space = data.getSpace();
    const int dimensions = space.getSimpleExtentNdims();
    require(dimensions == 1 || dimensions == 2);
    std::array<hsize_t, 2> shape{0, 1};
    space.getSimpleExtentDims(shape.data());
    Column column{name, unit, meaning, "", static_cast<std::size_t>(shape[1]), values_of(data)};
    if (dimensions == 2) column.axis = second_axis(data);
    results.columns.push_back(std::move(column));
}

Results read_columns(const H5::Group& from) {
    Results results;
    for (hsize_t i = 0; i < from.getNumObjs(); ++i) {
        // In the order they were written, which is that of `list columns`.
        std::array<char, 256> name{};
        check_hdf5(
            static_cast<int>(H5Lget_name_by_idx(from.getId(), ".", H5_INDEX_CRT_ORDER, H5_ITER_INC,
                                                i, name.data(), name.size(), H5P_DEFAULT)));
        if (from.childObjType(name.data()) == H5O_TYPE_DATASET)
            read_column(results, from.openDataSet(name.data()), name.data());
    }
    for (const Column& column : results.columns)
        require(column.values.size() == results.time.size() * column.width);
    require(std::is_sorted(results.time.begin(), results.time.end()));
    return results;
}

void read_summary(BurnResult& result, const H5::Group& group, double wall_clock) {
    SummaryFigures figures;
    for (int i = 0; i < group.getNumAttrs(); ++i) {
        const H5::Attribute attribute = group.openAttribute(static_cast<unsigned>(i));
        const std::string name = attribute.getName();
        if (attribute.getTypeClass() == H5T_STRING)
            figures.words[name] = text_of(group, name);
        else
            figures.numbers[name] = number_of(group, name);
    }
    figures.numbers["wall_clock_s"] = wall_clock;
    result.summary = summary_from(figures);
    result.summary.remarks = lines_of(figures.words["remarks"]);
    // Each line ends with its effect, which is told apart here so that pages can weigh it.
    const auto take = [&](Effect effect, std::vector<std::string>& into) {
        const std::string ending = ": " + effect_name(effect);
        for (const std::string& line : lines_of(figures.words["stretched"]))
            if (line.ends_with(ending)) into.push_back(line.substr(0, line.size() - ending.size()));
    };
    take(Effect::judge_with_care, result.with_care);
    take(Effect::small, result.small_effect);
}

LikelyRanges read_likely(const H5::Group& group) {
    constexpr std::string_view ending = "_median";
    const auto count = [&](const char* name) {
        return static_cast<std::size_t>(std::max(number_of(group, name), 0.0));
    };
    LikelyRanges likely{count("days"), count("draws_on_days"), count("smoke_back_on_days")};
    if (group.attrExists("unjudged_days")) likely.unjudged = count("unjudged_days");
    for (int i = 0; i < group.getNumAttrs(); ++i) {
        const std::string name = group.openAttribute(static_cast<unsigned>(i)).getName();
        if (!name.ends_with(ending)) continue;
        const std::string answer = name.substr(0, name.size() - ending.size());
        likely.figures.push_back({answer, number_of(group, answer + "_low"), number_of(group, name),
                                  number_of(group, answer + "_high")});
    }
    if (!group.nameExists("low")) return likely;
    likely.low = read_columns(group.openGroup("low"));
    likely.high = read_columns(group.openGroup("high"));
    require(likely.low.time == likely.high.time);
    return likely;
}

RunRecord read_record(const H5::Group& root) {
    RunRecord record;
    record.title = text_of(root, "title");
    record.created = text_of(root, "created");
    record.complete = number_of(root, "complete") != 0;
    record.stove_name = text_of(root, "stove_name");
    record.stove_text = text_of(root, "stove_text");
    record.stove_resolved = text_of(root, "stove_resolved");
    record.overrides = lines_of(text_of(root, "stove_overrides"));
    if (!root.attrExists("started_from")) return record;
    record.started_from = text_of(root, "started_from");
    record.started_from_created = text_of(root, "started_from_created");
    return record;
}

}  // namespace

void require_result(const std::filesystem::path& file, std::string_view what_for) {
    require_readable(file);
    const FileKind kind = kind_of_file(file);
    if (kind == FileKind::result) return;
    throw InputError("cannot " + std::string(what_for) + " " + file.string() + ": it is " +
                     (kind == FileKind::other
                          ? std::string("no result of drawwell burn, or is damaged")
                          : std::string(kind_in_words(kind)) + ", and no result of drawwell burn"));
}

std::string later_layout(const std::string& what, int version, const std::string& program) {
    return what + ": drawwell " + program + " wrote it in a layout of version " +
           std::to_string(version) + ", and this program knows none after " +
           std::to_string(result_schema_version) + "; use that drawwell, or a later one";
}

BurnResult read_result(const std::filesystem::path& file) {
    require_result(file, "show");
    H5::Exception::dontPrint();
    try {
        const H5::H5File hdf5(file.string(), H5F_ACC_RDONLY);
        const H5::Group root = hdf5.openGroup("/");
        const int version = static_cast<int>(number_of(root, "schema_version"));
        require(version >= 1);
        if (version > result_schema_version)
            throw InputError(later_layout("cannot show " + file.string(), version,
                                          text_of(root, "program_version")));
        BurnResult result;
        result.results = read_columns(hdf5);
        result.record = read_record(root);
        read_summary(result, hdf5.openGroup("summary"), number_of(root, "wall_clock_s"));
        if (root.nameExists("likely")) result.likely = read_likely(hdf5.openGroup("likely"));
        return result;
    } catch (const H5::Exception&) {
    } catch (const Damaged&) {
    }
    throw InputError("cannot show " + file.string() + ": it is damaged; burn it again");
}

}  // namespace drawwell
