#include "cli/read/read_stove.h"
#include "cli/read/weather_file.h"
#include "models/build_network.h"
#include "solver/errors.h"
#include "validation/hard-use/fuzz/hostile_input.h"
#include "validation/hard-use/fuzz/samples.h"
#include "validation/hard-use/fuzz/text_mutator.h"

namespace drawwell {
namespace {

class HostileWeather : public HostileInput {
  public:
    std::string make(Dice& dice) override { return change_(dice); }

    void read(const std::string& bytes) override {
        const Weather weather = read_weather(bytes, "night.csv");
        if (weather.problems.empty() == weather.tables.empty())
            throw std::logic_error("weather holds both problems and tables, or neither");
        if (!weather.problems.empty()) throw InputError(weather.problems.front());
        const Stove stove = read_stove(stove_, "stove.toml", {}, sample_library(),
                                       [&](const std::string&) { return bytes; });
        const BuiltStove built = build_network(stove, sample_library());
    }

  private:
    std::string stove_ = texts_in("validation/hard-use/fuzz/corpus/stove", ".toml").back();
    TextMutator change_{texts_in("validation/hard-use/fuzz/corpus/weather", ".csv"),
                        {"time_s", "time_min", "time_h", "outdoor_c", "wind_m_s", "gust_m_s",
                         "room_suction_pa", "0", "60", "-1e1", "1e9", "\"12\"", " # "}};
};

}  // namespace

std::unique_ptr<HostileInput> hostile_weather() {
    return std::make_unique<HostileWeather>();
}

}  // namespace drawwell
