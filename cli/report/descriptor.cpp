#include "cli/report/descriptor.h"

#include <unistd.h>

#include <cerrno>

namespace drawwell {

int Descriptor::close() {
    if (!open()) return 0;
    // After EINTR Linux has closed it all the same.
    return ::close(std::exchange(number_, -1)) == 0 || errno == EINTR ? 0 : errno;
}

int Descriptor::write(std::string_view bytes) const {
    while (!bytes.empty()) {
        const ssize_t written = ::write(number_, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return errno;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return 0;
}

int Descriptor::flush() const {
    // Some file systems cannot flush a folder and say so with EINVAL.
    return ::fsync(number_) == 0 || errno == EINVAL ? 0 : errno;
}

}  // namespace drawwell
