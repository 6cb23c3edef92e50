#include "cli/commands/run_tool.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <string_view>

namespace drawwell {

bool is_installed(const std::string& program) {
    const char* path = std::getenv("PATH");
    std::string_view folders = path ? path : "";
    while (!folders.empty()) {
        const std::size_t length = std::min(folders.find(':'), folders.size());
        const std::filesystem::path file =
            std::filesystem::path(folders.substr(0, length)) / program;
        if (access(file.c_str(), X_OK) == 0) return true;
        folders.remove_prefix(std::min(length + 1, folders.size()));
    }
    return false;
}

int run_tool(const std::vector<std::string>& words) {
    std::vector<std::string> held = words;
    std::vector<char*> arguments;
    arguments.reserve(held.size() + 1);
    for (std::string& word : held) arguments.push_back(word.data());
    arguments.push_back(nullptr);
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    for (const int stream : {STDOUT_FILENO, STDERR_FILENO})
        posix_spawn_file_actions_addopen(&actions, stream, "/dev/null", O_WRONLY, 0);
    // What this program does not let end it (`prepare_streams`) is the tool's own affair.
    sigset_t usual;
    sigemptyset(&usual);
    for (const int signal : {SIGPIPE, SIGXFSZ}) sigaddset(&usual, signal);
    posix_spawnattr_t attributes;
    posix_spawnattr_init(&attributes);
    posix_spawnattr_setsigdefault(&attributes, &usual);
    posix_spawnattr_setflags(&attributes, POSIX_SPAWN_SETSIGDEF);
    pid_t process = 0;
    const int failed =
        posix_spawnp(&process, arguments.front(), &actions, &attributes, arguments.data(), environ);
    posix_spawnattr_destroy(&attributes);
    posix_spawn_file_actions_destroy(&actions);
    if (failed != 0) return -1;
    int status = 0;
    while (waitpid(process, &status, 0) < 0)
        if (errno != EINTR) return -1;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

}  // namespace drawwell
