#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "validation/random_stoves/dice.h"

namespace drawwell {

/// A kind of file that a user hands the program, made hostile.
class HostileInput {
  public:
    virtual ~HostileInput() = default;
    /// The bytes of a file, as the dice fall.
    virtual std::string make(Dice& dice) = 0;
    /// Hands them to all that reads such a file. InputError, FileError: refused, as it should be;
    /// anything else thrown is a finding.
    virtual void read(const std::string& bytes) = 0;
};

/// The kinds by name: stove, log, weather, result, journal.
std::vector<std::string_view> hostile_kinds();
/// Null: there is no such kind. Scratch files go into the folder.
std::unique_ptr<HostileInput> hostile_input(std::string_view kind,
                                            const std::filesystem::path& scratch);

// One file each.
std::unique_ptr<HostileInput> hostile_stove();
std::unique_ptr<HostileInput> hostile_log();
std::unique_ptr<HostileInput> hostile_weather();
std::unique_ptr<HostileInput> hostile_result(const std::filesystem::path& scratch);
std::unique_ptr<HostileInput> hostile_journal(const std::filesystem::path& scratch);

}  // namespace drawwell
