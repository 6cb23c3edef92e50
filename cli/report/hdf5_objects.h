#pragma once

#include <filesystem>
#include <string>

namespace H5 {
class Group;
class H5File;
class H5Object;
}  // namespace H5

namespace drawwell {

struct Results;

/// The C calls of HDF5 report errors by a negative value, the C++ ones by H5::Exception: makes the
/// one the other.
void check_hdf5(int status);

/// A new HDF5 file, which notes no times and keeps the order of what is written. It stands in
/// memory until `write_hdf5_file` puts it where it belongs, since a full disk brings down the
/// library itself, and the program with it.
H5::H5File new_hdf5_file();

/// Closes such a file and writes it; an earlier one is replaced only when it is whole. Takes twice
/// the file's size of memory. FileError.
void write_hdf5_file(H5::H5File& file, const std::filesystem::path& target);

/// Attributes as every reader understands them, in the order they are written.
void write_attribute(H5::H5Object& object, const std::string& name, const std::string& text);
void write_attribute(H5::H5Object& object, const std::string& name, int value);
void write_attribute(H5::H5Object& object, const std::string& name, double value);

/// A group that notes no times and keeps the order of its attributes and members.
H5::Group create_group(H5::H5File& file, const std::string& name);

/// A burn's columns with their axes as dimension scales, as data sets of a group.
void write_columns(H5::Group& into, const Results& results);

}  // namespace drawwell
