#include "cli/report/hdf5_objects.h"

#include <H5Cpp.h>

#include "cli/report/pending_file.h"

namespace drawwell {

void check_hdf5(int status) {
    if (status < 0) throw H5::DataSetIException("HDF5", "refused");
}

H5::H5File new_hdf5_file() {
    constexpr std::size_t growth = 1 << 20;  // [bytes] by which its memory grows
    const H5::FileCreatPropList creation;
    check_hdf5(H5Pset_obj_track_times(creation.getId(), false));
    // Columns are listed in the order they were written, not by the alphabet.
    check_hdf5(H5Pset_link_creation_order(creation.getId(),
                                          H5P_CRT_ORDER_TRACKED | H5P_CRT_ORDER_INDEXED));
    // Keeping the order of attributes also lets one of them, here the stove file's text, pass 64
    // kB.
    check_hdf5(H5Pset_attr_creation_order(creation.getId(),
                                          H5P_CRT_ORDER_TRACKED | H5P_CRT_ORDER_INDEXED));
    const H5::FileAccPropList access;
    access.setCore(growth, false);
    // The library first looks whether a file of that name is there: below a device none can be.
    return {"/dev/null/result", H5F_ACC_TRUNC, creation, access};
}

void write_hdf5_file(H5::H5File& file, const std::filesystem::path& target) {
    file.flush(H5F_SCOPE_GLOBAL);
    const ssize_t size = H5Fget_file_image(file.getId(), nullptr, 0);
    check_hdf5(size < 0 ? -1 : 0);
    std::string image(static_cast<std::size_t>(size), '\0');
    check_hdf5(H5Fget_file_image(file.getId(), image.data(), image.size()) == size ? 0 : -1);
    file.close();
    write_whole(target, image);
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
