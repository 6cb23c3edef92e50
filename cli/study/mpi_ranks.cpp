#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <exception>
#include <limits>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

#include "cli/study/ranks.h"
#include "solver/errors.h"

#ifdef DRAWWELL_MPI
#include <mpi.h>
#endif

namespace drawwell {
namespace {

bool launched() {
    for (const char* name : {"OMPI_COMM_WORLD_SIZE", "PMIX_RANK", "PMI_SIZE"})
        if (std::getenv(name)) return true;
    return false;
}

#ifdef DRAWWELL_MPI

enum Tag : int { handed_in, finished };

constexpr std::chrono::milliseconds pause(1);  // between looks for what others hand in

/// One MPI call at a time: Open MPI's one-sided calls over a network bear no more.
class MpiRanks : public Ranks {
  public:
    MpiRanks() {
        int level = 0;
        MPI_Init_thread(nullptr, nullptr, MPI_THREAD_SERIALIZED, &level);
        if (level < MPI_THREAD_SERIALIZED) MPI_Abort(MPI_COMM_WORLD, 1);
        MPI_Comm_rank(MPI_COMM_WORLD, &rank_);
        MPI_Comm_size(MPI_COMM_WORLD, &count_);
        MPI_Comm machine = MPI_COMM_NULL;
        MPI_Comm_split_type(MPI_COMM_WORLD, MPI_COMM_TYPE_SHARED, rank_, MPI_INFO_NULL, &machine);
        MPI_Comm_size(machine, &local_);
        MPI_Comm_free(&machine);
    }
    ~MpiRanks() override {
        if (!met_) meet(false);
        MpiRanks::finish();
        if (window_ != MPI_WIN_NULL) {
            MPI_Win_unlock_all(window_);
            MPI_Win_free(&window_);
        }
        MPI_Finalize();
    }

    bool writer() const override { return rank_ == 0; }
    std::size_t count() const override { return static_cast<std::size_t>(count_); }
    unsigned threads() const override {
        const unsigned cores = std::max(1U, std::thread::hardware_concurrency());
        const unsigned share = std::max(1U, cores / static_cast<unsigned>(local_));
        return std::min(share, OneRank().threads());
    }
    bool begin() override {
        if (meet(true)) return true;
        if (writer())
            throw InputError(
                "another process could not begin: every machine needs the same files at the same "
                "place");
        return false;
    }
    std::string share(const std::string& text) override {
        const std::lock_guard lock(calling_);
        std::uint64_t size = text.size();
        MPI_Bcast(&size, 1, MPI_UINT64_T, 0, MPI_COMM_WORLD);
        std::string shared = text;
        shared.resize(size);
        MPI_Bcast(shared.data(), static_cast<int>(size), MPI_BYTE, 0, MPI_COMM_WORLD);
        return shared;
    }
    std::size_t next() override { return count_on(1, MPI_SUM); }
    void skip_rest() override { count_on(std::numeric_limits<std::int64_t>::max() / 2, MPI_MAX); }
    void hand_in(std::size_t number, const std::string& text) override {
        std::string message(sizeof number, '\0');
        std::memcpy(message.data(), &number, sizeof number);
        send(message + text, handed_in);
    }
    void finish() override {
        if (met_ && !writer() && window_ != MPI_WIN_NULL && !std::exchange(finished_, true))
            send("", finished);
    }
    void collect(const std::function<void(std::size_t, const std::string&)>& take) override {
        std::exception_ptr failure;
        for (int working = count_ - 1; working > 0;) {
            std::string message;
            const std::optional<int> tag = receive(message);
            if (!tag) {
                std::this_thread::sleep_for(pause);
                continue;
            }
            if (*tag == finished) --working;
            if (*tag == finished || failure) continue;
            try {
                std::size_t number = 0;
                std::memcpy(&number, message.data(), sizeof number);
                take(number, message.substr(sizeof number));
            } catch (...) {
                failure = std::current_exception();
                skip_rest();
            }
        }
        if (failure) std::rethrow_exception(failure);
    }

  private:
    /// Whether all are ready; then the counter is there.
    bool meet(bool ready) {
        met_ = true;
        int all = ready ? 1 : 0;
        MPI_Allreduce(MPI_IN_PLACE, &all, 1, MPI_INT, MPI_MIN, MPI_COMM_WORLD);
        if (all == 0) return false;
        std::int64_t* counter = nullptr;
        MPI_Win_allocate(writer() ? sizeof *counter : 0, sizeof *counter, MPI_INFO_NULL,
                         MPI_COMM_WORLD, static_cast<void*>(&counter), &window_);
        if (writer()) *counter = 0;
        MPI_Barrier(MPI_COMM_WORLD);
        MPI_Win_lock_all(0, window_);
        return true;
    }
    /// What the counter was before `operation` with that number.
    std::size_t count_on(std::int64_t number, MPI_Op operation) {
        const std::lock_guard lock(calling_);
        std::int64_t before = 0;
        MPI_Fetch_and_op(&number, &before, MPI_INT64_T, 0, 0, operation, window_);
        MPI_Win_flush(0, window_);
        return static_cast<std::size_t>(before);
    }
    void send(const std::string& message, Tag tag) {
        const std::lock_guard lock(calling_);
        MPI_Send(message.data(), static_cast<int>(message.size()), MPI_BYTE, 0, tag,
                 MPI_COMM_WORLD);
    }
    /// Tag of a message from another, if one has come.
    std::optional<int> receive(std::string& message) {
        const std::lock_guard lock(calling_);
        int there = 0, size = 0;
        MPI_Status status;
        MPI_Iprobe(MPI_ANY_SOURCE, MPI_ANY_TAG, MPI_COMM_WORLD, &there, &status);
        if (there == 0) return {};
        MPI_Get_count(&status, MPI_BYTE, &size);
        message.resize(static_cast<std::size_t>(size));
        MPI_Recv(message.data(), size, MPI_BYTE, status.MPI_SOURCE, status.MPI_TAG, MPI_COMM_WORLD,
                 &status);
        return status.MPI_TAG;
    }

    std::mutex calling_;
    int rank_ = 0, count_ = 1, local_ = 1;  // local: ranks on this machine
    bool met_ = false, finished_ = false;
    MPI_Win window_ = MPI_WIN_NULL;  // the counter, in the writer's memory
};

#endif

}  // namespace

std::unique_ptr<Ranks> launched_ranks() {
    if (!launched()) return std::make_unique<OneRank>();
#ifdef DRAWWELL_MPI
    return std::make_unique<MpiRanks>();
#else
    throw InputError("this drawwell was built without MPI: start it without mpirun");
#endif
}

}  // namespace drawwell
