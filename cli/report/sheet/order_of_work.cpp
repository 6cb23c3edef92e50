#include "cli/report/sheet/order_of_work.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/report/section/geometry.h"
#include "cli/report/sheet/sheet_text.h"

namespace drawwell {
namespace {

template <class Part>
bool has(const Stove& stove) {
    for (const Fitting& fitting : stove.fittings)
        if (std::holds_alternative<Part>(fitting)) return true;
    return false;
}

}  // namespace

std::vector<std::string> order_of_work(const Stove& stove) {
    std::vector<std::string> steps;
    steps.emplace_back(
        "Read the cautions on the last page of the lists. Settle with whoever answers for flue and "
        "clearances where the stove may stand, on what floor, and where the flue passes.");
    steps.emplace_back(
        "Print the templates at full size and measure the check line. Cut one trial piece of each "
        "kind before the rest.");
    if (stove.tunnel)
        steps.emplace_back(
            "Lay the tunnel's floor dead level on a base that does not burn, then the wall behind "
            "the fire and the tunnel's sides. Let hot joints stay open by a paper's thickness for "
            "the lining to grow.");
    if (!stove.side_air.empty() || has<Window>(stove) || has<AirChannel>(stove))
        steps.emplace_back("Cut the openings for air and panes before the sides are set.");
    std::string riser = "Stand the riser on ";
    riser += stove.tunnel ? "the floor, upright by the plumb" : "its foot, upright by the plumb";
    if (doorway(stove))
        riser += stove.port ? ", the port cut through its foot towards the fire"
                            : ", open at its foot towards the tunnel";
    steps.push_back(riser + ". Check the bore all the way up.");
    if (stove.tunnel) steps.emplace_back("Lay the tunnel's roof, from the feed to the riser.");
    if (stove.feed) steps.emplace_back("Set the feed on the tunnel, its edges flush inside.");
    if (stove.barrel && stove.plate) {
        steps.emplace_back(
            "Burn the barrel clean outdoors, cut the hole by which the gas leaves it and what else "
            "goes through it, and close the space round the riser at the barrel's foot with the "
            "ring.");
        if (has<OvenTube>(stove))
            steps.emplace_back("Put the oven tube through the barrel and seal it all round.");
        steps.push_back(fmt::format(
            "Hang the barrel about the riser's axis and lay the plate on its rim. Measure the "
            "opening under the plate: {} from the riser's top to the plate, the same all round.",
            both_text(stove.plate->underside - stove.riser.top)));
    }
    if (has<Bell>(stove))
        steps.emplace_back(
            "Build the bell beside it, an opening for cleaning near its foot, and lead the "
            "connector into it, tight at both ends.");
    if (!stove.flue.sections.empty())
        steps.emplace_back(
            "Fit the flue, every joint tight, with openings for the sweep. The draw and its "
            "clearances are as much part of the stove as the fire.");
    steps.emplace_back(
        "Dry what is wet with small fires over days, outdoors if you can. Then measure the built "
        "stove, put the figures in the file, mark it measured, and burn it again on paper.");
    return steps;
}

std::string no_flue_caution(const Stove& stove) {
    if (!stove.flue.sections.empty()) return {};
    return fmt::format(
        "This stove has no flue: smoke and carbon monoxide come out {}, {} over the tunnel floor, "
        "beside whoever cooks. Light it in the open only, never in a room, a tent or a shed.",
        stove.barrel ? "of the outlet in the barrel" : "at the top of the riser",
        both_text(stove.outlet_height()));
}

std::vector<std::string> drawing_remarks(const Stove& stove) {
    std::vector<std::string> remarks;
    if (const double missing = too_short_by(stove); missing > 1e-6)
        remarks.push_back(fmt::format(
            "The walls of feed and riser take the same place: the tunnel is {} too short for them "
            "to stand side by side. Lengthen it, or make the walls thinner.",
            both_text(missing)));
    if (stove.tunnel && stove.barrel && stove.plate) {
        const double roof = stove.tunnel->height + thickness(stove.tunnel->roof);
        if (stove.barrel_foot() < roof - 1e-6)
            remarks.push_back(fmt::format(
                "The barrel's foot is {} lower than the top of the tunnel's roof: notch the barrel "
                "over the tunnel and seal the notch.",
                both_text(roof - stove.barrel_foot())));
        if (stove.feed &&
            riser_axis(stove) - stove.barrel->diameter / 2 < roof_start(stove) - 1e-6 &&
            stove.feed->mouth > stove.barrel_foot())
            remarks.emplace_back(
                "Barrel and feed take the same place: lengthen the tunnel, or make the barrel "
                "narrower or the feed lower.");
    }
    if (stove.barrel) {
        const GasOutlet outlet = gas_outlet(stove);
        const double below = outlet.outer / 2 - stove.flue.outlet;
        const double above = stove.flue.outlet + outlet.outer / 2 - stove.barrel->height;
        if (std::max(below, above) > 1e-6)
            remarks.push_back(
                fmt::format("The hole for the gas ({}), {} across, reaches {} {}: move its centre "
                            "(flue.outlet), or make it narrower.",
                            outlet.name, both_text(outlet.outer), both_text(std::max(below, above)),
                            below > above ? "below the barrel's foot" : "above the barrel's rim"));
        remarks.push_back(
            fmt::format("Where the gas leaves the barrel ({}) is drawn opposite the feed; it may "
                        "go to any side at its height.",
                        outlet.name));
    }
    return remarks;
}

}  // namespace drawwell
