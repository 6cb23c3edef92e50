#include "cli/report/cautions.h"

#include <array>

namespace drawwell {

std::span<const std::string_view> standing_cautions() {
    static constexpr std::array<std::string_view, 7> cautions = {
        "Carbon monoxide kills unnoticed, and smoke that comes back by the feed carries it into "
        "the "
        "room. This page is a calculation: a stove that draws here may still smoke where you are.",
        "Hang a carbon monoxide alarm wherever people breathe the air of the stove's room.",
        "Try it outdoors first, several burns long, and watch the feed the whole time.",
        "Barrel, plate and flue burn skin at a touch and light what stands too near; keep children "
        "and everything that burns away, and mind floor, ceiling and where the flue passes.",
        "Indoors, local codes and your insurer come first; flue and clearances belong to a "
        "licensed practitioner.",
        "No galvanised parts where it gets hot: zinc fumes are poisonous. Burn paint and residues "
        "off a used barrel outdoors.",
        "The dust of ceramic fibre harms the lungs: use a low-biopersistence kind, keep it faced "
        "and damp when cut, and wear a mask."};
    return cautions;
}

}  // namespace drawwell
