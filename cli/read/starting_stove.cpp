#include "cli/read/starting_stove.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "cli/read/units.h"
#include "solver/constants.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

// The rules below are common practice, no source, unless said.
constexpr double smallest_bore = 0.08, largest_bore = 0.25;  // [m] what the rules were tried for
constexpr double smallest_drum = 0.03, largest_drum = 0.21;  // [m3]
constexpr double drum_slenderness = 1.5;             // [-] height over diameter of a steel drum
constexpr double drum_over_bore = 3;                 // [-] diameters that suit each other
constexpr std::array drums{0.03, 0.06, 0.12, 0.21};  // [m3] sizes sold, from memory
constexpr double lining = 0.025, skin = 0.001;       // [m] of the riser
constexpr double narrowest_space = 0.03;             // [m] round the riser, so that it can be swept

struct Sizes {
    double bore = 0, drum_volume = 0;
    double feed = 0, mouth = 0;
    double port_width = 0;
    double tunnel_length = 0;
    double barrel_diameter = 0, barrel_height = 0;
    double opening = 0, underside = 0, top = 0;
    double outlet = 0;
    double stick = 0, stick_length = 0;
    int pieces = 3;
    std::string note;  // what was changed
};

double rounded(double length) {
    return std::round(length / 0.005) * 0.005;
}

double drum_diameter(double volume) {
    return std::cbrt(4 * volume / (constants::pi * drum_slenderness));
}
double drum_of_diameter(double diameter) {
    return constants::pi / 4 * drum_slenderness * diameter * diameter * diameter;
}

void require_between(const std::optional<double>& value, double least, double most,
                     Quantity quantity, const std::string& option) {
    if (value && !(*value >= least && *value <= most))
        throw InputError(
            fmt::format("{} {}: from {} to {} can be sized; outside that, write the file by "
                        "hand",
                        option, show_quantity(*value, quantity), show_quantity(least, quantity),
                        show_quantity(most, quantity)));
}

double drum_for(double bore) {
    for (const double volume : drums)
        if (drum_diameter(volume) >= 0.95 * drum_over_bore * bore) return volume;
    return drums.back();
}

Sizes size_stove(const BuildersStock& stock) {
    Sizes sizes;
    sizes.drum_volume = stock.drum_volume.value_or(stock.bore ? drum_for(*stock.bore) : drums[1]);
    sizes.bore = stock.bore.value_or(std::clamp(
        rounded(drum_diameter(sizes.drum_volume) / drum_over_bore), smallest_bore, largest_bore));

    const double narrowest = sizes.bore + 2 * (lining + skin + narrowest_space);
    if (drum_diameter(sizes.drum_volume) < narrowest) {
        const double litres = std::ceil(drum_of_diameter(narrowest) * 1000);
        sizes.note = fmt::format(
            "# A drum of {:.0f} l is too narrow for a bore of {}; this file takes one of "
            "{:.0f} l.\n",
            sizes.drum_volume * 1000, show_quantity(sizes.bore, Quantity::length), litres);
        sizes.drum_volume = litres / 1000;
    }
    // Rounded up: a barrel rounded down could touch the riser again.
    sizes.barrel_diameter = std::ceil(drum_diameter(sizes.drum_volume) / 0.005) * 0.005;
    sizes.barrel_height = rounded(drum_slenderness * sizes.barrel_diameter);
    sizes.feed = rounded(0.88 * sizes.bore);
    sizes.mouth = sizes.feed + rounded(sizes.bore);
    sizes.port_width = rounded(0.64 * sizes.feed);
    sizes.tunnel_length = rounded(2.7 * sizes.bore);
    sizes.opening = std::max(rounded(0.36 * sizes.bore), 0.03);
    // The barrel stands on the tunnel's roof: 25 mm of board and 15 mm to bed it.
    sizes.underside = sizes.feed + 0.04 + sizes.barrel_height;
    sizes.top = sizes.underside - sizes.opening;
    sizes.outlet = rounded(sizes.bore / 2 + 0.0125);
    sizes.stick = rounded(0.3 * sizes.feed);
    sizes.stick_length = rounded(1.25 * sizes.mouth);
    return sizes;
}

constexpr std::string_view page =
    R"(# A stove to start from, for a riser of {bore} bore and a drum of about {drum:.0f} l.
# Sized by common practice, no source: change what you measured. `drawwell list keys` explains every key.
{note}#
# CAUTION  Carbon monoxide kills without a smell: try a new stove outdoors, and never run one indoors
#          without a CO alarm, a flue that draws and a fresh-air supply. Smoke at the feed means CO in the room.
#          Plate, barrel and flue burn skin and set wood alight: keep clearances. Strip galvanised and
#          painted drums first: zinc fume. Cutting ceramic fibre needs a mask. Ask about local codes,
#          and have a licensed person do what they ask for.

title = "my stove"

# Every height is measured from the tunnel floor. Lengths in mm, cm, m, in or ft.
[feed]  # the wood stands in it
mouth = "{mouth}"  # height of its opening: a bore or so above the tunnel's roof
width = "{feed}"  # about nine tenths of the bore
depth = "{feed}"

[tunnel]  # from the fire to the riser
length = "{tunnel_length}"  # from the feed's centre to the riser's
width = "{feed}"
height = "{feed}"

[port]  # the throttle before the riser: about six tenths of the bore's area
width = "{port_width}"
height = "{feed}"

[riser]
bore = "{bore}"
top = "{top}"
lining = ["25 mm aes_board", "1 mm stainless_304"]  # from the gas outwards

[barrel]  # hangs from the plate; its foot stands just over the tunnel's roof
diameter = "{barrel_diameter}"
height = "{barrel_height}"

[plate]
underside = "{underside}"  # the opening under the plate, {opening}, is about a third of the bore
thickness = "6 mm"

[flue]
outlet = "{outlet}"  # height of its centre above the barrel's foot

[flue.level]  # sections in the order the gas meets them, with names of your own
length = "300 mm"
direction = "level"

[flue.stack]
length = "2200 mm"
direction = "up"

[wood]
kind = "ash"
moisture = "16 % wet"  # or "19 % dry": of the dry mass
side = "{stick}"
length = "{stick_length}"

[load.first]
at = "8 min"  # after lighting the kindling
pieces = 2

[load.main]
at = ["16 min", "40 min", "64 min", "88 min", "112 min", "136 min"]
pieces = 3

[site]
room = "20 °C"
outdoor = "5 °C"
)";

/// Puts the comments behind values into one column.
std::string with_comments_aligned(const std::string& text) {
    constexpr std::size_t comment_column = 28;
    std::string result;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = text.find('\n', begin);
        std::string line = text.substr(begin, end - begin);
        const std::size_t comment = line.find("  #");
        if (comment != std::string::npos && line[0] != '#') {
            const std::string words = line.substr(line.find('#', comment));
            line.resize(line.find_last_not_of(' ', comment) + 1);
            line.resize(std::max(line.size() + 2, comment_column), ' ');
            line += words;
        }
        result += line + "\n";
        begin = end + 1;
    }
    return result;
}

}  // namespace

std::string starting_stove(const BuildersStock& stock) {
    require_between(stock.bore, smallest_bore, largest_bore, Quantity::length, "--bore");
    require_between(stock.drum_volume, smallest_drum, largest_drum, Quantity::volume, "--drum");
    const Sizes sizes = size_stove(stock);
    const auto mm = [](double length) { return show_quantity(length, Quantity::length); };
    return with_comments_aligned(fmt::format(
        page, fmt::arg("bore", mm(sizes.bore)), fmt::arg("drum", sizes.drum_volume * 1000),
        fmt::arg("note", sizes.note), fmt::arg("mouth", mm(sizes.mouth)),
        fmt::arg("feed", mm(sizes.feed)), fmt::arg("tunnel_length", mm(sizes.tunnel_length)),
        fmt::arg("port_width", mm(sizes.port_width)), fmt::arg("top", mm(sizes.top)),
        fmt::arg("barrel_diameter", mm(sizes.barrel_diameter)),
        fmt::arg("barrel_height", mm(sizes.barrel_height)),
        fmt::arg("underside", mm(sizes.underside)), fmt::arg("opening", mm(sizes.opening)),
        fmt::arg("outlet", mm(sizes.outlet)), fmt::arg("stick", mm(sizes.stick)),
        fmt::arg("stick_length", mm(sizes.stick_length))));
}

}  // namespace drawwell
