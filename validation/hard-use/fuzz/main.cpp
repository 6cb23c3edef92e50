// Hands the program's readers hostile files by the thousand, in this process: `fuzz --help`.
#include <fmt/format.h>
#include <sys/mman.h>
#include <sys/time.h>
#include <sys/wait.h>
#include <unistd.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <new>

#include "cli/report/pending_file.h"
#include "solver/errors.h"
#include "validation/hard-use/fuzz/hostile_input.h"
#include "validation/hard-use/fuzz/samples.h"

// Reading a file of a few kB takes no such memory. What HDF5 1.10 forgets to free when it gives up
// on a damaged file is not ours to mend.
extern "C" const char* __asan_default_options();   // NOLINT: the sanitizer's own names
extern "C" const char* __asan_default_options() {  // NOLINT
    return "hard_rss_limit_mb=3000:max_allocation_size_mb=2000:allocator_may_return_null=0";
}
extern "C" const char* __lsan_default_suppressions();   // NOLINT
extern "C" const char* __lsan_default_suppressions() {  // NOLINT
    return "leak:libhdf5";
}

namespace {

using namespace drawwell;
namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr int longest = 20;           // [s] that one file may take
constexpr int odd_exception = 77;     // how a reader ends that threw what it may not
constexpr std::uint32_t batch = 500;  // files read by one process

/// What a reading process has done; it outlives the process.
struct Tally {
    std::uint32_t index = 0;  // of the file being read
    std::uint64_t taken = 0, refused = 0;
};

Tally& shared_tally() {
    void* memory =
        mmap(nullptr, sizeof(Tally), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
    if (memory == MAP_FAILED) throw std::bad_alloc();
    return *new (memory) Tally;
}

struct Series {
    std::string kind;
    std::uint32_t seed = 1, from = 0, count = 1000;
    double seconds = 0;  // 0: no limit
    std::string keep;    // folder for the files of findings; empty: they are not kept
    std::string write;   // folder into which they are written in place of being read
};

/// Ends the process by SIGPROF after so long, not counting what other processes take; 0: never.
void limit_time(int seconds) {
    itimerval limit{};
    limit.it_value.tv_sec = seconds;
    setitimer(ITIMER_PROF, &limit, nullptr);
}

/// Reads files of the series one after the other; ends the process.
[[noreturn]] void read_some(HostileInput& input, const Series& series, std::uint32_t end,
                            Tally& tally) {
    for (; tally.index < end; ++tally.index) {
        Dice dice(series.seed, tally.index);
        limit_time(longest);
        try {
            input.read(input.make(dice));
            ++tally.taken;
        } catch (const InputError&) {
            ++tally.refused;
        } catch (const FileError&) {
            ++tally.refused;
        } catch (const std::exception& error) {
            std::cerr << "thrown: " << error.what() << "\n";
            _exit(odd_exception);
        }
    }
    limit_time(0);
    std::exit(EXIT_SUCCESS);  // with the sanitizer's look for leaks
}

std::string how_it_ended(int status) {
    if (WIFSIGNALED(status)) {
        if (WTERMSIG(status) == SIGPROF) return fmt::format("hangs ({} s)", longest);
        return fmt::format("signal {}", WTERMSIG(status));
    }
    if (WEXITSTATUS(status) == odd_exception) return "an exception that it may not throw";
    return fmt::format("stopped by a sanitizer (exit code {})", WEXITSTATUS(status));
}

void write_file(HostileInput& input, const Series& series, std::uint32_t index,
                const std::string& folder) {
    if (folder.empty()) return;
    fs::create_directories(folder);
    Dice dice(series.seed, index);
    put_bytes(fs::path(folder) / fmt::format("{}-{}-{}", series.kind, series.seed, index),
              input.make(dice));
}

/// Findings of a series. Reading goes on behind each of them in a fresh process.
std::size_t run_series(HostileInput& input, const Series& series) {
    const auto begun = Clock::now();
    const auto elapsed = [&] {
        return std::chrono::duration<double>(Clock::now() - begun).count();
    };
    Tally& tally = shared_tally();
    const std::uint32_t end = series.from + series.count;
    std::size_t findings = 0;
    for (tally.index = series.from; tally.index < end;) {
        if (series.seconds > 0 && elapsed() > series.seconds) break;
        const std::uint32_t first = tally.index, last = std::min(first + batch, end);
        std::cout.flush();
        const pid_t child = fork();
        if (child == 0) read_some(input, series, last, tally);
        int status = 0;
        if (child < 0 || waitpid(child, &status, 0) != child) throw FileError("cannot fork");
        if (WIFEXITED(status) && WEXITSTATUS(status) == EXIT_SUCCESS) continue;
        ++findings;
        if (tally.index == last) {
            fmt::print("FINDING {} seed {} files {} to {}: {}\n", series.kind, series.seed, first,
                       last - 1, how_it_ended(status));
            continue;
        }
        fmt::print("FINDING {} --seed {} --from {}: {}\n", series.kind, series.seed, tally.index,
                   how_it_ended(status));
        write_file(input, series, tally.index, series.keep);
        ++tally.index;
    }
    fmt::print("{}: {} files, {} read, {} refused, {} findings, {:.0f} s\n", series.kind,
               tally.index - series.from, tally.taken, tally.refused, findings, elapsed());
    return findings;
}

int fuzz(const Series& series) {
    const fs::path scratch = fs::temp_directory_path() / fmt::format("drawwell-fuzz-{}", getpid());
    fs::create_directories(scratch);
    const std::unique_ptr<HostileInput> input = hostile_input(series.kind, scratch);
    std::size_t findings = 0;
    if (series.write.empty())
        findings = run_series(*input, series);
    else
        for (std::uint32_t i = 0; i < series.count; ++i)
            write_file(*input, series, series.from + i, series.write);
    fs::remove_all(scratch);
    return findings == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}

}  // namespace

namespace drawwell {

std::vector<std::string_view> hostile_kinds() {
    return {"stove", "log", "weather", "result", "journal"};
}

std::unique_ptr<HostileInput> hostile_input(std::string_view kind, const fs::path& scratch) {
    if (kind == "stove") return hostile_stove();
    if (kind == "log") return hostile_log();
    if (kind == "weather") return hostile_weather();
    if (kind == "result") return hostile_result(scratch);
    if (kind == "journal") return hostile_journal(scratch);
    return nullptr;
}

}  // namespace drawwell

int main(int argc, char** argv) {
    Series series;
    CLI::App app(
        "Hands the readers of one kind of file hostile ones; ends with 1 if any of them "
        "was neither read nor refused.");
    app.add_option("KIND", series.kind, "stove, log, weather, result or journal")
        ->required()
        ->check(CLI::IsMember(hostile_kinds()));
    app.add_option("--seed", series.seed, "of the series; default 1");
    app.add_option("--from", series.from, "index of the first file; default 0");
    app.add_option("--count", series.count, "how many files; default 1000");
    app.add_option("--seconds", series.seconds, "begin no more after so long");
    app.add_option("--keep", series.keep, "folder in which the files of findings are kept");
    app.add_option("--write", series.write, "write them into this folder, and read none");
    CLI11_PARSE(app, argc, argv);
    return fuzz(series);
}
