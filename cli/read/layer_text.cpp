#include "cli/read/layer_text.h"

#include <fmt/format.h>

#include <string>
#include <vector>

#include "cli/read/nearest.h"
#include "cli/read/units.h"
#include "solver/errors.h"

namespace drawwell {
namespace {

constexpr double thinnest_layer = 1e-5, thickest_layer = 2;  // [m]
constexpr std::string_view layer_form =
    "a layer is a thickness and a material: \"25 mm aes_board\"";

BuildUp parse_name(const std::string& name, const Library& library) {
    if (const auto found = library.build_ups.find(name); found != library.build_ups.end())
        return found->second;
    const std::vector<std::string> known = names_of(library.build_ups);
    const std::string ways =
        fmt::format("{}; a build-up is one of {}", layer_form, fmt::join(known, ", "));
    if (library.materials.contains(name))
        throw InputError(
            fmt::format("\"{}\" is a material and its thickness is missing: {}", name, ways));
    throw InputError(
        fmt::format("unknown name \"{}\": {}{}", name, ways, did_you_mean(name, known)));
}

std::string known_material(const std::string& name, const Library& library) {
    if (library.materials.contains(name)) return name;
    if (library.build_ups.contains(name))
        throw InputError(fmt::format(
            "\"{}\" is a build-up, which has its own thickness: write its name alone", name));
    refuse_unknown(name, names_of(library.materials), "a material:");
}

}  // namespace

BuildUp parse_layers(std::string_view said, const Library& library) {
    const std::size_t gap = said.find_last_of(" \t");
    if (gap == std::string_view::npos) return parse_name(std::string(said), library);
    const std::string material(said.substr(gap + 1));
    const double thickness = parse_quantity(said.substr(0, gap), Quantity::length);
    if (!(thickness >= thinnest_layer && thickness <= thickest_layer))
        throw InputError(fmt::format("a layer is from {} to {} thick",
                                     show_quantity(thinnest_layer, Quantity::length),
                                     show_quantity(thickest_layer, Quantity::length)));
    return {{known_material(material, library), thickness}};
}

}  // namespace drawwell
