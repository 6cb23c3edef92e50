#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "solver/table.h"

namespace drawwell {

/// What a file of weather says over time [s] after lighting: SI, by the full key it stands for,
/// `site.outdoor`.
struct Weather {
    std::map<std::string, Table> tables;
    std::vector<std::string> problems;  // `night.csv:3: wind_m_s = x: reason`; then no table holds
};

/// Reads a table of comma, semicolon or tab separated values. Its first line names the columns:
/// one of time_s, time_min, time_h, and any of outdoor_c, wind_m_s, gust_m_s, room_suction_pa.
/// What follows a # is a comment. The name is for messages.
Weather read_weather(std::string_view text, std::string_view file_name);

}  // namespace drawwell
