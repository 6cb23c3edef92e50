#include "cli/commands/standard_streams.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <iostream>
#include <string>
#include <system_error>

#include "cli/report/pending_file.h"

namespace drawwell {

void prepare_streams() {
    for (const int stream : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) {
        if (::fcntl(stream, F_GETFD) >= 0) continue;
        // Takes the lowest number that is free, this one. Opened the wrong way round, so that
        // reading or writing fails as it does on a stream that is closed.
        ::open("/dev/null", stream == STDIN_FILENO ? O_WRONLY : O_RDONLY);
    }
    std::signal(SIGPIPE, SIG_IGN);
    std::signal(SIGXFSZ, SIG_IGN);
}

void flush_output() {
    if (std::cout.flush()) return;
    // The stream doesn't say why; the system does when it is asked once more.
    const bool again = ::write(STDOUT_FILENO, "\n", 1) < 0;
    throw FileError("cannot write standard output" +
                    (again ? " (" + std::generic_category().message(errno) + ")" : ""));
}

}  // namespace drawwell
