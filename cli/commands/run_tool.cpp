#include "cli/commands/run_tool.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
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
    pid_t process = 0;
    const int failed =
        posix_spawnp(&process, arguments.front(), &actions, nullptr, arguments.data(), environ);
    posix_spawn_file_actions_destroy(&actions);
    if (failed != 0) return -1;
    int status = 0;
    while (waitpid(process, &status, 0) < 0)
        if (errno != EINTR) return -1;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

}  // namespace drawwell
