#pragma once

#include <string_view>
#include <utility>

namespace drawwell {

/// A file that the system holds open under a number, closed with this.
class Descriptor {
  public:
    /// Takes over what `::open` gave; negative: nothing is open.
    explicit Descriptor(int number = -1) : number_(number) {}
    ~Descriptor() { close(); }
    Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
    Descriptor& operator=(Descriptor&& other) noexcept {
        std::swap(number_, other.number_);
        return *this;
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    bool open() const { return number_ >= 0; }
    int number() const { return number_; }
    /// 0, or the error that the system kept until now (`errno`).
    int close();

    /// Writes all of it: 0, or why not (`errno`); how much stands there then is not known.
    int write(std::string_view bytes) const;
    /// Sees that it is on the disk: 0, or why not (`errno`).
    int flush() const;

  private:
    int number_;
};

}  // namespace drawwell
