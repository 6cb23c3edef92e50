#pragma once

#include <functional>
#include <string_view>

#include "models/summarise.h"
#include "tests/models/plain_stove.h"

namespace drawwell::tests {

/// A burn written by hand: rows a minute apart, every column a function of the time.
class HandMade {
  public:
    explicit HandMade(std::size_t rows, Stove the_stove = plain_stove())
        : stove(std::move(the_stove)),
          built_(build_network(stove, plain_library())),
          recorder_(stove, built_) {
        for (std::size_t i = 0; i < rows; ++i)
            results().time.push_back(60 * static_cast<double>(i));
        for (Column& column : results().columns)
            column.values.assign(rows * column.width, column.unit == "K" ? 300 : 1);
        // The recorder gives no way in, because nobody but a test has one to want.
        oxygen(recorder_.oxygen_in()).assign(rows, 1);
        oxygen(recorder_.oxygen_needed()).assign(rows, 1);
    }

    using Of = std::function<double(double)>;
    HandMade& set(std::string_view name, const Of& value, std::size_t cell = 0) {
        for (Column& column : results().columns)
            if (column.name == name)
                for (std::size_t i = 0; i < results().time.size(); ++i)
                    column.values[i * column.width + cell] = value(results().time[i]);
        return *this;
    }
    HandMade& set_oxygen(const Of& in, const Of& needed) {
        for (std::size_t i = 0; i < results().time.size(); ++i) {
            oxygen(recorder_.oxygen_in())[i] = in(results().time[i]);
            oxygen(recorder_.oxygen_needed())[i] = needed(results().time[i]);
        }
        return *this;
    }
    Summary summary() const {
        return summarise(stove, built_, recorder_, Audit(built_.network), {});
    }
    const Recorder& recorder() const { return recorder_; }
    const BuiltStove& built() const { return built_; }

    Stove stove;

  private:
    Results& results() { return const_cast<Results&>(recorder_.results()); }
    static std::vector<double>& oxygen(const std::vector<double>& of) {
        return const_cast<std::vector<double>&>(of);
    }
    BuiltStove built_;
    Recorder recorder_;
};

inline HandMade::Of steady(double value) {
    return [value](double) { return value; };
}

/// 1 while it burns, until the end given [s], then 0.
inline HandMade::Of until(double end) {
    return [end](double t) { return t < end ? 1.0 : 0.0; };
}

}  // namespace drawwell::tests
