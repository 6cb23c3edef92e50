#include "cli/report/hdf5_objects.h"

#include <H5Cpp.h>

namespace drawwell {

void check_hdf5(int status) {
    if (status < 0) throw H5::DataSetIException("HDF5", "refused");
}

void write_attribute(H5::H5Object& object, const std::string& name, const std::string& text) {
    // Fixed length and zero-terminated: what every reader understands. Length zero is not allowed.
    H5::StrType type(H5::PredType::C_S1, text.size() + 1);
    type.setCset(H5T_CSET_UTF8);
    object.createAttribute(name, type, H5::DataSpace(H5S_SCALAR)).write(type, text);
}

void write_attribute(H5::H5Object& object, const std::string& name, int value) {
    object.createAttribute(name, H5::PredType::STD_I32LE, H5::DataSpace(H5S_SCALAR))
        .write(H5::PredType::NATIVE_INT, &value);
}

void write_attribute(H5::H5Object& object, const std::string& name, double value) {
    object.createAttribute(name, H5::PredType::IEEE_F64LE, H5::DataSpace(H5S_SCALAR))
        .write(H5::PredType::NATIVE_DOUBLE, &value);
}

H5::Group create_group(H5::H5File& file, const std::string& name) {
    const H5::PropList creation(H5P_GROUP_CREATE);
    check_hdf5(H5Pset_obj_track_times(creation.getId(), false));
    check_hdf5(H5Pset_attr_creation_order(creation.getId(),
                                          H5P_CRT_ORDER_TRACKED | H5P_CRT_ORDER_INDEXED));
    check_hdf5(H5Pset_link_creation_order(creation.getId(),
                                          H5P_CRT_ORDER_TRACKED | H5P_CRT_ORDER_INDEXED));
    const hid_t id =
        H5Gcreate2(file.getId(), name.c_str(), H5P_DEFAULT, creation.getId(), H5P_DEFAULT);
    check_hdf5(id < 0 ? -1 : 0);
    H5::Group group(id);  // counts the id once more
    H5Gclose(id);
    return group;
}

}  // namespace drawwell
