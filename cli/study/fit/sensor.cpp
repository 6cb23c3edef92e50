#include "cli/study/fit/sensor.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "cli/read/difference.h"
#include "cli/read/nearest.h"
#include "models/columns.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr Bead usual_bead{.diameter = 0.003};  // common practice, no source

/// What a kind of instrument is off by.
struct Kind {
    std::string_view unit;    // SI, of the columns that it reads
    std::string_view column;  // empty: any of that unit
    Quantity quantity;
    SensorNoise noise;
};

const std::array kinds{
    // Limits of class 2 of type K, 2.5 K or 0.75 % of the temperature in °C (IEC 60584-1, from
    // memory), taken as a spread that is even between them: over the root of three.
    Kind{"K",
         "",
         Quantity::temperature,
         {1.0, 2.5 / std::sqrt(3.0), 0.0075 / std::sqrt(3.0),
          "thermocouple: 1 K a reading, common practice, no source; class 2 of IEC 60584-1, from "
          "memory, common to all"}},
    Kind{"Pa",
         "",
         Quantity::pressure,
         {0.5, 0.5, 0, "draft gauge: 0.5 Pa a reading and of zero, common practice, no source"}},
    Kind{"kg",
         "",
         Quantity::mass,
         {0.01, 0.02, 0, "scale: 10 g a reading, 20 g of tare, common practice, no source"}},
    Kind{"1",
         "oxygen_at_flue",
         Quantity::share,
         {0.002, 0.003, 0,
          "gas analyser: 0.2 % a reading, 0.3 % of zero, by volume, common practice, no source"}},
    Kind{"m/s",
         "",
         Quantity::speed,
         {0.1, 0.1, 0, "anemometer: 0.1 m/s a reading and of zero, common practice, no source"}},
};

struct ModelColumn {
    std::string_view name, unit, axis;
};

std::optional<ModelColumn> model_column(std::string_view name) {
    if (name == fuel_mass) return ModelColumn{fuel_mass, "kg", ""};
    for (const ColumnInfo& info : all_columns())
        if (info.name == name) return ModelColumn{info.name, info.unit, info.axis};
    return {};
}

const Kind* kind_of(const ModelColumn& column) {
    for (const Kind& kind : kinds)
        if (kind.unit == column.unit && (kind.column.empty() || kind.column == column.name))
            return &kind;
    return nullptr;
}

Quantity quantity_of(const ModelColumn& column) {
    if (const Kind* kind = kind_of(column)) return kind->quantity;
    if (column.unit == "kg/s") return Quantity::burn_rate;
    if (column.unit == "W") return Quantity::power;
    if (column.unit == "m") return Quantity::length;
    return Quantity::share;
}

std::pair<std::string, std::string> parted(const std::string& text, std::string_view option,
                                           std::string_view example) {
    const std::size_t equals = text.find('=');
    if (equals == 0 || equals == std::string::npos)
        throw InputError(fmt::format("{} {}: write {}", option, text, example));
    const auto strip = [](std::string part) {
        part.erase(0, part.find_first_not_of(' '));
        part.erase(part.find_last_not_of(' ') + 1);
        return part;
    };
    return {strip(text.substr(0, equals)), strip(text.substr(equals + 1))};
}

std::vector<std::string> words_of(std::string_view text) {
    std::vector<std::string> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        if (end > 0) words.emplace_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

std::size_t column_called(const BurnLog& log, const std::string& header, std::string_view option) {
    const std::size_t found = log.find(header);
    if (found < log.headers.size()) return found;
    std::vector<std::string> known;
    for (const LogHeader& each : log.headers) known.push_back(each.whole);
    const std::string meant = did_you_mean(header, known);
    throw InputError(
        fmt::format("{}: {} has no column \"{}\"{}", option, log.name, header,
                    meant.empty() ? fmt::format("; it has {}", fmt::join(known, ", ")) : meant));
}

/// "1.5mm bare", "3 mm shielded", "1 mm emissivity 0.6", "none".
Bead parse_bead(const std::string& text) {
    if (text == "none") return {};
    Bead bead;
    std::string size;
    const std::vector<std::string> words = words_of(text);
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == "shielded")
            bead.shielded = true;
        else if (words[i] == "emissivity" && i + 1 < words.size())
            bead.emissivity = parse_quantity(words[++i], Quantity::share);
        else if (words[i] != "bare")
            size += (size.empty() ? "" : " ") + words[i];
    }
    bead.diameter = parse_quantity(size, Quantity::length);
    if (!(bead.diameter > 0 && bead.diameter <= 0.05))
        throw InputError("a bead is up to 50 mm thick, none reads the gas itself");
    if (!(bead.emissivity >= 0 && bead.emissivity <= 1))
        throw InputError("an emissivity is from 0 to 1");
    return bead;
}

/// A cell of a divided part: `[0.105m]`, or its number.
void check_cell(std::string_view cell, std::string_view axis) {
    if (cell.empty()) return;
    const bool closed = cell.size() > 2 && cell.starts_with('[') && cell.ends_with(']');
    const std::string_view inside = closed ? cell.substr(1, cell.size() - 2) : "";
    if (!closed) throw InputError(fmt::format("{}: a place is written as [0.105m]", cell));
    if (inside == "last" || inside == "middle" ||
        inside.find_first_not_of("0123456789") == std::string_view::npos)
        return;
    parse_quantity(inside, place_quantity(axis));
}

/// The unit in which a column is logged: as mapped, by its header, or the kind's usual one.
std::string unit_of(const LogHeader& header, const std::string& mapped, const Sensor& sensor) {
    const std::string& said = mapped.empty() ? header.unit : mapped;
    if (!said.empty()) return said;
    if (sensor.unit == "K") return "°C";
    return sensor.unit == "1" || sensor.unit == "kg/s" || sensor.unit == "W" ? "" : sensor.unit;
}

}  // namespace

double SensorNoise::common_at(double value, Quantity quantity) const {
    const double shown = quantity == Quantity::temperature ? to_celsius(value) : value;
    return std::max(common, common_relative * std::abs(shown));
}

Quantity place_quantity(std::string_view axis) {
    return axis == "load" ? Quantity::time : Quantity::length;
}

Sensor usual_sensor(std::string_view column, std::string_view cell) {
    const auto known = model_column(column);
    if (!known) {
        std::vector<std::string> names{std::string(fuel_mass)};
        for (const ColumnInfo& info : all_columns()) names.emplace_back(info.name);
        throw InputError(
            fmt::format("the model has no column \"{}\"{}; `drawwell list columns` "
                        "names all",
                        column, did_you_mean(column, names)));
    }
    if (!cell.empty() && known->axis.empty())
        throw InputError(fmt::format("{} has one value an instant, leave out {}", column, cell));
    check_cell(cell, known->axis);
    Sensor sensor;
    sensor.column = column;
    sensor.cell = cell;
    sensor.header = sensor.what();
    sensor.unit = known->unit;
    sensor.quantity = quantity_of(*known);
    if (const Kind* kind = kind_of(*known)) sensor.noise = kind->noise;
    if (is_gas_temperature(column)) sensor.bead = usual_bead;
    return sensor;
}

std::vector<LoggedSensor> sensors_of(const BurnLog& log, const SensorWishes& wishes) {
    std::vector<std::optional<Sensor>> sensors(log.headers.size());
    std::vector<std::string> units(log.headers.size());
    for (const std::string& text : wishes.maps) {
        const std::string option = "--map " + text;
        auto [header, target] =
            parted(text, "--map", "HEADER=COLUMN, as 'TC1=outlet_gas_temperature'");
        const std::size_t at = column_called(log, header, option);
        if (sensors[at])
            throw InputError(option + ": " + header + " is mapped already, leave one of them out");
        if (const std::size_t in = target.rfind(" in "); in != std::string::npos) {
            units[at] = target.substr(in + 4);
            target.resize(in);
        }
        const std::size_t bracket = std::min(target.find('['), target.size());
        try {
            sensors[at] = usual_sensor(target.substr(0, bracket), target.substr(bracket));
            if (!units[at].empty())  // told once here, not with each reading
                parse_quantity("0 " + units[at], sensors[at]->quantity);
        } catch (const InputError& error) {
            throw InputError(option + ": " + error.what());
        }
        sensors[at]->header = header;
    }
    for (std::size_t i = 0; i < log.headers.size(); ++i) {
        const LogHeader& header = log.headers[i];
        const auto known = model_column(header.name);
        if (sensors[i] || i == log.time_column || !known || !kind_of(*known)) continue;
        sensors[i] = usual_sensor(header.name, header.cell);
        sensors[i]->header = header.name + header.cell;
    }
    const auto sensor_called = [&](const std::string& header,
                                   const std::string& option) -> Sensor& {
        const std::size_t at = column_called(log, header, option);
        if (!sensors[at]) throw InputError(option + ": map the column " + header + " first");
        return *sensors[at];
    };
    for (const std::string& text : wishes.beads) {
        const std::string option = "--bead " + text;
        const auto [header, said] = parted(text, "--bead", "HEADER=SIZE, as 'TC1=1.5mm bare'");
        Sensor& sensor = sensor_called(header, option);
        if (!is_gas_temperature(sensor.column))
            throw InputError(option + ": " + sensor.column + " is no temperature of gas");
        try {
            sensor.bead = parse_bead(said);
        } catch (const InputError& error) {
            throw InputError(option + ": " + error.what());
        }
    }
    for (const std::string& text : wishes.noises) {
        const std::string option = "--noise " + text;
        const auto [header, said] = parted(text, "--noise", "HEADER=NOISE, as 'TC1=2K'");
        Sensor& sensor = sensor_called(header, option);
        const std::size_t comma = std::min(said.find(','), said.size());
        try {
            sensor.noise.reading = parse_difference(said.substr(0, comma), sensor.quantity);
            if (comma < said.size()) {
                sensor.noise.common = parse_difference(said.substr(comma + 1), sensor.quantity);
                sensor.noise.common_relative = 0;
            }
        } catch (const InputError& error) {
            throw InputError(option + ": " + error.what());
        }
        sensor.noise.source = "as --noise says";
    }
    std::vector<LoggedSensor> logged;
    for (std::size_t i = 0; i < sensors.size(); ++i) {
        if (!sensors[i]) continue;
        const Sensor& sensor = *sensors[i];
        if (!(sensor.noise.reading > 0))
            throw InputError(fmt::format("{}: how well is {} known? say --noise '{}=...'", log.name,
                                         sensor.header, sensor.header));
        LoggedSensor one{sensor, {}, {}};
        const auto values =
            log_values(log, i, unit_of(log.headers[i], units[i], sensor), sensor.quantity);
        for (std::size_t row = 0; row < values.size(); ++row) {
            if (!std::isfinite(values[row])) continue;
            one.time.push_back(log.time[row]);
            one.value.push_back(values[row]);
        }
        if (one.value.empty())
            throw InputError(fmt::format("{}: column \"{}\": there is no reading in it", log.name,
                                         log.headers[i].whole));
        logged.push_back(std::move(one));
    }
    if (logged.empty()) {
        std::vector<std::string> known;
        for (const LogHeader& each : log.headers) known.push_back(each.whole);
        throw InputError(
            fmt::format("{}: no column is mapped; it has {}. Say what they are, for example --map "
                        "'{}=outlet_gas_temperature'; `drawwell list columns` names what there is",
                        log.name, fmt::join(known, ", "), known.back()));
    }
    return logged;
}

std::vector<Sensor> candidate_sensors(std::span<const LoggedSensor> logged) {
    static constexpr std::array usual{std::pair{"outlet_gas_temperature", ""},
                                      std::pair{"flue_top_temperature", ""},
                                      std::pair{"riser_gas_temperature", "[last]"},
                                      std::pair{"plate_temperature", "[0]"},
                                      std::pair{"plate_temperature", "[last]"},
                                      std::pair{"barrel_temperature", "[0]"},
                                      std::pair{"barrel_temperature", "[last]"},
                                      std::pair{"riser_skin_temperature", "[middle]"},
                                      std::pair{"flue_draft", ""},
                                      std::pair{"feed_suction", ""},
                                      std::pair{"oxygen_at_flue", ""},
                                      std::pair{"fuel_mass", ""}};
    std::vector<Sensor> candidates;
    for (const auto& [column, cell] : usual) {
        const bool known = std::any_of(logged.begin(), logged.end(), [&](const LoggedSensor& each) {
            return each.sensor.column == column;
        });
        if (known) continue;
        Sensor sensor = usual_sensor(column, cell);
        if (sensor.bead) sensor.bead->shielded = true;
        candidates.push_back(sensor);
    }
    return candidates;
}

}  // namespace drawwell
