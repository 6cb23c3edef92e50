#include "validation/hard-use/fuzz/change_hdf5.h"

#include <H5Cpp.h>

#include <cmath>
#include <limits>
#include <numeric>
#include <string>
#include <vector>

namespace drawwell {
namespace {

double odd_value(Dice& dice) {
    static const double values[] = {0,
                                    -0.0,
                                    -1,
                                    1,
                                    2,
                                    273.15,
                                    1e-300,
                                    1e9,
                                    1e300,
                                    -1e300,
                                    std::numeric_limits<double>::quiet_NaN(),
                                    std::numeric_limits<double>::infinity(),
                                    -std::numeric_limits<double>::infinity()};
    return dice.chance(0.6) ? dice.one_of(values) : dice.between(-1000, 5000);
}

/// Every object below a group that is a data set or a group, by its path.
void collect(const H5::Group& group, const std::string& path, std::vector<std::string>& groups,
             std::vector<std::string>& sets) {
    groups.push_back(path);
    for (hsize_t i = 0; i < group.getNumObjs(); ++i) {
        const std::string name = group.getObjnameByIdx(i);
        const std::string full = path == "/" ? path + name : path + "/" + name;
        if (group.childObjType(name) == H5O_TYPE_GROUP)
            collect(group.openGroup(name), full, groups, sets);
        else
            sets.push_back(full);
    }
}

const std::string& any_of(const std::vector<std::string>& names, Dice& dice) {
    return names[static_cast<std::size_t>(dice.share() * static_cast<double>(names.size()))];
}

void write_text(H5::H5Object& object, const std::string& name, const std::string& text,
                std::size_t width) {
    const H5::StrType type(H5::PredType::C_S1, width);
    std::string padded = text;
    padded.resize(width);
    object.createAttribute(name, type, H5::DataSpace(H5S_SCALAR)).write(type, padded.data());
}

/// An attribute of that name again, as something else.
void put_odd_attribute(H5::H5Object& object, const std::string& name, const std::string& text,
                       Dice& dice) {
    const double value = odd_value(dice);
    switch (dice.whole(0, 6)) {
        case 0: {
            const int whole = dice.whole(-2, 5);
            object.createAttribute(name, H5::PredType::STD_I32LE, H5::DataSpace(H5S_SCALAR))
                .write(H5::PredType::NATIVE_INT, &whole);
            break;
        }
        case 1:
            object.createAttribute(name, H5::PredType::IEEE_F64LE, H5::DataSpace(H5S_SCALAR))
                .write(H5::PredType::NATIVE_DOUBLE, &value);
            break;
        case 2:  // texts that end nowhere, and before their width
            write_text(object, name, text, std::max<std::size_t>(text.size(), 1));
            break;
        case 3:
            write_text(object, name, text, text.size() + 9);
            break;
        case 4: {  // of variable length
            const H5::StrType type(H5::PredType::C_S1, H5T_VARIABLE);
            const char* at = text.c_str();
            object.createAttribute(name, type, H5::DataSpace(H5S_SCALAR)).write(type, &at);
            break;
        }
        case 5: {  // several
            const std::vector<double> values(static_cast<std::size_t>(dice.whole(1, 5)), value);
            const hsize_t shape[] = {values.size()};
            object.createAttribute(name, H5::PredType::IEEE_F64LE, H5::DataSpace(1, shape))
                .write(H5::PredType::NATIVE_DOUBLE, values.data());
            break;
        }
        default:  // nothing at all
            object.createAttribute(name, H5::PredType::IEEE_F64LE, H5::DataSpace(H5S_NULL));
    }
}

std::string text_in(const H5::Attribute& attribute) {
    if (attribute.getTypeClass() != H5T_STRING) return "5";
    if (attribute.getStrType().isVariableStr()) return "text";
    std::string text(attribute.getInMemDataSize(), '\0');
    attribute.read(attribute.getStrType(), text.data());
    return text.substr(0, text.find('\0'));
}

void change_attribute(H5::H5Object& object, Dice& dice, const TextMutator& change) {
    if (object.getNumAttrs() == 0) return;
    const auto index = static_cast<unsigned>(dice.whole(0, object.getNumAttrs() - 1));
    std::string name, text;
    {
        const H5::Attribute attribute = object.openAttribute(index);
        name = attribute.getName();
        if (name == "DIMENSION_LIST" || name == "REFERENCE_LIST") {
            if (dice.chance(0.5)) return;
            text = "x";
        } else {
            text = text_in(attribute);
        }
    }
    if (dice.chance(0.1)) {
        object.renameAttr(name, name + "_");
        return;
    }
    object.removeAttr(name);
    if (dice.chance(0.1)) return;
    if (dice.chance(0.8)) change.change(text, dice);
    if (dice.chance(0.7))
        write_text(object, name, text, text.size() + 1);
    else
        put_odd_attribute(object, name, text, dice);
}

/// A data set of that name again, of another type or shape.
void put_odd_set(H5::H5File& file, const std::string& name, Dice& dice) {
    std::vector<hsize_t> shape(static_cast<std::size_t>(dice.whole(0, 3)));
    for (hsize_t& size : shape)
        size = static_cast<hsize_t>(dice.whole(0, dice.chance(0.2) ? 2000 : 14));
    const H5::DataSpace space = shape.empty()
                                    ? H5::DataSpace(H5S_SCALAR)
                                    : H5::DataSpace(static_cast<int>(shape.size()), shape.data());
    // Sizes that no memory holds, without a byte behind them.
    const hsize_t huge[] = {hsize_t{1} << static_cast<unsigned>(dice.whole(20, 60))};
    switch (dice.whole(0, 4)) {
        case 0:
            file.createDataSet(name, H5::PredType::STD_I32LE, space);
            break;
        case 1:
            file.createDataSet(name, H5::StrType(H5::PredType::C_S1, 12), space);
            break;
        case 2: {
            H5::DSetCreatPropList creation;
            creation.setLayout(H5D_CHUNKED);
            const hsize_t chunk[] = {1024};
            creation.setChunk(1, chunk);
            file.createDataSet(name, H5::PredType::IEEE_F64LE, H5::DataSpace(1, huge), creation);
            break;
        }
        case 3:
            file.createDataSet(name, H5::PredType::IEEE_F32LE, space);
            break;
        default:
            file.createDataSet(name, H5::PredType::IEEE_F64LE, space);
    }
}

void change_set(H5::H5File& file, const std::string& name, Dice& dice) {
    if (dice.chance(0.25)) {
        file.unlink(name);
        if (dice.chance(0.8)) put_odd_set(file, name, dice);
        return;
    }
    const H5::DataSet data = file.openDataSet(name);
    const hssize_t count = data.getSpace().getSimpleExtentNpoints();
    if (count == 0) return;
    if (data.getTypeClass() == H5T_STRING) {
        const H5::StrType type = data.getStrType();
        std::string text(static_cast<std::size_t>(count) * type.getSize(), '\0');
        data.read(text.data(), type);
        for (int i = dice.whole(1, 5); i > 0 && !text.empty(); --i)
            text[static_cast<std::size_t>(dice.share() * static_cast<double>(text.size()))] =
                static_cast<char>(dice.whole(0, 255));
        data.write(text.data(), type);
        return;
    }
    if (data.getTypeClass() != H5T_FLOAT) return;
    std::vector<double> values(static_cast<std::size_t>(count));
    data.read(values.data(), H5::PredType::NATIVE_DOUBLE);
    const double chance = dice.chance(0.5) ? 0.02 : 1;
    const double same = odd_value(dice);
    for (double& value : values)
        if (dice.chance(chance)) value = chance < 1 ? odd_value(dice) : same;
    data.write(values.data(), H5::PredType::NATIVE_DOUBLE);
}

}  // namespace

void change_hdf5(const std::filesystem::path& name, Dice& dice, const TextMutator& change) {
    H5::H5File file(name.string(), H5F_ACC_RDWR);
    do {
        std::vector<std::string> groups, sets;
        collect(file.openGroup("/"), "/", groups, sets);
        const int what = dice.whole(0, 9);
        if (what < 4) {
            H5::Group group = file.openGroup(any_of(groups, dice));
            change_attribute(group, dice, change);
        } else if (what < 6 && !sets.empty()) {
            H5::DataSet data = file.openDataSet(any_of(sets, dice));
            change_attribute(data, dice, change);
        } else if (what < 9 && !sets.empty()) {
            change_set(file, any_of(sets, dice), dice);
        } else if (groups.size() > 1 && dice.chance(0.3)) {
            file.unlink(groups.back());
        }
    } while (dice.chance(0.5));
}

}  // namespace drawwell
