#include "cli/report/web/heat_picture.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/read/units.h"

namespace drawwell {
namespace {

constexpr double seen = 0.002;  // [-] of the whole, below which a stream is not drawn
constexpr double top = 30, tall = 210, gap = 7;
constexpr double left = 4, trunk = 46, ends = 150, text_from = 160, leading = 29;

double sum_of(const std::vector<HeatStream>& streams) {
    double sum = 0;
    for (const HeatStream& stream : streams) sum += stream.heat;
    return sum;
}

/// A stream that swings from one height to another.
std::string ribbon(double x0, double y0, double x1, double y1, double width,
                   std::string_view kind) {
    const double bend = (x0 + x1) / 2;
    return fmt::format(
        "<path style=\"fill:var(--f-{})\" d=\"M{:.1f} {:.1f}C{:.1f} {:.1f} {:.1f} {:.1f} {:.1f} "
        "{:.1f}v{:.1f}C{:.1f} {:.1f} {:.1f} {:.1f} {:.1f} {:.1f}z\"/>\n",
        kind, x0, y0, bend, y0, bend, y1, x1, y1, width, bend, y1 + width, bend, y0 + width, x0,
        y0 + width);
}

std::string share_text(double heat, double whole) {
    return fmt::format("{:.1f} MJ, {:.0f} %", to_megajoules(heat), to_percent(heat / whole));
}

}  // namespace

HeatStreams heat_streams(const Summary& summary) {
    HeatStreams streams;
    const double hot =
        summary.heat_up_flue - summary.heat_up_flue_latent - summary.heat_up_flue_unburnt;
    const std::vector<HeatStream> given = {
        {"given by the wood", "room", summary.heat_released},
        {"warmth of the room's air", "out", summary.heat_from_room_air},
        {"given by the walls", "kept", -summary.heat_stored},
    };
    const std::vector<HeatStream> gone = {
        {"to the room", "room", summary.heat_to_room},
        {"from faces outdoors", "out", summary.heat_lost_outdoors},
        {"still in the stove", "kept", summary.heat_stored},
        {"up the flue, as hot gas", "flue", hot},
        {"up the flue, as steam", "steam", summary.heat_up_flue_latent},
        {"up the flue, unburnt", "unburnt", summary.heat_up_flue_unburnt},
        {"out of the feed, in smoke", "smoke", summary.heat_with_smoke},
        {"into colder air of the room", "out", -summary.heat_from_room_air},
    };
    const auto take = [](const std::vector<HeatStream>& all, std::vector<HeatStream>& some) {
        double most = 0;
        for (const HeatStream& stream : all) most = std::max(most, stream.heat);
        for (const HeatStream& stream : all)
            if (stream.heat > seen * most) some.push_back(stream);
    };
    take(given, streams.given);
    take(gone, streams.gone);
    return streams;
}

std::string heat_picture(const Summary& summary) {
    const HeatStreams streams = heat_streams(summary);
    const double whole = std::max(sum_of(streams.given), sum_of(streams.gone));
    if (!(whole > 0) || streams.gone.empty()) return "";
    const double scale = (tall - gap * static_cast<double>(streams.gone.size() - 1)) / whole;
    std::string ribbons, texts;

    // The fire's heat enters on the left, what else gives heat below it.
    double y = top;
    std::string first;
    for (const HeatStream& stream : streams.given) {
        ribbons += fmt::format(
            "<rect style=\"fill:var(--f-{})\" x=\"{}\" y=\"{:.1f}\" width=\"{}\" "
            "height=\"{:.1f}\"/>\n",
            stream.kind, left, y, trunk - left, stream.heat * scale);
        y += stream.heat * scale;
        first += (first.empty() ? "" : "; ") + std::string(stream.name) + " " +
                 share_text(stream.heat, whole);
    }
    double from = top, to = top, text = top;
    for (const HeatStream& stream : streams.gone) {
        const double width = stream.heat * scale;
        ribbons += ribbon(trunk, from, ends, to, width, stream.kind);
        const double base = std::max(to + width / 2 - 3, text + 4);
        texts += fmt::format(
            "<path class=\"rule\" d=\"M{} {:.1f}L{} {:.1f}\"/><text x=\"{}\" y=\"{:.1f}\">{}</text>"
            "<text class=\"soft\" x=\"{}\" y=\"{:.1f}\">{}</text>\n",
            ends + 1, to + width / 2, text_from - 3, base - 3, text_from, base, stream.name,
            text_from, base + 13, share_text(stream.heat, whole));
        text = base - 4 + leading;
        from += width;
        to += width + gap;
    }
    const double foot = std::max(text, top + tall) + 6;
    return fmt::format(
        "<svg class=\"picture heat\" viewBox=\"0 0 340 {:.0f}\" role=\"img\" aria-label=\"Where "
        "the "
        "heat goes: the wider a stream, the more\">\n<text x=\"{}\" "
        "y=\"18\">{}</text>\n{}{}</svg>\n",
        foot, left, first, ribbons, texts);
}

}  // namespace drawwell
