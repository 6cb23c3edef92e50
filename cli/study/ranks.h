#pragma once

#include <atomic>
#include <cstddef>
#include <functional>
#include <memory>
#include <string>

namespace drawwell {

/// The processes (MPI's ranks) that share the rows of one study, of which this is one. Each takes
/// numbers from a counter that all share, and hands what it made of them to the writer. All
/// functions may be called by several threads.
class Ranks {
  public:
    /// Lets the others go, also where this one could not begin.
    virtual ~Ranks() = default;
    Ranks(const Ranks&) = delete;
    Ranks& operator=(const Ranks&) = delete;

    /// Whether this one prints and writes.
    virtual bool writer() const = 0;
    /// How many they are.
    virtual std::size_t count() const = 0;
    /// Processors that are this one's share of its machine.
    virtual unsigned threads() const = 0;

    /// Called by each once it is ready to begin; waits for the others. False: the writer could not
    /// begin and has said why. InputError, on the writer: another could not.
    virtual bool begin() = 0;
    /// The writer's text, on each. All must call it in the same order.
    virtual std::string share(const std::string& text) = 0;
    /// The next number from 0 on; no two of the ranks get the same.
    virtual std::size_t next() = 0;
    /// From now on `next` gives each of them only numbers beyond any row.
    virtual void skip_rest() = 0;
    /// Gives the writer what was made of a number.
    virtual void hand_in(std::size_t number, const std::string& text) = 0;
    /// Nothing more will be handed in by this one.
    virtual void finish() = 0;
    /// On the writer: takes what the others hand in until all of them have finished. What `take`
    /// throws comes out then, after the others were told to skip the rest.
    virtual void collect(
        const std::function<void(std::size_t number, const std::string& text)>& take) = 0;

  protected:
    Ranks() = default;
};

/// A process that works alone.
class OneRank : public Ranks {
  public:
    bool writer() const override { return true; }
    std::size_t count() const override { return 1; }
    unsigned threads() const override;
    bool begin() override { return true; }
    std::string share(const std::string& text) override { return text; }
    std::size_t next() override { return counter_++; }
    void skip_rest() override;
    void hand_in(std::size_t, const std::string&) override {}
    void finish() override {}
    void collect(const std::function<void(std::size_t, const std::string&)>&) override {}

  private:
    std::atomic<std::size_t> counter_ = 0;
};

/// Those that mpirun began; MPI is started only where it did. InputError: it did, and the program
/// was built without MPI.
std::unique_ptr<Ranks> launched_ranks();

/// Whether this process speaks for all that mpirun began. True where there are no others.
bool speaks_for_all();

}  // namespace drawwell
