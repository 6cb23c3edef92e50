#include "cli/report/draw_csv.h"

#include <fmt/format.h>

#include <cmath>
#include <iterator>
#include <map>
#include <optional>
#include <string_view>

#include "cli/report/file_kind.h"

namespace drawwell {
namespace {

constexpr std::string_view csv_header = "flow_kg_s,push_held_pa,push_following_pa";

}  // namespace

std::string draw_csv(const DrawStudy& study) {
    struct Pushes {
        std::optional<double> held, following;
    };
    std::map<double, Pushes> rows;
    for (const DrawPoint& point : study.held.points)
        if (std::isfinite(point.flow)) rows[point.flow].held = point.pressure;
    for (const DrawPoint& point : study.following.points)
        if (std::isfinite(point.flow)) rows[point.flow].following = point.pressure;
    const auto field = [](std::optional<double> value) {
        return value && std::isfinite(*value) ? fmt::format("{:.7g}", *value) : std::string();
    };
    fmt::memory_buffer text;
    fmt::format_to(std::back_inserter(text), "{},{}\n", csv_header, table_mark);
    const std::string mark = table_mark_of(FileKind::draw_table);
    for (const auto& [flow, pushes] : rows)
        fmt::format_to(std::back_inserter(text), "{:.10g},{},{},{}\n", flow, field(pushes.held),
                       field(pushes.following), mark);
    return fmt::to_string(text);
}

}  // namespace drawwell
