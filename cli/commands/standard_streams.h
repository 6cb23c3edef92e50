#pragma once

namespace drawwell {

/// Sees that no file that is opened later takes the place of a standard stream which the caller
/// closed, and that writing into a closed pipe or past a limit of size is an error like others,
/// rather than the end.
void prepare_streams();

/// Writes out what was printed. FileError: some of it could not be written, now or before.
void flush_output();

}  // namespace drawwell
